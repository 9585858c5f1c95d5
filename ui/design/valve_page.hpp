// ValvePage: "Set the valves": outlets with target, flow now and then, and the valves with their openings.
#pragma once

#include "core/design/valve_setting.hpp"
#include "ui/design/design_page.hpp"

QT_BEGIN_NAMESPACE
class QCheckBox;
QT_END_NAMESPACE

namespace sumpwright::ui::design
{

class FactsTable;

class ValvePage : public DesignPage
{
    Q_OBJECT

public:
    ValvePage(document::Document& document, DisplayNow display, QWidget* parent = nullptr);

    const std::optional<sumpwright::design::ValveSetting>& setting() const { return m_setting; }

protected:
    Asker::Job job() override;
    void clearAnswer() override;
    std::optional<plan::Edit> proposal() const override;
    std::optional<assessment::Working> shownWorking() const override;
    void redisplay() override;

private:
    void showAnswer();
    std::optional<base::Refusal> takeTurns(const QString& typed);

    QCheckBox* m_speed;
    std::optional<double> m_gateTurns;
    FactsTable* m_outlets;
    FactsTable* m_valves;
    bool m_speedTaken = false;
    std::optional<sumpwright::design::ValveSetting> m_setting;
};

} // namespace sumpwright::ui::design
