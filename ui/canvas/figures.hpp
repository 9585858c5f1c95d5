// Figures: how quantities are written on the drawing - the reader's units and number marks.
#pragma once

#include <QString>

#include "core/units/format.hpp"
#include "core/units/measures.hpp"

namespace sumpwright::ui::canvas
{

struct Figures {
    units::UnitSystem system = units::UnitSystem::metric;
    units::NumberStyle numbers;

    template <class Kind> QString text(const Kind& quantity, const units::Look& look = {}) const
    {
        return QString::fromStdString(units::format(quantity, system, numbers, look));
    }
    // A size on the drawing: no trailing zeros, millimetres below one metre.
    QString size(units::Length length) const
    {
        units::Look look;
        look.withoutTrailingZeros = true;
        look.smallInMillimetres = true;
        return text(length, look);
    }
    friend bool operator==(const Figures&, const Figures&) = default;
};

} // namespace sumpwright::ui::canvas
