// One valve: which, where along the run, how far open, its K.
#pragma once

#include "core/plan/edits/valve.hpp"
#include "ui/properties/section.hpp"

namespace sumpwright::ui::properties
{

class ValveSection : public Section
{
    Q_OBJECT

public:
    ValveSection(Chosen run, base::Id valve, QWidget* parent = nullptr);

private:
    const plan::Valve* find(const plan::Plan& plan) const;
    QString named(const QString& what) const;
    template <class T, class Of> Read<T> reading(Of of) const
    {
        return [this, of](const plan::Plan& plan) {
            Shared<T> shared;
            if (const auto* valve = find(plan))
                shared.add(of(*valve));
            return shared;
        };
    }
    void addFittingRow();
    void addLossRows();
    const assessment::FittingLoss* lossIn(const assessment::Assessment& results) const;

    plan::ValveRef m_valve;
};

} // namespace sumpwright::ui::properties
