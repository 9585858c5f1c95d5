// Chosen: the elements a form is about, the document they belong to, and how their numbers are written.
#pragma once

#include <vector>

#include "ui/document/document.hpp"
#include "ui/text/display.hpp"

namespace sumpwright::ui::properties
{

struct Chosen {
    document::Document& document;
    std::vector<base::Id> ids;

    bool one() const { return ids.size() == 1; }
    base::Id first() const { return ids.empty() ? base::Id{} : ids.front(); }
    const plan::Plan& plan() const { return document.shown(); }
    text::DisplaySettings display() const;
};

} // namespace sumpwright::ui::properties
