// Shared<T>: the value one property has over all chosen elements: the one value they agree on, or "mixed".
#pragma once

#include <functional>
#include <optional>
#include <vector>

#include "core/plan/plan.hpp"

namespace sumpwright::ui::properties
{

template <class T> struct Shared {
    std::optional<T> value; // absent: mixed, or no element there
    bool mixed = false;

    // What is chosen in turn; equal values stay one value.
    void add(const T& next)
    {
        if (!mixed && !value) {
            value = next;
        } else if (value && !(*value == next)) {
            value.reset();
            mixed = true;
        }
    }
};

template <class T> using Read = std::function<Shared<T>(const plan::Plan&)>;

// Over the elements of a table with these ids; ids the table does not hold are passed over.
template <class T, class Element, class Of>
Shared<T> sharedOver(const plan::Table<Element>& table, const std::vector<base::Id>& ids, const Of& of)
{
    Shared<T> shared;
    for (const auto id : ids)
        if (const Element* element = table.find(id))
            shared.add(of(*element));
    return shared;
}

template <class T> Shared<T> sharedOne(T value)
{
    Shared<T> shared;
    shared.value = std::move(value);
    return shared;
}

} // namespace sumpwright::ui::properties
