// ResultField: one computed value beside the entries it answers to: grey and marked when stale, a dash where there is
// none, and a button that asks for its working where it has one. It keeps its place and, while held, its height.
#pragma once

#include <functional>
#include <optional>

#include <QWidget>

#include "core/assessment/working.hpp"

QT_BEGIN_NAMESPACE
class QPushButton;
QT_END_NAMESPACE

namespace sumpwright::ui::properties
{

class QuietLabel;

class ResultField : public QWidget
{
    Q_OBJECT

public:
    using Text = std::function<QString(const assessment::Assessment&)>; // empty: a dash
    using Working = std::function<std::optional<assessment::Working>(const assessment::Assessment&)>;

    ResultField(const QString& name, Text text, Working working, QWidget* parent = nullptr);

    void setFullName(const QString& name); // for a reader that does not see the rows around

    // Null: nothing computed yet.
    void show(const assessment::Assessment* results, bool stale);
    void holdHeight(bool hold);
    QString shownText() const;
    QPushButton* workingButton() { return m_button; } // null where there is no working

Q_SIGNALS:
    void workingWanted(const sumpwright::assessment::Working& working);

private:
    Text m_text;
    Working m_working;
    std::optional<assessment::Working> m_ready;
    QuietLabel* m_value;
    QPushButton* m_button = nullptr;
};

} // namespace sumpwright::ui::properties
