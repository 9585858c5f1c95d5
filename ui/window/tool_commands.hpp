// ToolCommands: the Place menu - every tool of the plan view as a command, Connect, and the site sketch.
#pragma once

#include <QObject>

#include "ui/tools/toolbox.hpp"

namespace sumpwright::ui::document
{
class Document;
class Session;
} // namespace sumpwright::ui::document

namespace sumpwright::ui::window
{

class Commands;
class StatusLine;

class ToolCommands : public QObject
{
    Q_OBJECT

public:
    ToolCommands(canvas::PlanView& view, document::Document& document, document::Session& session, StatusLine& status);

    void addTo(Commands& commands);
    bool selecting() const { return m_box.active() == "select"; }

Q_SIGNALS:
    void toolChanged();

private:
    void addSketchCommands(Commands& commands);
    void addWalkCommands(Commands& commands);
    void laySketch();

    canvas::PlanView& m_view;
    document::Document& m_document;
    document::Session& m_session;
    tools::Toolbox m_box;
};

} // namespace sumpwright::ui::window
