#include "ui/canvas/furniture.hpp"

#include <QPainter>
#include <QScrollBar>
#include <QWidget>

#include <cmath>
#include <limits>

#include "ui/canvas/canvas_settings.hpp"
#include "ui/canvas/legend.hpp"
#include "ui/canvas/plan_scene.hpp"
#include "ui/canvas/plan_view.hpp"
#include "ui/canvas/ruler.hpp"
#include "ui/canvas/run_scale_plate.hpp"
#include "ui/canvas/scale_bar.hpp"
#include "ui/canvas/scene_point.hpp"
#include "ui/canvas/symbols.hpp"
#include "ui/style/type.hpp"

namespace sumpwright::ui::canvas
{

namespace
{
// A small painted widget that lets every event through to the view below.
class Plate final : public QWidget
{
public:
    Plate(QWidget* parent, std::function<void(QPainter&, const QWidget&)> paint)
        : QWidget(parent), m_paint(std::move(paint))
    {
        setAttribute(Qt::WA_TransparentForMouseEvents);
    }

protected:
    void paintEvent(QPaintEvent*) override
    {
        QPainter painter(this);
        painter.setRenderHint(QPainter::Antialiasing);
        m_paint(painter, *this);
    }

private:
    std::function<void(QPainter&, const QWidget&)> m_paint;
};
} // namespace

Furniture::Furniture(PlanView& view)
    : QObject(&view), m_view(view), m_along(new Ruler(Qt::Horizontal, view)), m_up(new Ruler(Qt::Vertical, view))
{
    m_corner = new Plate(&view, [&view](QPainter& painter, const QWidget& plate) {
        const auto& theme = style::themeOf(plate);
        painter.fillRect(plate.rect(), theme.panel);
        painter.setPen(theme.quiet);
        QFont font = letterFont();
        font.setPixelSize(10);
        painter.setFont(font);
        painter.drawText(plate.rect(), Qt::AlignCenter,
                         view.figures().system == units::UnitSystem::us ? QStringLiteral("ft") : QStringLiteral("m"));
    });
    m_scaleBar = new Plate(&view, [&view](QPainter& painter, const QWidget& plate) {
        painter.translate(8.0, 2.0);
        paintScaleBar(painter, style::themeOf(plate), scaleBarFor(view.pixel(), view.figures()));
    });
    m_north = new Plate(&view, [&view](QPainter& painter, const QWidget& plate) {
        const auto& theme = style::themeOf(plate);
        const Ink ink{&theme, 1.0};
        const QPointF centre(plate.width() / 2.0, plate.height() / 2.0);
        const auto north = view.planScene().plan().site->north;
        paintNorth(painter, ink, centre, sceneRotation(north), 30.0);
        const double turn = units::inRadians(north);
        const QPointF letter = centre + QPointF(std::cos(turn), -std::sin(turn)) * 23.0;
        painter.setPen(theme.ink);
        painter.setFont(strongLetterFont());
        painter.drawText(QRectF(letter - QPointF(10.0, 8.0), QSizeF(20.0, 16.0)), Qt::AlignCenter, PlanView::tr("N"));
    });
    m_legend =
        new Plate(&view, [](QPainter& painter, const QWidget& plate) { paintLegend(painter, style::themeOf(plate)); });
    m_runScale = new Plate(
        &view, [&view](QPainter& painter, const QWidget&) { paintRunScale(painter, view.planScene().drawing()); });
    m_runScale->setAccessibleName(tr("Scale of the runs' colours"));
    m_scaleBar->setAccessibleName(tr("Scale bar"));
    m_north->setAccessibleName(tr("North arrow"));
    m_legend->setAccessibleName(tr("Legend of symbols"));
    m_corner->setAccessibleName(tr("Unit of the rulers"));
}

Furniture::~Furniture() = default;

QSize Furniture::margins() const
{
    const int side = m_view.settings().rulersShown() ? Ruler::thickness : 0;
    return {side, side};
}

void Furniture::layOut()
{
    const bool rulers = m_view.settings().rulersShown();
    const QRect drawing = m_view.viewport()->geometry();
    m_along->setVisible(rulers);
    m_up->setVisible(rulers);
    m_corner->setVisible(rulers);
    m_legend->setVisible(m_view.settings().legendShown());
    m_along->setGeometry(drawing.left(), drawing.top() - Ruler::thickness, drawing.width(), Ruler::thickness);
    m_up->setGeometry(drawing.left() - Ruler::thickness, drawing.top(), Ruler::thickness, drawing.height());
    m_corner->setGeometry(drawing.left() - Ruler::thickness, drawing.top() - Ruler::thickness, Ruler::thickness,
                          Ruler::thickness);
    constexpr int away = style::step;
    m_scaleBar->setGeometry(drawing.left() + away, drawing.bottom() - 34, 180, 32);
    m_north->setGeometry(drawing.right() - 66 - away, drawing.top() + away, 66, 66);
    const QSize legend = legendSize().toSize();
    m_legend->setGeometry(drawing.right() - legend.width() - away, drawing.bottom() - legend.height() - away,
                          legend.width(), legend.height());
    for (auto* widget : {static_cast<QWidget*>(m_along), static_cast<QWidget*>(m_up), m_corner, m_scaleBar, m_north,
                         m_legend, m_runScale})
        widget->raise();
    waterChanged();
    refresh();
}

void Furniture::refresh()
{
    for (auto* widget : {static_cast<QWidget*>(m_along), static_cast<QWidget*>(m_up), m_corner, m_scaleBar, m_north,
                         m_legend, m_runScale})
        widget->update();
}

void Furniture::waterChanged()
{
    const Drawing& drawing = m_view.planScene().drawing();
    m_runScale->setVisible(drawing.coloursRuns());
    if (!drawing.coloursRuns())
        return;
    const QRect room = m_view.viewport()->geometry();
    const QSize size = runScaleSize(drawing).toSize();
    const QRect place(room.left() + style::step, room.bottom() - 34 - size.height() - style::step, size.width(),
                      size.height());
    if (place != m_runScale->geometry())
        m_runScale->setGeometry(place);
    m_runScale->setAccessibleDescription(runScaleTitle(drawing));
    m_runScale->update();
}

void Furniture::setPointer(std::optional<QPointF> scene)
{
    const double none = std::numeric_limits<double>::quiet_NaN();
    m_along->setMark(scene ? scene->x() : none);
    m_up->setMark(scene ? scene->y() : none);
}

} // namespace sumpwright::ui::canvas
