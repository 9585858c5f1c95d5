// DisplaySettings: how numbers are written for the person and read from them: unit system and number marks, a value
// made from the view settings when needed. Words around a number stay with the caller.
#pragma once

#include <optional>

#include <QString>

#include "core/base/outcome.hpp"
#include "core/units/format.hpp"
#include "core/units/number_style.hpp"
#include "core/units/parse.hpp"
#include "core/units/unit_system.hpp"

namespace sumpwright::ui::text
{

// The unit an entry is written in and takes for a bare number, by unit system; empty: the kind's usual one.
struct EntryUnit {
    std::string_view metric = {};
    std::string_view us = {};

    std::string_view in(units::UnitSystem system) const { return system == units::UnitSystem::us ? us : metric; }
};
inline constexpr EntryUnit inSmallSizes{"mm", "in"}; // walls, bores, pads

QString absentText();                     // an en dash
QString unbroken(QString words);          // a number and its unit stay in one line; for text that is wrapped
QString breakable(QString unbrokenWords); // back, for copying and comparing

struct DisplaySettings {
    units::UnitSystem system = units::UnitSystem::metric;
    units::NumberStyle numbers;

    // Rounded for reading: "3 000 L/h", "+0.850 m"; absent: an en dash.
    template <class Kind> QString quantityText(const Kind& quantity, const units::Look& look = {}) const
    {
        return QString::fromStdString(units::format(quantity, system, numbers, look));
    }
    template <class Kind> QString quantityText(const std::optional<Kind>& quantity, const units::Look& look = {}) const
    {
        return quantity ? quantityText(*quantity, look) : absentText();
    }
    // For an entry: five digits. Reading it back gives a near value only, so an entry nobody typed in is never
    // written back.
    template <class Kind> QString entryText(const Kind& quantity, EntryUnit unit = {}) const
    {
        units::Look look;
        look.unit = unit.in(system);
        look.withoutTrailingZeros = true;
        look.significantDigits = 5;
        return quantityText(quantity, look);
    }
    // A bare number counts in the unit the value `like` is shown in.
    template <class Kind>
    base::Outcome<Kind> read(const QString& text, EntryUnit unit = {}, std::string_view currency = {},
                             const Kind& like = Kind()) const
    {
        units::Reading reading;
        reading.bareUnit = unit.in(system).empty() ? units::shownUnit(like, system) : unit.in(system);
        reading.currency = currency;
        reading.typed = system;
        return units::parse<Kind>(text.toStdString(), numbers, reading);
    }

    QString ratioText(double ratio, int significantDigits = 3) const;   // "0.75"
    QString percentText(double ratio, int significantDigits = 3) const; // "61.3 %"
    // For entries: up to six digits, without trailing zeros.
    QString ratioEntryText(double ratio) const;
    QString percentEntryText(double ratio) const;
    base::Outcome<double> readRatio(const QString& text) const;

    friend bool operator==(const DisplaySettings&, const DisplaySettings&) = default;
};

} // namespace sumpwright::ui::text
