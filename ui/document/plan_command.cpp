#include "ui/document/plan_command.hpp"

#include "ui/document/document.hpp"

namespace sumpwright::ui::document
{

PlanCommand::PlanCommand(Document& document, plan::Plan before, plan::Plan after, const QString& name, QString burst)
    : QUndoCommand(name), m_document(document), m_before(std::move(before)), m_after(std::move(after)),
      m_burst(std::move(burst))
{
}

void PlanCommand::undo()
{
    m_document.endBurst();
    m_document.showCommitted(m_before);
}

void PlanCommand::redo() { m_document.showCommitted(m_after); }

bool PlanCommand::mergeWith(const QUndoCommand* later)
{
    const auto& command = static_cast<const PlanCommand&>(*later);
    if (command.m_burst != m_burst)
        return false;
    m_after = command.m_after;
    setObsolete(m_after == m_before); // there and back again leaves no step
    return true;
}

} // namespace sumpwright::ui::document
