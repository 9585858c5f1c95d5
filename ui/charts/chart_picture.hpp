// A chart as a picture that stands alone: the question above, then the answer, then the chart.
#pragma once

#include <QString>

namespace sumpwright::ui::style
{
struct Theme;
}

namespace sumpwright::ui::charts
{

class ReadableView;

struct ChartWords {
    QString question;
    QString sentence;
};

// SVG where the name ends so, PNG otherwise; false: could not be written.
bool saveChartPicture(const QString& path, const ChartWords& words, ReadableView& view, const style::Theme& theme);

} // namespace sumpwright::ui::charts
