// Commits an edit as one undo step, or tells why not; nothing is said elsewhere, the field says it.
#pragma once

#include <optional>

#include "core/base/outcome.hpp"
#include "core/plan/edits/edit.hpp"

namespace sumpwright::ui::document
{
class Document;
}

namespace sumpwright::ui::properties
{

std::optional<base::Refusal> commitOrRefuse(document::Document& document, const plan::Edit& edit);

} // namespace sumpwright::ui::properties
