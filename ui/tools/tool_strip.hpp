// ToolStrip: the small fields of the active tool, laid over the upper left of the plan. Enter in a field gives the
// keyboard back to the plan.
#pragma once

#include <QFrame>

#include <functional>

QT_BEGIN_NAMESPACE
class QComboBox;
class QHBoxLayout;
class QLabel;
class QLineEdit;
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
    bool eventFilter(QObject* watched, QEvent* event) override; // Esc gives the keyboard back

private:
    void say(const QString& message);

    canvas::PlanView& m_view;
    QHBoxLayout* m_row;
    QLabel* m_message;
};

} // namespace sumpwright::ui::tools
