#include "ui/properties/name_section.hpp"

#include "core/plan/edits/rename.hpp"

namespace sumpwright::ui::properties
{

NameSection::NameSection(Chosen about, QWidget* parent) : Section(std::move(about), {}, parent)
{
    if (!chosen().one())
        return;
    const base::Id id = chosen().first();
    addRow(tr("Tag"), textField(
                          tr("Tag"), [id](const plan::Plan& plan) { return sharedOne(plan::tagOf(plan, id)); },
                          [id](const std::string& tag) { return plan::renameTag(id, tag); }));
}

} // namespace sumpwright::ui::properties
