// Names of undo steps: "Move grow bed B2", from an edit's intent and its subjects.
#pragma once

#include <string>

#include <QString>

#include "core/plan/edits/edit.hpp"

namespace sumpwright::ui::text
{

// Made for Document::nameEditsBy. An element the edit makes is named as the plan after it knows it.
QString editName(const plan::Edit& edit, const plan::Plan& before);
// True when the wording of this intent is known; a test asks it for every intent of the core.
bool knowsIntent(const std::string& intent);

} // namespace sumpwright::ui::text
