// Workplace: what a window works on - the document, its life on disk, and the memory of the person's ways. Outlives
// the widgets that look at it.
#pragma once

#include "ui/canvas/canvas_settings.hpp"
#include "ui/document/document.hpp"
#include "ui/document/recent_plans.hpp"
#include "ui/document/session.hpp"
#include "ui/text/undo_names.hpp"
#include "ui/window/window_state.hpp"

namespace sumpwright::ui::window
{

struct Workplace {
    explicit Workplace(const QString& stateFolder)
        : session(document, stateFolder), recent(stateFolder), state(stateFolder)
    {
        document.nameEditsBy(text::editName);
    }

    document::Document document;
    document::Session session;
    document::RecentPlans recent;
    WindowState state;
    canvas::CanvasSettings canvas;
};

} // namespace sumpwright::ui::window
