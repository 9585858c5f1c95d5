// LevelEditor: a small field on the plan for the level of one vertex of a run, in place. Enter takes it, Esc leaves it
// as it was, Tab goes on to the next vertex and Shift+Tab back; leaving takes what reads as a level. Ends held by a
// port, pump or tee follow that and are passed over.
#pragma once

#include <QFrame>

#include <cstddef>
#include <optional>

#include "core/base/id.hpp"
#include "core/plan/run.hpp"

QT_BEGIN_NAMESPACE
class QLabel;
class QLineEdit;
QT_END_NAMESPACE

namespace sumpwright::ui::canvas
{
class PlanView;
}

namespace sumpwright::ui::tools
{

class LevelEditor final : public QFrame
{
    Q_OBJECT

public:
    explicit LevelEditor(canvas::PlanView& view);

    void open(base::Id run, std::size_t vertex); // says why where that level is not to be typed
    void openFirst(base::Id run);
    bool isOpen() const { return m_run.valid(); }
    void leave();          // takes what is typed, where it reads as a level
    void followPlan();     // plan, zoom or selection changed
    QPointF place() const; // of the vertex, scene
    QLineEdit* field() const { return m_field; }

Q_SIGNALS:
    void changed(); // opened, moved on or shut

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;

private:
    const plan::Run* run() const;
    void show(std::size_t vertex);
    void shut();
    bool take(); // false: refused, and says why beneath
    bool takeTyped();
    bool key(int key);
    void step(int by);
    void say(const QString& message);
    void layOut();

    canvas::PlanView& m_view;
    QLabel* m_caption;
    QLineEdit* m_field;
    QLabel* m_message;
    base::Id m_run;
    std::size_t m_vertex = 0;
    QString m_shown;
};

} // namespace sumpwright::ui::tools
