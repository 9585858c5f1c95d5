// ToolStrip: the small fields of the active tool, laid over the upper left of the plan. Enter in a field gives the
// keyboard back to the plan. As wide as the plan at most: fields go on in a further row, messages wrap.
#pragma once

#include <QFrame>

#include <functional>
#include <vector>

QT_BEGIN_NAMESPACE
class QComboBox;
class QLabel;
class QLineEdit;
class QVBoxLayout;
QT_END_NAMESPACE

namespace sumpwright::ui::canvas
{
class PlanView;
}

namespace sumpwright::ui::tools
{

class ToolStrip final : public QFrame
{
    Q_OBJECT

public:
    explicit ToolStrip(canvas::PlanView& view);

    // `entered` returns what is wrong, empty when the text was taken.
    QLineEdit* addField(const QString& label, std::function<QString(const QString&)> entered);
    QComboBox* addChoice(const QString& label, const QStringList& choices, std::function<void(int)> chosen);
    void placeAndShow();
    const QLabel& message() const { return *m_message; }

protected:
    void keyPressEvent(QKeyEvent* event) override;
    bool eventFilter(QObject* watched, QEvent* event) override; // Esc gives the keyboard back; the plan's size

private:
    struct Entry {
        QLabel* words;
        QWidget* field;
    };
    void add(QLabel* words, QWidget* field);
    void layOut();
    void say(const QString& message);

    canvas::PlanView& m_view;
    const QObject* m_watched; // the plan's viewport
    std::vector<Entry> m_entries;
    QVBoxLayout* m_rows;
    QLabel* m_message;
};

} // namespace sumpwright::ui::tools
