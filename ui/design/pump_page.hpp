// PumpPage: "Choose a pump": every pump of the catalogue and own curve of the plan, ranked for what is wanted; the
// row at hand is told in full and can be put in the place of the pump there.
#pragma once

#include "core/design/pump_choice.hpp"
#include "ui/design/design_page.hpp"

namespace sumpwright::ui::design
{

class FactsTable;

class PumpPage : public DesignPage
{
    Q_OBJECT

public:
    PumpPage(document::Document& document, DisplayNow display, QWidget* parent = nullptr);

    const std::optional<sumpwright::design::PumpRanking>& ranking() const { return m_ranking; }

protected:
    Asker::Job job() override;
    void clearAnswer() override;
    std::optional<plan::Edit> proposal() const override;
    std::optional<assessment::Working> shownWorking() const override;
    void redisplay() override;

private:
    void showAnswer();
    void tellRow();
    const sumpwright::design::PumpChoice* atHand() const;

    QComboBox* m_pump;
    QComboBox* m_speed;
    std::optional<units::Flow> m_wanted;
    FactsTable* m_table;
    std::optional<sumpwright::design::PumpRanking> m_ranking;
};

} // namespace sumpwright::ui::design
