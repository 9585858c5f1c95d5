#include "ui/canvas/drawing.hpp"

namespace sumpwright::ui::canvas
{

units::Length Drawing::outsideDiameter(const plan::Run& run) const
{
    if (catalogue)
        if (const auto pipe = catalogue->pipe(run.pipeId))
            return (*pipe)->outsideDiameter;
    return units::millimetres(32.0);
}

std::optional<int> Drawing::classOf(base::Id run) const
{
    const auto* known = water.figuresOf(run);
    return known ? scale.classOf(*known) : std::nullopt;
}

} // namespace sumpwright::ui::canvas
