#include "ui/properties/port_section.hpp"

#include <QPushButton>

#include "core/plan/edits/rename.hpp"
#include "core/plan/edits/target.hpp"
#include "ui/properties/enum_choice.hpp"
#include "ui/text/subject.hpp"

namespace sumpwright::ui::properties
{

PortSection::PortSection(Chosen vessel, base::Id port, QWidget* parent)
    : Section(std::move(vessel), {}, parent), m_port{chosen().first(), port}
{
    setAccessibleName(named(tr("Port")));
    addTagRow();
    addKindRow();
    addLevelRow();
    auto* drain = addExtraLevelRow(tr("Siphon breaks at"), &plan::Port::drainLevel, &plan::setDrainLevel);
    auto* vent = addExtraLevelRow(tr("Vent hole level"), &plan::Port::ventLevel, &plan::setVentLevel);
    auto* target = addTargetRow();
    onRefresh([this, drain, vent, target](const plan::Plan& plan) {
        const auto* found = find(plan);
        setRowVisible(drain, found && found->kind == plan::PortKind::lip);
        setRowVisible(vent, found && found->kind == plan::PortKind::inlet);
        setRowVisible(target, found && found->kind == plan::PortKind::inlet);
    });
    addBoreRow();
    addScreenRow();
    addOffsetRow(tr("Along its length"), &plan::Point::x);
    addOffsetRow(tr("Along its width"), &plan::Point::y);
    addRunFact();
    addWide(button(tr("Remove"), named(tr("Remove")), [this] { return plan::removePorts({m_port}); }));
}

const plan::Port* PortSection::find(const plan::Plan& plan) const
{
    const auto* vessel = plan.vessels.find(m_port.vessel);
    return vessel ? plan::findPort(*vessel, m_port.port) : nullptr;
}

QString PortSection::named(const QString& what) const
{
    const auto* vessel = chosen().plan().vessels.find(m_port.vessel);
    const auto* port = find(chosen().plan());
    return port ? tr("%1, %2", "property, port").arg(what, text::portName(*vessel, *port)) : what;
}

void PortSection::addTagRow()
{
    addRow(tr("Port"), textField(
                           named(tr("Tag")),
                           [this](const plan::Plan& plan) {
                               Shared<std::string> shared;
                               if (const auto* port = find(plan))
                                   shared.add(port->tag);
                               return shared;
                           },
                           [this](const std::string& tag) { return plan::renameTag(m_port.port, tag); }));
}

void PortSection::addKindRow()
{
    using Kind = plan::PortKind;
    addRow(tr("Kind"), choiceField(
                           named(tr("Kind")), choicesOf({Kind::inlet, Kind::lip, Kind::sideOutlet}),
                           [this](const plan::Plan& plan) {
                               Shared<std::string> shared;
                               if (const auto* port = find(plan))
                                   shared.add(keyOf(port->kind));
                               return shared;
                           },
                           [this](const std::string& key) { return plan::setPortKind({m_port}, enumOf<Kind>(key)); }));
}

void PortSection::addLevelRow()
{
    addRow(tr("Level"), quantityField<units::Elevation>(
                            named(tr("Level")),
                            [this](const plan::Plan& plan) {
                                Shared<units::Elevation> shared;
                                if (const auto* port = find(plan))
                                    shared.add(port->level);
                                return shared;
                            },
                            [this](const units::Elevation& level) { return plan::setPortLevel({m_port}, level); }));
}

EntryField* PortSection::addExtraLevelRow(const QString& label, std::optional<units::Elevation> plan::Port::*which,
                                          plan::Edit (*edit)(std::vector<plan::PortRef>,
                                                             std::optional<units::Elevation>))
{
    auto* field = optionalField<units::Elevation>(
        named(label),
        [this, which](const plan::Plan& plan) {
            const auto* port = find(plan);
            return sharedOne(port ? port->*which : std::optional<units::Elevation>());
        },
        [this, edit](const std::optional<units::Elevation>& level) { return edit({m_port}, level); }, tr("none"));
    addRow(label, field);
    return field;
}

EntryField* PortSection::addTargetRow()
{
    auto* field = optionalField<units::Flow>(
        named(tr("Target flow")),
        [this](const plan::Plan& plan) {
            const auto* port = find(plan);
            return sharedOne(port ? port->targetFlow : std::optional<units::Flow>());
        },
        [this](const std::optional<units::Flow>& flow) { return plan::setTargetFlow({m_port}, flow); }, tr("none"));
    addRow(tr("Target flow"), field);
    return field;
}

void PortSection::addBoreRow()
{
    addRow(tr("Bore"),
           optionalField<units::Length>(
               named(tr("Bore")),
               [this](const plan::Plan& plan) {
                   const auto* port = find(plan);
                   return sharedOne(port ? port->bore : std::optional<units::Length>());
               },
               [this](const std::optional<units::Length>& bore) { return plan::setPortBore({m_port}, bore); },
               tr("as its pipe"), text::inSmallSizes));
}

void PortSection::addScreenRow()
{
    auto* field = percentField(
        named(tr("Left open by its screen")),
        [this](const plan::Plan& plan) {
            Shared<double> shared;
            if (const auto* port = find(plan))
                shared.add(port->openFraction.value_or(1.0));
            return shared;
        },
        [this](const double& open) {
            return plan::setOpenFraction({m_port}, open == 1.0 ? std::nullopt : std::optional(open));
        });
    addRow(tr("Left open by its screen"), field);
    onRefresh([this, field](const plan::Plan& plan) {
        const auto* found = find(plan);
        setRowVisible(field, found && found->kind != plan::PortKind::inlet);
    });
}

void PortSection::addOffsetRow(const QString& label, units::Length plan::Point::*along)
{
    addRow(label, quantityField<units::Length>(
                      named(label),
                      [this, along](const plan::Plan& plan) {
                          Shared<units::Length> shared;
                          if (const auto* port = find(plan))
                              shared.add(port->offset.*along);
                          return shared;
                      },
                      [this, along](const units::Length& value) {
                          plan::Point offset = find(chosen().plan())->offset;
                          offset.*along = value;
                          return plan::setPortOffset(m_port, offset);
                      },
                      {"m", "ft"}));
}

void PortSection::addRunFact()
{
    addFact(tr("Pipe"), [this](const plan::Plan& plan) {
        const auto* run = plan::runAtPort(plan, m_port.vessel, m_port.port);
        return run ? text::subject(plan, run->id) : tr("none");
    });
}

} // namespace sumpwright::ui::properties
