#include "ui/section/level_view.hpp"

#include <QAccessible>
#include <QEvent>
#include <QScrollBar>

#include <algorithm>
#include <cmath>

#include "ui/canvas/canvas_settings.hpp"
#include "ui/canvas/plan_view.hpp"
#include "ui/document/document.hpp"
#include "ui/document/view_settings.hpp"
#include "ui/section/level_field.hpp"
#include "ui/section/level_ruler.hpp"

namespace sumpwright::ui::section
{

namespace
{
constexpr double alongHeight = 16.0; // pixels
constexpr double above = 24.0;       // pixels of air over what is drawn
constexpr double below = 20.0;
constexpr double beside = 28.0;
constexpr double leastExtent = 0.5; // metres
} // namespace

LevelView::LevelView(document::Document& document, canvas::PlanView& plan, QWidget* parent)
    : QAbstractScrollArea(parent), m_document(document), m_plan(plan), m_field(new LevelField(document, viewport()))
{
    setFocusPolicy(Qt::StrongFocus);
    setFrameShape(QFrame::NoFrame);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    viewport()->setMouseTracking(true);
    setAccessibleName(tr("Elevation"));
    follow();
}

LevelView::~LevelView() = default;

void LevelView::follow()
{
    using document::Document;
    connect(&m_document, &Document::planChanged, this, &LevelView::markOld);
    connect(&m_document, &Document::assessmentChanged, this, &LevelView::markOld);
    const auto again = [this] { viewport()->update(); };
    connect(&m_document, &Document::selectionChanged, this, again);
    connect(&m_document, &Document::highlightChanged, this, again);
    connect(&m_document.view(), &document::ViewSettings::changed, this, again);
    connect(&m_plan, &canvas::PlanView::zoomChanged, this, again);
    connect(m_plan.horizontalScrollBar(), &QScrollBar::valueChanged, this, again);
    m_plan.viewport()->installEventFilter(this);
}

// Drawn anew when it is next painted; a hidden pane costs nothing.
void LevelView::markOld()
{
    m_old = true;
    viewport()->update();
}

void LevelView::renew()
{
    if (!std::exchange(m_old, false))
        return;
    const auto results = m_document.assessment();
    now().show({m_document.shown(), results.get(), m_document.catalogue().get()});
    if (!m_drag) {
        m_extent = now().extent();
        const QString told = now().told();
        if (told != accessibleDescription())
            setAccessibleDescription(told);
        Q_EMIT pageChanged();
    }
    if (m_at && !plan::levelOf(m_document.shown(), *m_at))
        m_at.reset();
}

const Page& LevelView::page()
{
    renew();
    return now();
}

const Sheet& LevelView::sheet()
{
    renew();
    layOut();
    return m_sheet;
}

void LevelView::setMode(Mode mode)
{
    if (m_mode == mode)
        return;
    endDrag(false);
    m_field->leave();
    m_mode = mode;
    m_hover.reset();
    m_former.clear();
    setAccessibleName(mode == Mode::elevation ? tr("Elevation") : tr("Section along the water"));
    markOld();
}

void LevelView::setHeights(int times)
{
    m_heights = std::clamp(times, 1, 5);
    viewport()->update();
}

void LevelView::chooseWay(std::optional<report::WayChoice> choice)
{
    if (m_section.choice() == choice)
        return;
    m_section.choose(choice);
    m_scale.reset();
    markOld();
}

void LevelView::fit()
{
    m_scale.reset();
    if (m_mode == Mode::elevation)
        m_plan.zoomToFit();
    viewport()->update();
}

void LevelView::layOut()
{
    const QRectF whole = viewport()->rect();
    QRectF room = whole.adjusted(rulerWidth, 0.0, 0.0, m_mode == Mode::section ? -alongHeight : 0.0);
    if (room.width() < 1.0 || room.height() < 1.0)
        room = QRectF(rulerWidth, 0.0, 1.0, 1.0);
    const double height = std::max(leastExtent, m_extent.height());
    m_sheet.room = room;
    m_sheet.heights = m_heights;
    if (m_mode == Mode::elevation)
        layOutElevation(room, height);
    else
        layOutSection(room, height);
    placeUpright(room);
}

// As the plan lies: the same pixels per metre, and the same place under the same place. A pane on its own window is
// set beside its own edge.
void LevelView::layOutElevation(const QRectF&, double)
{
    m_sheet.scale = m_plan.zoom() * 1000.0;
    const double zero = m_plan.viewportTransform().map(QPointF(0.0, 0.0)).x();
    const bool together = window() == m_plan.window();
    const double edge = together ? viewport()->mapFromGlobal(m_plan.viewport()->mapToGlobal(QPoint())).x() : rulerWidth;
    m_sheet.origin = edge + zero;
}

void LevelView::layOutSection(const QRectF& room, double height)
{
    const double length = std::max(leastExtent, m_extent.width());
    const double fitted =
        std::min((room.width() - 2.0 * beside) / length, (room.height() - above - below) / (height * m_heights));
    m_sheet.scale = m_scale.value_or(std::max(5.0, fitted));
    const double spare = (room.width() - length * m_sheet.scale) / 2.0;
    m_sheet.origin = m_scale ? room.left() - m_left * m_sheet.scale
                             : room.left() + std::max(spare, beside) - m_extent.left() * m_sheet.scale;
}

// What fits stands in the middle; what does not is scrolled, and begins at its foot.
void LevelView::placeUpright(const QRectF& room)
{
    const double height = std::max(leastExtent, m_extent.height()) * m_sheet.tall();
    const double whole = height + above + below;
    const int most = std::max(0, static_cast<int>(std::ceil(whole - room.height())));
    QScrollBar& bar = *verticalScrollBar();
    if (bar.maximum() != most && !m_drag) {
        const bool atFoot = bar.value() == bar.maximum();
        m_laying = true;
        bar.setPageStep(static_cast<int>(room.height()));
        bar.setSingleStep(20);
        bar.setRange(0, most);
        if (atFoot)
            bar.setValue(most);
        m_laying = false;
    }
    const double spare = std::max(0.0, room.height() - whole) / 2.0;
    const double foot = bar.maximum() > 0 ? room.top() + whole - bar.value() - below : room.bottom() - below - spare;
    m_sheet.datum = foot + m_extent.top() * m_sheet.tall(); // the extent's top is its lowest level
}

Pens LevelView::pens() const
{
    Pens pens;
    pens.ink = {&style::themeOf(*this), 1.0};
    pens.figures = m_plan.figures();
    pens.selection = m_document.selection();
    pens.highlighted = m_document.highlighted();
    pens.stale = m_document.stale();
    return pens;
}

bool LevelView::eventFilter(QObject* watched, QEvent* event)
{
    if (event->type() == QEvent::Resize || event->type() == QEvent::Move)
        viewport()->update();
    return QAbstractScrollArea::eventFilter(watched, event);
}

void LevelView::resizeEvent(QResizeEvent* event)
{
    m_field->leave();
    QAbstractScrollArea::resizeEvent(event);
}

void LevelView::scrollContentsBy(int, int)
{
    if (!m_laying)
        viewport()->update();
}

void LevelView::changeEvent(QEvent* event)
{
    if (event->type() == QEvent::PaletteChange)
        viewport()->update();
    QAbstractScrollArea::changeEvent(event);
}

void LevelView::hideEvent(QHideEvent* event)
{
    endDrag(false);
    m_field->leave();
    QAbstractScrollArea::hideEvent(event);
}

void LevelView::showEvent(QShowEvent* event)
{
    QAbstractScrollArea::showEvent(event);
    viewport()->update();
}

} // namespace sumpwright::ui::section
