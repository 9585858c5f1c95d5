#include "ui/properties/vertex_list.hpp"

#include <QPushButton>

#include "core/plan/edits/vertex.hpp"
#include "ui/properties/field_row.hpp"
#include "ui/properties/run_levels.hpp"

namespace sumpwright::ui::properties
{

namespace
{
class VertexRow : public FieldRow
{
public:
    VertexRow(Chosen run, std::size_t index, QWidget* parent) : FieldRow(std::move(run), {}, parent), m_index(index)
    {
        const int number = static_cast<int>(index) + 1;
        setAccessibleName(VertexList::tr("Vertex %1").arg(number));
        addLabel(VertexList::tr("Vertex %1").arg(number));
        addGap();
        addEnd(button(VertexList::tr("Remove"), VertexList::tr("Remove vertex %1").arg(number),
                      [this] { return plan::removeVertex(chosen().first(), m_index); }));
        nextLine();
        const QString level = VertexList::tr("Level");
        const QString invert = VertexList::tr("Invert");
        addCaption(VertexList::tr("x"), level);
        addField(coordinate(VertexList::tr("Vertex %1, x").arg(number), &plan::Point::x));
        addCaption(VertexList::tr("y"), invert);
        addField(coordinate(VertexList::tr("Vertex %1, y").arg(number), &plan::Point::y));
        nextLine();
        addCaption(level, level);
        addField(levelField(VertexList::tr("Vertex %1, centre line").arg(number)));
        const bool falls = runNow()->service == plan::Service::gravity;
        addCaption(falls ? invert : QString(), invert);
        falls ? addField(invertField(VertexList::tr("Vertex %1, invert").arg(number))) : addGap();
    }

private:
    const plan::Run* runNow() const { return chosen().plan().runs.find(chosen().first()); }
    const plan::Vertex* find(const plan::Plan& plan) const
    {
        const auto* run = plan.runs.find(chosen().first());
        return run && m_index < run->vertices.size() ? &run->vertices[m_index] : nullptr;
    }

    EntryField* coordinate(const QString& name, units::Length plan::Point::*which)
    {
        const auto read = [this, which](const plan::Plan& plan) {
            Shared<units::Length> shared;
            if (const auto* vertex = find(plan))
                shared.add(vertex->at.*which);
            return shared;
        };
        const auto make = [this, which](const units::Length& value) {
            plan::Point place = find(chosen().plan())->at;
            place.*which = value;
            return plan::moveVertex(chosen().first(), m_index, place);
        };
        return quantityField<units::Length>(name, read, make, {"m", "ft"});
    }

    EntryField* levelField(const QString& name)
    {
        const auto read = [this](const plan::Plan& plan) {
            Shared<units::Elevation> shared;
            if (const auto* vertex = find(plan))
                shared.add(vertex->level);
            return shared;
        };
        return quantityField<units::Elevation>(name, read, [this](const units::Elevation& level) {
            return plan::setVertexLevel(chosen().first(), m_index, level);
        });
    }

    EntryField* invertField(const QString& name)
    {
        const auto bore = [this] {
            return boreOf(*chosen().document.catalogue(), *runNow()).value_or(units::metres(0.0));
        };
        const auto read = [this, bore](const plan::Plan& plan) {
            Shared<units::Elevation> shared;
            if (const auto* vertex = find(plan))
                shared.add(invertOf(*vertex, bore()));
            return shared;
        };
        return quantityField<units::Elevation>(name, read, [this, bore](const units::Elevation& level) {
            return plan::setVertexInvert(chosen().first(), m_index, level, bore());
        });
    }

    std::size_t m_index;
};
} // namespace

VertexList::VertexList(Chosen about, QWidget* parent) : RowList(std::move(about), tr("Course and levels"), parent)
{
    addHint(tr("Levels are of the bore's centre line."));
    addBelow(button(tr("Add vertex"), tr("Add a vertex in the middle"),
                    [this] { return plan::insertVertex(chosen().first(), 0.5); }));
}

// The service is part of the key: a gravity run's rows have one field more.
RowList::Keys VertexList::keysNow() const
{
    Keys keys;
    if (const auto* now = run())
        for (std::size_t index = 0; index < now->vertices.size(); ++index)
            keys.push_back((now->service == plan::Service::gravity ? "g" : "p") + std::to_string(index));
    return keys;
}

Section* VertexList::makeRow(const std::string&, std::size_t index) { return new VertexRow(chosen(), index, this); }

} // namespace sumpwright::ui::properties
