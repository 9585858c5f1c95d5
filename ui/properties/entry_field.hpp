// EntryField: one line of typed input with what was refused beneath it, in place of any message box.
//
// Enter or leaving the field hands the text over once; text nobody changed is never handed over. Refused: the value
// stays as it was and the field says why; after Enter the text stays to be mended, after leaving the old value is
// back; Esc gives the old value back at once. While the person types, news from the plan waits.
#pragma once

#include <functional>
#include <optional>

#include <QWidget>

#include "core/base/outcome.hpp"

QT_BEGIN_NAMESPACE
class QKeyEvent;
class QLineEdit;
QT_END_NAMESPACE

namespace sumpwright::ui::properties
{

class RefusalLine;

class EntryField : public QWidget
{
    Q_OBJECT

public:
    // Does what the text asks for; a refusal is shown beneath.
    using Accept = std::function<std::optional<base::Refusal>(const QString& text)>;

    // The name is read by assistive tools and opens the sentence of a refusal.
    EntryField(const QString& name, Accept accept, QWidget* parent = nullptr);

    void setShown(const QString& text);
    void setMixed();                         // several elements that differ
    void setEmptyText(const QString& words); // stands in an empty field: what holds when nothing is entered
    void setReadOnly(bool readOnly);
    void refuseInto(RefusalLine& line); // a line shared with neighbours takes the place of the own one beneath

    void finish(); // hands over what is typed, as when the field is left

    QLineEdit& line() { return *m_line; }
    QString refusalText() const; // empty: nothing refused

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    enum class By { enter, leaving };
    void handOver(By by);
    void refuse(const base::Refusal& refusal, const QString& typed, By by);
    void giveBack();
    void keepRoom();
    void clearRefusal();
    bool claims(QKeyEvent& key); // Esc, and undo and redo
    bool holdsSomething() const;

    QLineEdit* m_line;
    RefusalLine* m_refusal;
    Accept m_accept;
    QString m_shown;
    QString m_emptyText;
    bool m_mixed = false;
};

} // namespace sumpwright::ui::properties
