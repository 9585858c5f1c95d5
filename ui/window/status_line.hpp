// StatusLine: messages on the left, the pointer's place and level on the right.
#pragma once

#include <optional>

#include <QStatusBar>

#include "core/plan/point.hpp"

QT_BEGIN_NAMESPACE
class QLabel;
QT_END_NAMESPACE

namespace sumpwright::ui::document
{
class Document;
}

namespace sumpwright::ui::window
{

class StatusLine : public QStatusBar
{
    Q_OBJECT

public:
    StatusLine(document::Document& document, QWidget* parent);

    void showPointer(std::optional<plan::Point> place);
    void showHint(const QString& hint); // what the active tool waits for; a message covers it for a while
    void showScale(double denominator); // 50 for 1:50

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void refresh();
    void fitHint();

    document::Document& m_document;
    std::optional<plan::Point> m_place;
    QLabel* m_hint;
    QString m_words; // the whole hint
    QLabel* m_x;
    QLabel* m_y;
    QLabel* m_level;
    QLabel* m_scale;
};

} // namespace sumpwright::ui::window
