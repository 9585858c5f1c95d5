// What vessels stand on, what they weigh empty, and the load that results. Estimates, never a verdict on the floor.
#pragma once

#include "ui/properties/section.hpp"

namespace sumpwright::ui::properties
{

class StandSection : public Section
{
    Q_OBJECT

public:
    explicit StandSection(Chosen chosen, QWidget* parent = nullptr);

private:
    using Change = std::function<void(plan::Stand&)>;
    plan::Edit changeStands(const Change& change) const; // a vessel without a stand gets a flat one first
    void addKindRow();
    void addLegRows();
    void addMassRows();
    void addLoadResults();
};

} // namespace sumpwright::ui::properties
