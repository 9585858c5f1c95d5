// PriceTable: what a metre of each pipe costs: typed by the person, or assumed and marked so. An emptied price is
// assumed again. A text that is no price is told and the price before stays.
#pragma once

#include <map>
#include <string>
#include <vector>

#include <QTableWidget>

#include "core/catalogue/catalogue.hpp"
#include "core/design/pipe_sizes.hpp"
#include "ui/text/display.hpp"

namespace sumpwright::ui::design
{

class PriceTable : public QTableWidget
{
    Q_OBJECT

public:
    explicit PriceTable(QWidget* parent = nullptr);

    void show(const std::vector<std::string>& pipes, const catalogue::Catalogue& catalogue, const std::string& currency,
              const text::DisplaySettings& display);
    std::vector<sumpwright::design::PipePrice> typed() const;

    QSize sizeHint() const override;

Q_SIGNALS:
    void changed();
    void refused(const QString& sentence);

private:
    void take(QTableWidgetItem* item);
    void fill(int row);

    std::vector<std::string> m_pipes;
    std::vector<units::Money> m_assumed;
    std::map<std::string, units::Money> m_typed;
    std::string m_currency;
    text::DisplaySettings m_display;
    bool m_filling = false;
};

} // namespace sumpwright::ui::design
