#include "core/plan/edits/annotation.hpp"

#include "core/plan/edits/draft.hpp"

namespace sumpwright::plan
{

Edit setNoteText(base::Id note, std::string text)
{
    return setEach<Note>("edit.note-text", {note}, &Note::text, std::move(text));
}

Edit setDimensionEnds(base::Id dimension, Point from, Point to)
{
    return changeEach<DimensionLine>("edit.dimension-ends", {dimension}, [from, to](DimensionLine& line) {
        line.from = from;
        line.to = to;
    });
}

Edit setDimensionOffset(std::vector<base::Id> dimensions, units::Length offset)
{
    return setEach<DimensionLine>("edit.dimension-offset", std::move(dimensions), &DimensionLine::offset, offset);
}

} // namespace sumpwright::plan
