#include "ui/window/status_line.hpp"

#include <cmath>

#include <QEvent>
#include <QLabel>

#include "core/plan/floor.hpp"
#include "core/units/format.hpp"
#include "ui/document/document.hpp"
#include "ui/document/view_settings.hpp"
#include "ui/style/type.hpp"

namespace sumpwright::ui::window
{

namespace
{

constexpr int messageTime = 8000; // ms

QLabel* field(QStatusBar& bar, const QString& name, const QString& widest)
{
    auto* label = new QLabel;
    label->setAccessibleName(name);
    label->setMinimumWidth(label->fontMetrics().horizontalAdvance(widest));
    bar.addPermanentWidget(label);
    return label;
}

// One unit and as many decimals at every place, so that nothing jumps while the pointer moves: "12.34 ft", "3.760 m".
QString placeText(units::Length along, const document::ViewSettings& view)
{
    const bool us = view.unitSystem() == units::UnitSystem::us;
    QString number = QString::number(units::inUnit(along, us ? "ft" : "m"), 'f', us ? 2 : 3);
    if (number.startsWith(u'-') && number.count(u'0') == number.size() - 2)
        number.remove(0, 1);
    number.replace(u'.', QString::fromStdString(view.numberStyle().decimalMark)).replace(u'-', QChar(0x2212));
    return number + (us ? QStringLiteral(" ft") : QStringLiteral(" m"));
}

QString levelText(units::Elevation level, const document::ViewSettings& view)
{
    const bool us = view.unitSystem() == units::UnitSystem::us;
    return QString::fromStdString(
        units::format(level, view.unitSystem(), view.numberStyle(), {.unit = us ? "ft" : "m"}));
}

} // namespace

StatusLine::StatusLine(document::Document& document, QWidget* parent) : QStatusBar(parent), m_document(document)
{
    setSizeGripEnabled(false);
    m_hint = new QLabel;
    m_hint->setAccessibleName(tr("What the tool waits for"));
    // level with the messages
    m_hint->setContentsMargins(style::halfStep, 0, 0, 0);
    m_hint->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Preferred); // never widens the window
    m_hint->installEventFilter(this);
    addWidget(m_hint, 1);
    m_x = field(*this, tr("Pointer, across"), QStringLiteral("X  -000.000 m  "));
    m_y = field(*this, tr("Pointer, up the sheet"), QStringLiteral("Y  -000.000 m  "));
    m_level = field(*this, tr("Floor level at the pointer"), QStringLiteral("Floor  +00.000 m  "));
    m_scale = field(*this, tr("Scale on screen"), QStringLiteral("1:0000  "));
    connect(&m_document, &document::Document::said, this,
            [this](const QString& message) { showMessage(message, messageTime); });
    connect(&m_document, &document::Document::planChanged, this, &StatusLine::refresh);
    connect(&m_document.view(), &document::ViewSettings::changed, this, &StatusLine::refresh);
    refresh();
}

void StatusLine::showPointer(std::optional<plan::Point> place)
{
    m_place = place;
    refresh();
}

void StatusLine::showHint(const QString& hint)
{
    m_words = hint;
    m_hint->setAccessibleDescription(hint);
    fitHint();
}

// What has no room ends in dots and is read by resting the pointer on it.
void StatusLine::fitHint()
{
    const int room = m_hint->contentsRect().width();
    const QString fitting = m_hint->fontMetrics().elidedText(m_words, Qt::ElideRight, room);
    m_hint->setText(fitting);
    m_hint->setToolTip(fitting == m_words ? QString() : m_words);
}

bool StatusLine::eventFilter(QObject* watched, QEvent* event)
{
    if (watched == m_hint && (event->type() == QEvent::Resize || event->type() == QEvent::FontChange))
        fitHint();
    return QStatusBar::eventFilter(watched, event);
}

void StatusLine::showScale(double denominator)
{
    m_scale->setText(std::isfinite(denominator) ? QStringLiteral("1:%1").arg(std::lround(denominator)) : QString());
}

void StatusLine::refresh()
{
    const bool shown =
        m_place && std::isfinite(units::inMetres(m_place->x)) && std::isfinite(units::inMetres(m_place->y));
    for (QLabel* label : {m_x, m_y, m_level})
        label->setText({});
    if (!shown)
        return;
    const auto& view = m_document.view();
    m_x->setText(QStringLiteral("X  %1").arg(placeText(m_place->x, view)));
    m_y->setText(QStringLiteral("Y  %1").arg(placeText(m_place->y, view)));
    const plan::Floor& floor = *m_document.shown().floor;
    if (plan::inside(floor, *m_place))
        m_level->setText(tr("Floor  %1").arg(levelText(plan::levelAt(floor, *m_place), view)));
}

} // namespace sumpwright::ui::window
