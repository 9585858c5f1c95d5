// PlanCommand: the one undo command of the program - the plan before, the plan after, and the name of the step.
#pragma once

#include <QUndoCommand>

#include "core/plan/plan.hpp"

namespace sumpwright::ui::document
{

class Document;

class PlanCommand : public QUndoCommand
{
public:
    // Commands with the same burst key that follow each other become one; an empty key never merges.
    PlanCommand(Document& document, plan::Plan before, plan::Plan after, const QString& name, QString burst);

    void undo() override;
    void redo() override;
    int id() const override { return m_burst.isEmpty() ? -1 : 1; }
    bool mergeWith(const QUndoCommand* later) override;

private:
    Document& m_document;
    plan::Plan m_before;
    plan::Plan m_after;
    QString m_burst;
};

} // namespace sumpwright::ui::document
