// What the outline says of each element beside its tag: sizes, pipe and length, model, words; from the plan alone.
#pragma once

#include <QString>

#include "core/catalogue/catalogue.hpp"
#include "core/plan/plan.hpp"
#include "ui/text/display.hpp"

namespace sumpwright::ui::outline
{

QString factsOf(const plan::Plan& plan, base::Id id, const catalogue::Catalogue& catalogue,
                const text::DisplaySettings& display);
// The tag; the words of a note, the distance of a dimension line.
QString titleOf(const plan::Plan& plan, base::Id id, const text::DisplaySettings& display);

} // namespace sumpwright::ui::outline
