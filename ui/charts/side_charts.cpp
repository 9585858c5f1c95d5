#include "ui/charts/side_charts.hpp"

#include <QCoreApplication>

#include "ui/charts/bar_panel.hpp"
#include "ui/charts/duty_panel.hpp"
#include "ui/charts/models.hpp"

namespace sumpwright::ui::charts
{

namespace
{

struct Words {
    Q_DECLARE_TR_FUNCTIONS(SideCharts)
};

} // namespace

std::vector<SideChart> makeSideCharts(document::Document& document, const DisplayNow& display, QWidget* parent)
{
    return {{QStringLiteral("water"), Words::tr("Water"),
             new BarPanel(document, display, Words::tr("Where is the water?"), waterModel, parent)},
            {QStringLiteral("head"), Words::tr("Head"),
             new BarPanel(document, display, Words::tr("Where does the head go?"), headModel, parent)},
            {QStringLiteral("duty"), Words::tr("Duty point"), new DutyPanel(document, display, parent)},
            {QStringLiteral("floor"), Words::tr("Floor"),
             new BarPanel(document, display, Words::tr("What does the floor carry?"), floorModel, parent)}};
}

} // namespace sumpwright::ui::charts
