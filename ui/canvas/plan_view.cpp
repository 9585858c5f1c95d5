#include "ui/canvas/plan_view.hpp"

#include <QContextMenuEvent>
#include <QHelpEvent>
#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>
#include <QScrollBar>
#include <QToolTip>

#include <utility>

#include "ui/canvas/accessibility.hpp"
#include "ui/canvas/canvas_settings.hpp"
#include "ui/canvas/furniture.hpp"
#include "ui/canvas/grid.hpp"
#include "ui/canvas/overlay_item.hpp"
#include "ui/canvas/plan_scene.hpp"
#include "ui/canvas/scene_point.hpp"
#include "ui/document/document.hpp"
#include "ui/document/view_settings.hpp"

namespace sumpwright::ui::canvas
{

PlanView::PlanView(document::Document& document, CanvasSettings& settings, QWidget* parent)
    : QGraphicsView(parent), m_document(document), m_settings(settings),
      m_scene(std::make_unique<PlanScene>(document.catalogue()))
{
    installAccessibility();
    setScene(m_scene.get());
    setRenderHint(QPainter::Antialiasing);
    setCacheMode(CacheBackground);
    setViewportUpdateMode(MinimalViewportUpdate);
    setOptimizationFlags(DontSavePainterState);
    setTransformationAnchor(NoAnchor);
    setResizeAnchor(NoAnchor);
    setAlignment(Qt::AlignLeft | Qt::AlignTop);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOn);
    setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOn);
    setFrameShape(NoFrame);
    setFocusPolicy(Qt::StrongFocus);
    for (auto* bar : {horizontalScrollBar(), verticalScrollBar()})
        connect(bar, &QScrollBar::actionTriggered, this, [this] { m_fittedTo.reset(); });
    setMouseTracking(true);
    viewport()->setMouseTracking(true);
    setAccessibleName(tr("Plan"));
    setAccessibleDescription(tr("Drawing of vessels, pumps, pipe runs and fixtures seen from above"));
    setWhatsThis(tr("The plan seen from above. Place things with the tools, drag them, or use the arrow keys."));
    m_overlayItem = new OverlayItem(m_scene->drawing());
    m_scene->addItem(m_overlayItem);
    m_furniture = new Furniture(*this);
    setTransform(QTransform::fromScale(0.08, 0.08));
    m_scene->setPixel(pixel());
    followDocument();
    settingsChanged();
}

PlanView::~PlanView()
{
    Q_EMIT leaving();
    m_tool = nullptr;
    setScene(nullptr); // the scene dies before the view's base
}

void PlanView::followDocument()
{
    using document::Document;
    m_scene->setTheme(style::themeOf(*this));
    connect(&m_document, &Document::planChanged, this, &PlanView::planChanged);
    connect(&m_document, &Document::assessmentChanged, this, &PlanView::waterChanged);
    connect(&m_document, &Document::selectionChanged, this, [this] {
        m_scene->choose(m_document.selection());
        if (m_tool)
            m_tool->planChanged();
    });
    connect(&m_document, &Document::highlightChanged, this, [this] { m_scene->light(m_document.highlighted()); });
    connect(&m_document, &Document::goToRequested, this, &PlanView::showElements);
    connect(&m_document.view(), &document::ViewSettings::changed, this, [this] {
        m_scene->setFigures(figures());
        m_furniture->refresh();
    });
    connect(m_scene.get(), &PlanScene::groundChanged, this, [this] {
        resetCachedContent();
        viewport()->update();
    });
    connect(&m_settings, &CanvasSettings::changed, this, &PlanView::settingsChanged);
    m_scene->setFigures(figures());
    planChanged();
    waterChanged();
}

Figures PlanView::figures() const { return {m_document.view().unitSystem(), m_document.view().numberStyle()}; }

void PlanView::planChanged()
{
    m_scene->setCatalogue(m_document.catalogue());
    m_scene->showPlan(m_document.shown());
    if (!m_document.previewing())
        makeRoom(visibleScene());
    if (m_tool)
        m_tool->planChanged();
    m_furniture->refresh();
}

void PlanView::waterChanged()
{
    const auto assessment = m_document.assessment();
    m_scene->showWater(assessment ? waterViewOf(*assessment, m_document.stale()) : WaterView());
    m_furniture->waterChanged();
}

