#include "ui/properties/valve_list.hpp"

#include <QPushButton>

#include "core/plan/edits/valve.hpp"
#include "ui/properties/valve_section.hpp"

namespace sumpwright::ui::properties
{

ValveList::ValveList(Chosen about, QWidget* parent) : RowList(std::move(about), tr("Valves"), parent)
{
    addBelow(button(tr("Add ball valve"), tr("Add a ball valve in the middle"),
                    [this] { return plan::addValve(chosen().first(), "ball-valve", 0.5); }));
}

RowList::Keys ValveList::keysNow() const
{
    Keys keys;
    if (const auto* run = chosen().plan().runs.find(chosen().first()))
        for (const auto& valve : run->valves)
            keys.push_back(std::to_string(valve.id.number));
    return keys;
}

Section* ValveList::makeRow(const std::string& key, std::size_t)
{
    return new ValveSection(chosen(), base::Id{std::stoull(key)}, this);
}

} // namespace sumpwright::ui::properties
