#include "ui/text/display.hpp"

namespace sumpwright::ui::text
{

QString absentText() { return QStringLiteral("\u2013"); }

QString DisplaySettings::ratioText(double ratio, int significantDigits) const
{
    return QString::fromStdString(units::formatRatio(ratio, numbers, significantDigits));
}

QString DisplaySettings::percentText(double ratio, int significantDigits) const
{
    return QString::fromStdString(units::formatPercent(ratio, numbers, significantDigits));
}

base::Outcome<double> DisplaySettings::readRatio(const QString& text) const
{
    return units::parseRatio(text.toStdString(), numbers);
}

} // namespace sumpwright::ui::text