void PlanView::settingsChanged()
{
    const QSize room = m_furniture->margins();
    setViewportMargins(room.width(), room.height(), 0, 0);
    m_scene->setLabelsShown(m_settings.labelsShown());
    m_scene->setRunMeasure(m_settings.runMeasure());
    m_furniture->layOut();
    resetCachedContent();
    viewport()->update();
}

void PlanView::setTool(CanvasTool* tool)
{
    if (m_tool)
        m_tool->giveBack();
    m_tool = tool;
    setOverlay({});
    refreshCursor();
    if (m_tool)
        m_tool->planChanged();
}

void PlanView::setOverlay(Overlay overlay) { m_overlayItem->show(std::move(overlay)); }

const Overlay& PlanView::overlay() const { return m_overlayItem->overlay(); }

void PlanView::refreshCursor()
{
    if (m_pan)
        viewport()->setCursor(Qt::ClosedHandCursor);
    else if (m_space)
        viewport()->setCursor(Qt::OpenHandCursor);
    else
        viewport()->setCursor(m_tool ? m_tool->cursor() : Qt::ArrowCursor);
}

CanvasPointer PlanView::pointerOf(const QMouseEvent& event) const
{
    const QPointF view = event.position();
    return {mapToScene(QPoint()) + view * pixel(), view.toPoint(), event.button(), event.buttons(), event.modifiers()};
}

bool PlanView::startPan(const QMouseEvent& event)
{
    const bool wanted = event.button() == Qt::MiddleButton || (event.button() == Qt::LeftButton && m_space);
    if (!wanted)
        return false;
    m_pan = event.position().toPoint();
    refreshCursor();
    return true;
}

void PlanView::mousePressEvent(QMouseEvent* event)
{
    event->accept();
    m_rightBroke = false;
    if (m_tool && event->button() == Qt::RightButton && m_tool->busy())
        return breakOff(event->buttons() & Qt::LeftButton);
    if (startPan(*event) || !m_tool || event->button() != Qt::LeftButton)
        return;
    m_tool->press(pointerOf(*event));
}

// The right button ends what goes on: a drag without an edit, a line of clicks with what is finished of it. The menu
// that belongs to the press does not open.
void PlanView::breakOff(bool drag)
{
    m_rightBroke = true;
    drag ? m_tool->giveBack() : m_tool->conclude();
    refreshCursor();
}

// A press soon after a click arrives here instead; tools that have no double click take it as a press.
void PlanView::mouseDoubleClickEvent(QMouseEvent* event)
{
    event->accept();
    if (startPan(*event) || !m_tool || event->button() != Qt::LeftButton)
        return;
    m_tool->doubleClick(pointerOf(*event));
}

void PlanView::mouseMoveEvent(QMouseEvent* event)
{
    event->accept();
    const auto pointer = pointerOf(*event);
    if (m_pan) {
        panBy(*m_pan - pointer.view);
        m_pan = pointer.view;
        return;
    }
    m_furniture->setPointer(pointer.scene);
    Q_EMIT pointerMoved(toPlan(pointer.scene));
    if (m_tool) {
        m_tool->move(pointer);
        refreshCursor();
    }
}

void PlanView::mouseReleaseEvent(QMouseEvent* event)
{
    event->accept();
    if (m_pan && (event->button() == Qt::MiddleButton || event->button() == Qt::LeftButton)) {
        m_pan.reset();
        refreshCursor();
        return;
    }
    if (m_tool && event->button() == Qt::LeftButton)
        m_tool->release(pointerOf(*event));
}

void PlanView::keyPressEvent(QKeyEvent* event)
{
    if (m_tool && m_tool->key(*event)) {
        event->accept();
        return;
    }
    if (event->key() == Qt::Key_Space && !event->isAutoRepeat()) {
        m_space = true;
        refreshCursor();
        return;
    }
    const bool arrows = event->key() >= Qt::Key_Left && event->key() <= Qt::Key_Down;
    if (arrows && !(event->modifiers() & (Qt::ControlModifier | Qt::AltModifier))) {
        const QPoint step = event->key() == Qt::Key_Left    ? QPoint(-40, 0)
                            : event->key() == Qt::Key_Right ? QPoint(40, 0)
                            : event->key() == Qt::Key_Up    ? QPoint(0, -40)
                                                            : QPoint(0, 40);
        panBy(step);
        return;
    }
    event->ignore();
}

