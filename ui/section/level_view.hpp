// LevelView: the drawing of levels under the plan, in one of its two modes. As elevation it shares the plan view's
// horizontal axis: what stands left there stands left here, at the same scale. As section it has a scale of its own.
// Levels are dragged, moved by keys or typed; one selection is shared with the plan. Holds no truth: a drag is a
// preview of the document, and one undo step when it ends.
#pragma once

#include <QAbstractScrollArea>

#include <map>
#include <optional>

#include "ui/section/elevation_page.hpp"
#include "ui/section/level_drag.hpp"
#include "ui/section/section_page.hpp"

namespace sumpwright::ui::canvas
{
class PlanView;
}
namespace sumpwright::ui::document
{
class Document;
}

namespace sumpwright::ui::section
{

class LevelField;

enum class Mode { elevation, section };

class LevelView final : public QAbstractScrollArea
{
    Q_OBJECT

public:
    LevelView(document::Document& document, canvas::PlanView& plan, QWidget* parent = nullptr);
    ~LevelView() override;

    Mode mode() const { return m_mode; }
    void setMode(Mode mode);
    int heights() const { return m_heights; } // how many times larger heights are drawn
    void setHeights(int times);
    void chooseWay(std::optional<report::WayChoice> choice); // section
    void fit();                                              // all of it; as elevation the whole plan

    const Page& page();   // as it is shown now
    const Sheet& sheet(); // as it lies on the viewport now
    SectionPage& sectionPage() { return m_section; }
    const std::vector<canvas::PlacedLabel>& labels() const { return m_placed; } // as last painted
    const std::vector<canvas::LabelWish>& wishes() const { return m_wishes; }
    const std::optional<plan::LevelRef>& current() const { return m_at; } // the level the keys are on
    LevelField& field() const { return *m_field; }
    QString readOut() const { return m_readOut; } // while dragging: the level, and why it is refused
    bool dragging() const { return m_drag.has_value(); }

    QSize sizeHint() const override { return {640, 220}; }
    QSize minimumSizeHint() const override { return {260, 36}; }

Q_SIGNALS:
    void menuRequested(QPoint global);
    void pageChanged(); // drawn anew: another way may be there to choose

protected:
    bool event(QEvent* event) override;
    bool eventFilter(QObject* watched, QEvent* event) override; // the plan's viewport moves or changes size
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void scrollContentsBy(int dx, int dy) override;
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
    void showEvent(QShowEvent* event) override;
    void hideEvent(QHideEvent* event) override;

private:
    struct Press {
        QPointF at;
        std::optional<LevelHandle> handle;
        units::Elevation level = units::elevationMetres(0.0); // of the pointer
        Qt::KeyboardModifiers modifiers;
    };

    void follow();
    void markOld();
    Page& now() { return m_mode == Mode::elevation ? static_cast<Page&>(m_elevation) : m_section; }
    void renew();
    void layOut();
    void layOutElevation(const QRectF& room, double height);
    void layOutSection(const QRectF& room, double height);
    void placeUpright(const QRectF& room);
    Pens pens() const;

    void paintDrawing(QPainter& painter, const Pens& pens);
    void paintLetters(QPainter& painter, const Pens& pens);
    void paintHandles(QPainter& painter, const Pens& pens);
    void paintDrag(QPainter& painter, const Pens& pens);
    void paintHeights(QPainter& painter, const Pens& pens);
    void paintAlong(QPainter& painter, const Pens& pens, const QRectF& strip);

    std::optional<LevelHandle> handleAt(QPointF place);
    base::Id elementAt(QPointF place);
    bool mayEdit();
    void drag(QPointF place, Qt::KeyboardModifiers modifiers);
    void showDragged();
    void endDrag(bool keep);
    void click(QPointF place, Qt::KeyboardModifiers modifiers);
    void pan(QPoint pixels);
    void zoomAbout(QPointF place, double factor);

    std::optional<std::size_t> indexOf(const std::optional<plan::LevelRef>& level);
    void goTo(const LevelHandle& handle);
    bool step(int by);
    bool moveKey(const QKeyEvent& event);
    bool dragKey(QKeyEvent& event);
    void openField();
    void tell(const LevelHandle& handle);

    document::Document& m_document;
    canvas::PlanView& m_plan;
    Mode m_mode = Mode::elevation;
    int m_heights = 1;
    ElevationPage m_elevation;
    SectionPage m_section;
    bool m_old = true; // the page is to be drawn anew
    Sheet m_sheet;
    QRectF m_extent;               // metres; kept while a drag lasts, so that nothing jumps
    std::optional<double> m_scale; // section: chosen; none: fitted
    double m_left = 0.0;           // section: metres along at the left edge, when a scale is chosen
    bool m_laying = false;
    std::vector<canvas::LabelWish> m_wishes;
    std::vector<canvas::PlacedLabel> m_placed;
    std::map<canvas::LabelKey, std::size_t> m_former;
    std::optional<Press> m_press;
    std::optional<LevelDrag> m_drag;
    std::optional<plan::LevelRef> m_hover;
    std::optional<plan::LevelRef> m_at;
    std::optional<QPoint> m_panFrom;
    bool m_space = false;
    bool m_rightBroke = false; // the last right press ended a drag: no menu belongs to it
    QString m_readOut;
    QPointF m_readOutAt;
    LevelField* m_field;
};

} // namespace sumpwright::ui::section
