#include "ui/section/level_legend.hpp"

#include <QPainter>

namespace sumpwright::ui::section
{

namespace
{
constexpr double sample = 26.0; // pixels
constexpr double gap = 6.0;
constexpr double between = 14.0;

QFont small()
{
    QFont font = canvas::letterFont();
    font.setPixelSize(11);
    return font;
}

double widthOf(const QString& words)
{
    return sample + gap + QFontMetricsF(small()).horizontalAdvance(words) + between;
}
} // namespace

LevelLegend::LevelLegend(QWidget* parent) : QWidget(parent)
{
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Preferred);
    setAccessibleName(tr("Legend of the lines"));
    setGrade(false);
}

void LevelLegend::setGrade(bool shown)
{
    m_grade = shown;
    QStringList words;
    for (const Row& row : rows())
        words << row.words;
    setAccessibleDescription(words.join(QStringLiteral(", ")));
    setToolTip(
        tr("Full line: water level with least flow. Long dashes: with most flow. Dots: when the pump has stopped.") +
        (shown ? u'\n' + tr("Dash and dot: hydraulic grade, in gravity runs an estimate; fine dashes: straight, where "
                            "it is not computed.")
               : QString()));
    updateGeometry();
    update();
}

std::vector<LevelLegend::Row> LevelLegend::rows() const
{
    std::vector<Row> rows{{LineKind::least, tr("least flow")},
                          {LineKind::most, tr("most flow")},
                          {LineKind::stopped, tr("pump stopped")}};
    if (m_grade)
        rows.push_back({LineKind::grade, tr("hydraulic grade")});
    return rows;
}

QSize LevelLegend::sizeHint() const
{
    double width = 0.0;
    for (const Row& row : rows())
        width += widthOf(row.words);
    return {static_cast<int>(width), 16};
}

void LevelLegend::paintEvent(QPaintEvent*)
{
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    Pens pens;
    pens.ink = {&style::themeOf(*this), 1.0};
    painter.setFont(small());
    double x = gap;
    const double y = height() / 2.0;
    for (const Row& row : rows()) {
        const double wide = widthOf(row.words);
        if (x + wide - between > width())
            break;
        painter.setPen(penOf(row.kind, pens));
        painter.drawLine(QPointF(x, y), QPointF(x + sample, y));
        painter.setPen(pens.ink.theme->quiet);
        painter.drawText(QPointF(x + sample + gap, y + 4.0), row.words);
        x += wide;
    }
}

} // namespace sumpwright::ui::section
