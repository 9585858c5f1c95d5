// One port of a vessel: kind, place, level, bore, and the levels only its kind has.
#pragma once

#include "core/plan/edits/port.hpp"
#include "ui/properties/section.hpp"

namespace sumpwright::ui::properties
{

class PortSection : public Section
{
    Q_OBJECT

public:
    PortSection(Chosen vessel, base::Id port, QWidget* parent = nullptr);

private:
    const plan::Port* find(const plan::Plan& plan) const;
    QString named(const QString& what) const; // "Level of inlet I1": unique among the vessel's ports
    void addTagRow();
    void addKindRow();
    void addLevelRow();
    void addOffsetRow(const QString& label, units::Length plan::Point::*along);
    EntryField* addTargetRow(); // what "Set the valves" aims at
    void addBoreRow();
    void addScreenRow();
    EntryField* addExtraLevelRow(const QString& label, std::optional<units::Elevation> plan::Port::*which,
                                 plan::Edit (*edit)(std::vector<plan::PortRef>, std::optional<units::Elevation>));
    void addRunFact();

    plan::PortRef m_port;
};

} // namespace sumpwright::ui::properties