void PlanView::keyReleaseEvent(QKeyEvent* event)
{
    if (event->key() == Qt::Key_Space && !event->isAutoRepeat()) {
        m_space = false;
        refreshCursor();
        return;
    }
    QGraphicsView::keyReleaseEvent(event);
}

void PlanView::contextMenuEvent(QContextMenuEvent* event)
{
    event->accept();
    if (event->reason() == QContextMenuEvent::Mouse && std::exchange(m_rightBroke, false))
        return;
    if (event->reason() == QContextMenuEvent::Mouse) {
        const auto found = m_scene->at(mapToScene(event->pos()));
        if (!found.empty() && !m_document.isSelected(found.front()))
            m_document.select({found.front()});
        Q_EMIT menuRequested(event->globalPos());
        return;
    }
    const QRectF extent = m_scene->extentOf(m_document.selection());
    const QPoint place = extent.isNull() ? viewport()->rect().center() : mapFromScene(extent.center());
    Q_EMIT menuRequested(viewport()->mapToGlobal(place));
}

void PlanView::leaveEvent(QEvent* event)
{
    m_furniture->setPointer(std::nullopt);
    Q_EMIT pointerLeft();
    QGraphicsView::leaveEvent(event);
}

void PlanView::focusOutEvent(QFocusEvent* event)
{
    m_space = false;
    refreshCursor();
    QGraphicsView::focusOutEvent(event);
}

void PlanView::changeEvent(QEvent* event)
{
    if (event->type() == QEvent::PaletteChange && m_furniture) {
        m_scene->setTheme(style::themeOf(*this));
        m_overlayItem->drawingChanged();
        resetCachedContent();
        viewport()->update();
        m_furniture->refresh();
    }
    QGraphicsView::changeEvent(event);
}

// Letters and digits typed into a gesture belong to the tool, not to the shortcut of that letter.
bool PlanView::event(QEvent* event)
{
    if (event->type() == QEvent::ShortcutOverride && m_tool) {
        const auto& key = static_cast<const QKeyEvent&>(*event);
        const bool plain = !(key.modifiers() & (Qt::ControlModifier | Qt::AltModifier | Qt::MetaModifier));
        if (plain && m_tool->wantsKey(key)) {
            event->accept();
            return true;
        }
    }
    return QGraphicsView::event(event);
}

bool PlanView::viewportEvent(QEvent* event)
{
    if (event->type() == QEvent::ToolTip) {
        const auto* help = static_cast<QHelpEvent*>(event);
        const auto found = m_scene->at(mapToScene(help->pos()));
        const auto* item = found.empty() ? nullptr : m_scene->item(found.front());
        if (item)
            QToolTip::showText(help->globalPos(), item->name() + QLatin1Char('\n') + item->description(), viewport());
        else
            QToolTip::hideText();
        return true;
    }
    return QGraphicsView::viewportEvent(event);
}

void PlanView::drawBackground(QPainter* painter, const QRectF& area)
{
    const Ink ink = m_scene->drawing().ink();
    m_scene->paintGround(*painter, area);
    if (m_settings.gridShown())
        paintGrid(*painter, ink, area, gridStepsFor(pixel(), toScene(m_settings.gridStep())));
}

void PlanView::selectNext(int step, bool keep)
{
    const auto elements = m_scene->elements();
    if (elements.empty())
        return;
    const auto count = static_cast<int>(elements.size());
    int at = step > 0 ? -1 : count;
    for (int i = 0; i < count; ++i)
        if (!m_document.selection().empty() &&
            elements[static_cast<std::size_t>(i)]->id() == m_document.selection().back())
            at = i;
    const auto next = elements[static_cast<std::size_t>(((at + step) % count + count) % count)]->id();
    auto chosen = keep ? m_document.selection() : std::vector<base::Id>();
    std::erase(chosen, next); // it becomes the last, from which the walk goes on
    chosen.push_back(next);
    m_document.select(std::move(chosen));
    showElements({next});
    m_document.say(m_scene->item(next)->name());
}

} // namespace sumpwright::ui::canvas
