// SignButton: one vital sign - a quiet label over a figure, and how much worse it has become - that can be pressed.
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
    const Sign& sign() const { return m_sign; }

    QSize sizeHint() const override;
    QSize minimumSizeHint() const override { return sizeHint(); }

protected:
    void paintEvent(QPaintEvent* event) override;
    bool event(QEvent* event) override;

private:
    Sign m_sign;
    bool m_stale = false;
};

} // namespace sumpwright::ui::charts
