#include "ui/properties/commit.hpp"

#include "ui/document/document.hpp"

namespace sumpwright::ui::properties
{

std::optional<base::Refusal> commitOrRefuse(document::Document& document, const plan::Edit& edit)
{
    if (document.readOnly())
        return base::Refusal{"document.read-only", "", "this plan is open for reading only",
                             "save it under another name to change it"};
    if (auto tried = edit.apply(document.committed()); !tried)
        return tried.refusal();
    document.commit(edit);
    return std::nullopt;
}

} // namespace sumpwright::ui::properties
