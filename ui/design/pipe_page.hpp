// PipePage: "Choose pipe sizes": least cost of pipe and energy over the years, the choices near it, prices a metre to
// be typed, and the trade-off as a chart. The choice at hand can be applied.
#pragma once

#include "core/design/pipe_sizes.hpp"
#include "ui/design/design_page.hpp"

namespace sumpwright::ui::design
{

class FactsTable;
class PriceTable;
class TradeChart;

class PipePage : public DesignPage
{
    Q_OBJECT

public:
    PipePage(document::Document& document, DisplayNow display, QWidget* parent = nullptr);

    const std::optional<sumpwright::design::PipeSizing>& sizing() const { return m_sizing; }
    const sumpwright::design::PipeChoice* atHand() const; // null: none

protected:
    Asker::Job job() override;
    void clearAnswer() override;
    std::optional<plan::Edit> proposal() const override;
    std::optional<assessment::Working> shownWorking() const override;
    void redisplay() override;

private:
    sumpwright::design::PipeQuestion question() const;
    void showAnswer();
    void showGroups();
    void showPrices();
    void tellRow();

    QComboBox* m_kept;
    QComboBox* m_grouping;
    std::optional<double> m_years;
    std::optional<units::EnergyPrice> m_price;
    std::optional<double> m_efficiency;
    std::optional<units::Velocity> m_fastest;
    std::optional<units::Velocity> m_slowest;
    FactsTable* m_choices;
    FactsTable* m_groups;
    TradeChart* m_chart;
    PriceTable* m_prices;
    sumpwright::design::Kept m_askedKept = sumpwright::design::Kept::flow;
    std::optional<sumpwright::design::PipeSizing> m_sizing;
    std::vector<sumpwright::design::PipeChoice> m_rows; // as the table of choices
};

} // namespace sumpwright::ui::design
