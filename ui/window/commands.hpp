// Commands: every action of the window, by id, with its words, key and tip; menus, tool bar, key list and tests read
// them from here. A command in the plan's scope works only while the plan view has the keyboard, so that single
// letters can be typed everywhere else.
#pragma once

#include <functional>
#include <map>
#include <set>
#include <string>
#include <vector>

#include <QAction>
#include <QObject>
#include <QString>

namespace sumpwright::ui::window
{

enum class Menu { file, edit, view, place, arrange, check, help };
constexpr int menuCount = 7;
enum class Scope { window, planView };

struct CommandSpec {
    std::string id = {}; // "file.save"; stable
    Menu menu = Menu::file;
    QString text = {};    // in the menu, with its mnemonic
    QString tip = {};     // one sentence
    const char* key = ""; // portable text; may be empty only where the menu is the place for it
    QString barText = {}; // on the tool bar; empty: not there
    Scope scope = Scope::window;
    bool checkable = false;
    bool newGroup = false; // a separator before it
};

class Commands : public QObject
{
    Q_OBJECT

public:
    // Window-scope keys work in `window`, plan-scope keys in `planView`.
    Commands(QWidget* window, QWidget* planView);

    QAction* add(const CommandSpec& spec, std::function<void()> run);
    QAction* addCheckable(const CommandSpec& spec, std::function<void(bool)> run);
    QAction* find(const std::string& id) const; // an unknown id is a broken promise
    const std::vector<std::string>& order() const { return m_order; }
    const CommandSpec& spec(const std::string& id) const;

    void setLetterKeys(bool on);              // off: plan-scope commands lose their keys
    void markChanging(const std::string& id); // changes the plan: disabled while it is read-only
    void setReadOnly(bool readOnly);
    bool changesPlan(const std::string& id) const { return m_changing.contains(id); }

private:
    QAction* make(const CommandSpec& spec);

    QWidget* m_window;
    QWidget* m_planView;
    std::vector<std::string> m_order;
    std::set<std::string> m_changing;
    std::map<std::string, CommandSpec> m_specs;
    std::map<std::string, QAction*> m_actions;
};

// "Save (Ctrl+S)" with the sentence below; for tool tips.
QString tipWithKey(const QAction& action, const QString& tip);

} // namespace sumpwright::ui::window
