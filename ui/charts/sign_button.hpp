// SignButton: one vital sign - a quiet label over a figure, and how much worse it has become - that can be pressed.
// Its size is reserved and does not follow the text: how much worse stands beside the figure where there is room, and
// takes the place of the label where there is none.
#pragma once

#include <QAbstractButton>

#include "ui/charts/signs.hpp"

namespace sumpwright::ui::charts
{

class SignButton : public QAbstractButton
{
    Q_OBJECT

public:
    explicit SignButton(QWidget* parent);

    void show(const Sign& sign, bool stale);
    void showNothing(); // the sign is gone for now, its place stays
    const Sign& sign() const { return m_sign; }

    enum class Reserve { atLeast, exactly };
    void reserve(Reserve how); // room for the sign as it is now

    QSize sizeHint() const override;
    QSize minimumSizeHint() const override { return sizeHint(); }

protected:
    void paintEvent(QPaintEvent* event) override;
    bool event(QEvent* event) override;

private:
    int neededWidth() const;
    void paintWorse(QPainter& painter, QPoint at, int room) const;

    Sign m_sign;
    bool m_stale = false;
    int m_reserved = 0;
};

} // namespace sumpwright::ui::charts
