// PlanView: the plan on screen - zoom, pan, grid, furniture - and the way from pointer and keys to the active tool.
//
// Zoom is pixels per scene millimetre, 0.004 to 4. "1:50" is taken at 96 pixels an inch.
#pragma once

#include <QGraphicsView>

#include <memory>
#include <optional>

#include "core/base/id.hpp"
#include "core/plan/point.hpp"
#include "ui/canvas/canvas_tool.hpp"
#include "ui/canvas/figures.hpp"
#include "ui/canvas/overlay.hpp"

namespace sumpwright::ui::document
{
class Document;
}

namespace sumpwright::ui::canvas
{

class CanvasSettings;
class Furniture;
class OverlayItem;
class PlanScene;

class PlanView final : public QGraphicsView
{
    Q_OBJECT

public:
    PlanView(document::Document& document, CanvasSettings& settings, QWidget* parent = nullptr);
    ~PlanView() override;

    PlanScene& planScene() const { return *m_scene; }
    CanvasSettings& settings() const { return m_settings; }
    document::Document& document() const { return m_document; }
    Figures figures() const;

    void setTool(CanvasTool* tool); // not owned; null: none. Ends the gesture of the former one.
    CanvasTool* tool() const { return m_tool; }
    void setOverlay(Overlay overlay);
    const Overlay& overlay() const;

    double zoom() const { return transform().m11(); } // pixels per scene millimetre
    double pixel() const { return 1.0 / zoom(); }     // scene millimetres per pixel
    QRectF visibleScene() const;
    void zoomAbout(QPoint fixed, double factor); // the place under this viewport pixel stays there
    void zoomIn();
    void zoomOut();
    void zoomToFit();
    void zoomToSelection();
    void zoomToScale(double denominator = 50.0); // 1:50
    void zoomToRect(const QRectF& scene);
    void showElements(const std::vector<base::Id>& ids); // pans, and zooms out only where they do not fit
    void panBy(QPoint pixels);
    double scaleDenominator() const; // 50 for 1:50

    // Keyboard walk over the elements.
    void selectNext(int step, bool keep = false); // keep: what is selected stays so

Q_SIGNALS:
    void leaving(); // the view is being destroyed: nobody may use it any more
    void pointerMoved(sumpwright::plan::Point place);
    void pointerLeft();
    void zoomChanged();
    void menuRequested(QPoint global);              // context menu, by pointer or by key
    void elementActivated(sumpwright::base::Id id); // double click or Enter: open its properties

protected:
    bool event(QEvent* event) override;
    void drawBackground(QPainter* painter, const QRectF& area) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void mouseDoubleClickEvent(QMouseEvent* event) override;
    void wheelEvent(QWheelEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void keyReleaseEvent(QKeyEvent* event) override;
    void contextMenuEvent(QContextMenuEvent* event) override;
    void leaveEvent(QEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;
    void changeEvent(QEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void showEvent(QShowEvent* event) override;
    void scrollContentsBy(int dx, int dy) override;
    bool viewportEvent(QEvent* event) override;

private:
    void followDocument();
    void settingsChanged();
    void planChanged();
    void waterChanged();
    void setZoom(double zoom, QPointF scenePlace, QPointF viewPlace);
    void makeRoom(const QRectF& wanted);
    CanvasPointer pointerOf(const QMouseEvent& event) const;
    bool startPan(const QMouseEvent& event);
    void breakOff(bool drag);
    void refreshCursor();

    document::Document& m_document;
    CanvasSettings& m_settings;
    std::unique_ptr<PlanScene> m_scene;
    OverlayItem* m_overlayItem = nullptr;
    Furniture* m_furniture = nullptr;
    CanvasTool* m_tool = nullptr;
    std::optional<QPoint> m_pan; // where the pan's last event was
    bool m_space = false;
    bool m_rightBroke = false; // the last right press ended a gesture
    bool m_fitted = false;
    // What zoomToFit showed, while the person has neither zoomed nor panned since: shown whole at any size of the
    // window.
    std::optional<QRectF> m_fittedTo;
};

} // namespace sumpwright::ui::canvas
