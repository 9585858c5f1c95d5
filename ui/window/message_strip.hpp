// MessageStrip: one line above the plan that says something and offers ways on, without stopping the work.
//
// A strip has a key: showing a message of the same key replaces the one there. Told to assistive technology when it
// appears. Weight is told by a word and a drawn shape, not by colour alone.
#pragma once

#include <functional>
#include <vector>

#include <QFrame>
#include <QString>

QT_BEGIN_NAMESPACE
class QVBoxLayout;
QT_END_NAMESPACE

namespace sumpwright::ui::window
{

enum class Weight { note, caution, fault };

struct StripChoice {
    QString text;
    std::function<void()> action; // runs after the strip is gone
};

struct StripMessage {
    QString key;
    Weight weight = Weight::note;
    QString text;
    std::vector<StripChoice> choices; // a Dismiss choice is always there
};

// The place where strips stack up; takes no room when there are none.
class StripStack : public QWidget
{
    Q_OBJECT

public:
    explicit StripStack(QWidget* parent = nullptr);

    void show(StripMessage message);
    void drop(const QString& key);
    bool holds(const QString& key) const;
    QStringList texts() const; // what is on view, top first

private:
    QVBoxLayout* m_rows;
};

class MessageStrip : public QFrame
{
    Q_OBJECT

public:
    MessageStrip(StripMessage message, QWidget* parent);

    const QString& key() const { return m_message.key; }
    QString text() const { return m_message.text; }

protected:
    void paintEvent(QPaintEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override; // Esc dismisses

private:
    void leave(const std::function<void()>& then);

    StripMessage m_message;
};

} // namespace sumpwright::ui::window
