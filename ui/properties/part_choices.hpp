// Lists of catalogue rows that follow the own parts of the plan: made anew only when these change.
#pragma once

#include <memory>

#include "ui/document/document.hpp"

namespace sumpwright::ui::properties
{

// A refresh that calls `make` when the document's catalogue is another than at the last call.
template <class Make> auto whenPartsChange(const document::Document& document, Make make)
{
    auto seen = std::make_shared<std::shared_ptr<const catalogue::Catalogue>>(document.catalogue());
    return [&document, seen, make](const plan::Plan&) {
        if (*seen == document.catalogue())
            return;
        *seen = document.catalogue();
        make();
    };
}

} // namespace sumpwright::ui::properties
