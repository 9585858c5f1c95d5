// Toolbox: the tools of the plan view by id, with the words and key each has in menus, and which one is active.
#pragma once

#include <QObject>

#include <memory>
#include <string>
#include <vector>

#include "core/base/id.hpp"

namespace sumpwright::ui::canvas
{
class PlanView;
}

namespace sumpwright::ui::tools
{

class Tool;

struct ToolSpec {
    std::string id;       // "place.sump"; stable
    QString text;         // in the menu, with its mnemonic
    QString tip;          // one sentence
    const char* key = ""; // portable text, in the plan view's scope
    QString barText;      // on the tool bar; empty: not there
    bool changesPlan = true;
    bool newGroup = false; // a separator before it
};

class Toolbox final : public QObject
{
    Q_OBJECT

public:
    explicit Toolbox(canvas::PlanView& view); // "select" is active
    ~Toolbox() override;

    const std::vector<ToolSpec>& specs() const { return m_specs; }
    void activate(const std::string& id); // an unknown id is a broken promise
    const std::string& active() const { return m_active; }
    Tool& tool(const std::string& id) const;
    QString hint() const; // of the active tool, for the status bar

    // Draws a run between the two selected elements, for those who do not drag. Says why where it cannot.
    void connectSelected();
    // Types the levels of the selected run where they stand on the plan.
    void typeLevels();

Q_SIGNALS:
    void activated(const QString& id);
    void hintChanged(const QString& hint);

private:
    void add(ToolSpec spec, std::unique_ptr<Tool> tool);
    void addVesselTools();
    void addPipeTools();
    void addBuildingTools();
    void addMeasuringTools();

    canvas::PlanView& m_view;
    std::vector<ToolSpec> m_specs;
    std::vector<std::unique_ptr<Tool>> m_tools; // as m_specs
    std::string m_active;
    bool m_viewLeft = false;
};

} // namespace sumpwright::ui::tools
