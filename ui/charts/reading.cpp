#include "ui/charts/reading.hpp"

#include <QLocale>

namespace sumpwright::ui::charts
{

namespace
{

QString quoted(const QString& cell)
{
    if (!cell.contains(u',') && !cell.contains(u'"') && !cell.contains(u'\n') && !cell.contains(u'\r'))
        return cell;
    QString doubled = cell;
    return u'"' + doubled.replace(u'"', QStringLiteral("\"\"")) + u'"';
}

QString line(const QStringList& cells)
{
    QStringList written;
    for (const QString& cell : cells)
        written << quoted(cell);
    return written.join(u',') + QStringLiteral("\r\n");
}

} // namespace

QString ChartTable::toCsv() const
{
    QString text = line(heads) + line(units);
    for (const QStringList& row : rows)
        text += line(row);
    return text;
}

QString ChartTable::number(double value)
{
    return QLocale::c().toString(value == 0.0 ? 0.0 : value, 'g', QLocale::FloatingPointShortest);
}

} // namespace sumpwright::ui::charts
