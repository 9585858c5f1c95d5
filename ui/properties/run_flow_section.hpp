// What one run carries and loses, in both running states.
#pragma once

#include "ui/properties/section.hpp"

namespace sumpwright::ui::properties
{

class RunFlowSection : public Section
{
    Q_OBJECT

public:
    explicit RunFlowSection(Chosen chosen, QWidget* parent = nullptr);

private:
    const assessment::RunResult* find(const assessment::Assessment& results) const;
    void addFlow(assessment::RunningState state);
    void addLoss(assessment::RunningState state);
    void addOpen(assessment::RunningState state); // gravity runs: how full, how fast
    void addCapacity();
};

} // namespace sumpwright::ui::properties
