#include "ui/properties/port_list.hpp"

#include <QPushButton>

#include "ui/properties/port_section.hpp"
#include "ui/text/subject.hpp"

namespace sumpwright::ui::properties
{

PortList::PortList(Chosen about, QWidget* parent) : RowList(std::move(about), tr("Inlets and outlets"), parent)
{
    const auto* vessel = chosen().plan().vessels.find(chosen().first());
    const auto kind = vessel ? vessel->kind : plan::VesselKind::fishTank;
    for (const auto port : {plan::PortKind::inlet, plan::PortKind::lip, plan::PortKind::sideOutlet}) {
        const QString words = tr("Add %1").arg(text::portKindName(port, kind));
        addBelow(button(words, words, [this, port] { return addPortOf(port); }));
    }
}

RowList::Keys PortList::keysNow() const
{
    Keys keys;
    if (const auto* vessel = chosen().plan().vessels.find(chosen().first()))
        for (const auto& port : vessel->ports)
            keys.push_back(std::to_string(port.id.number));
    return keys;
}

Section* PortList::makeRow(const std::string& key, std::size_t)
{
    return new PortSection(chosen(), base::Id{std::stoull(key)}, this);
}

// In the middle of the vessel: an inlet at the rim, a lip at three quarters of the wall, an outlet at half; to be
// changed at once.
plan::Edit PortList::addPortOf(plan::PortKind kind) const
{
    const auto* vessel = chosen().plan().vessels.find(chosen().first());
    if (!vessel)
        return plan::addPort(chosen().first(), kind, {}, {});
    const double share = kind == plan::PortKind::inlet ? 1.0 : kind == plan::PortKind::lip ? 0.75 : 0.5;
    return plan::addPort(vessel->id, kind, {}, vessel->baseLevel + vessel->wallHeight * share);
}

} // namespace sumpwright::ui::properties
