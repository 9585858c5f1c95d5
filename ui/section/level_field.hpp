// LevelField: a small field beside a level, to type it. Enter takes it, Esc leaves it as it was; leaving the field
// takes what reads as a level. What is refused is told beneath.
#pragma once

#include <QFrame>

#include "core/plan/level_ref.hpp"
#include "ui/text/display.hpp"

QT_BEGIN_NAMESPACE
class QLabel;
class QLineEdit;
QT_END_NAMESPACE

namespace sumpwright::ui::document
{
class Document;
}

namespace sumpwright::ui::section
{

class LevelField final : public QFrame
{
    Q_OBJECT

public:
    LevelField(document::Document& document, QWidget* parent);

    void open(const plan::LevelRef& level, QPoint place); // in the parent; inside it
    bool isOpen() const { return isVisible(); }
    void leave(); // takes what is typed, where it reads as a level
    QLineEdit* field() const { return m_field; }

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;

private:
    text::DisplaySettings display() const;
    bool take(); // false: refused, and says why
    void shut();
    void layOut();

    document::Document& m_document;
    QLabel* m_caption;
    QLineEdit* m_field;
    QLabel* m_message;
    plan::LevelRef m_level;
    QString m_shown;
    QPoint m_place;
};

} // namespace sumpwright::ui::section
