// Enum values as the keys of a choice.
#pragma once

#include <initializer_list>
#include <string>
#include <vector>

#include "ui/properties/choice_field.hpp"
#include "ui/text/names.hpp"

namespace sumpwright::ui::properties
{

template <class Enum> std::string keyOf(Enum value) { return std::to_string(static_cast<int>(value)); }
template <class Enum> Enum enumOf(const std::string& key) { return static_cast<Enum>(std::stoi(key)); }

template <class Enum> std::vector<Choice> choicesOf(std::initializer_list<Enum> values)
{
    std::vector<Choice> choices;
    for (const Enum value : values)
        choices.push_back({keyOf(value), text::heading(text::nameOf(value)), {}});
    return choices;
}

} // namespace sumpwright::ui::properties
