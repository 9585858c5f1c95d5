// ReadableView: the chart's view: paints the mark at the value being read, and tells pointer and keys.
#pragma once

#include <QChartView>

#include "ui/charts/reading.hpp"

namespace sumpwright::ui::charts
{

class ReadableView : public QChartView
{
    Q_OBJECT

public:
    explicit ReadableView(QChart* chart, QWidget* parent = nullptr);

    void mark(const QRectF& place, bool shown); // in axis values
    // The reading nearest to a point of the view, or -1.
    int nearest(const std::vector<Reading>& readings, const QPoint& at) const;

Q_SIGNALS:
    void pointed(const QPoint& at);
    void left();
    void keyPressed(int key);
    void activated(const QPoint& at);

protected:
    void drawForeground(QPainter* painter, const QRectF& area) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mouseDoubleClickEvent(QMouseEvent* event) override;
    void leaveEvent(QEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void wheelEvent(QWheelEvent* event) override;

private:
    QRectF inScene(const QRectF& place) const;

    QRectF m_mark;
    bool m_marked = false;
};

} // namespace sumpwright::ui::charts
