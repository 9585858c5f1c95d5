// ElementItem: one element of the plan on the drawing. Selection and highlight are told to it; it keeps no truth of
// its own and is never moved by itself.
#pragma once

#include <QGraphicsObject>

#include "core/base/id.hpp"
#include "ui/canvas/drawing.hpp"

namespace sumpwright::ui::canvas
{

class ElementItem : public QGraphicsObject
{
    Q_OBJECT

public:
    ElementItem(base::Id id, const Drawing& drawing);

    base::Id id() const { return m_id; }
    QString name() const;                // "grow bed B2"
    virtual QString description() const; // "at 3.20 m, 0.40 m"

    bool chosen() const { return m_chosen; }
    void setChosen(bool chosen);
    void setLit(bool lit); // pointed at in a chart or a list
    bool lit() const { return m_lit; }

    QRectF boundingRect() const final;
    QPainterPath shape() const final; // what a click meets, at least 8 px wide
    void paint(QPainter* painter, const QStyleOptionGraphicsItem*, QWidget*) final;

    // The drawn outline in scene coordinates, for marquee and fit; no pixel margins.
    QRectF extent() const { return mapToScene(outline()).boundingRect(); }
    // The zoom, the theme, the figures or the results changed.
    virtual void drawingChanged();

protected:
    virtual QPainterPath outline() const = 0; // true outline, in the item's own coordinates
    virtual bool isLine() const { return false; }
    virtual double margin() const; // scene units drawn outside the outline
    virtual void draw(QPainter& painter, const Ink& ink) const = 0;
    const Drawing& drawing() const { return m_drawing; }

private:
    void drawMark(QPainter& painter, const Ink& ink, const QColor& colour) const;

    base::Id m_id;
    const Drawing& m_drawing;
    bool m_chosen = false;
    bool m_lit = false;
};

} // namespace sumpwright::ui::canvas
