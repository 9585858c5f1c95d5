// Table: the elements of one kind, sorted by id, each an immutable shared value; a changed copy shares the rest.
// Comparing element pointers tells what an edit changed.
#pragma once

#include <algorithm>
#include <cstddef>
#include <memory>
#include <utility>
#include <vector>

#include "core/base/ensure.hpp"
#include "core/base/id.hpp"

namespace sumpwright::plan
{

template <class Element> class Table
{
public:
    using Pointer = std::shared_ptr<const Element>;

    std::size_t size() const { return m_elements.size(); }
    bool empty() const { return m_elements.empty(); }
    auto begin() const { return m_elements.begin(); } // of Pointer
    auto end() const { return m_elements.end(); }

    const Element* find(base::Id id) const
    {
        const auto at = lowerBound(id);
        return at != m_elements.end() && (*at)->id == id ? at->get() : nullptr;
    }
    Pointer share(base::Id id) const
    {
        const auto at = lowerBound(id);
        return at != m_elements.end() && (*at)->id == id ? *at : nullptr;
    }
    // Adds or replaces. An equal element keeps its pointer, so nothing counts as changed.
    [[nodiscard]] Table with(Element element) const
    {
        Table changed = *this;
        changed.put(std::move(element));
        return changed;
    }
    [[nodiscard]] Table without(base::Id id) const
    {
        Table changed = *this;
        changed.erase(id);
        return changed;
    }
    // In place, for the maker of a new plan (edits, reading a file); a plan that is shared is const.
    void put(Element element)
    {
        base::ensure(element.id.valid(), "a plan element has an id");
        const auto at = lowerBound(element.id);
        const auto index = static_cast<std::size_t>(at - m_elements.begin());
        const bool there = at != m_elements.end() && (*at)->id == element.id;
        if (there && **at == element)
            return;
        auto shared = std::make_shared<const Element>(std::move(element));
        if (there)
            m_elements[index] = std::move(shared);
        else
            m_elements.insert(m_elements.begin() + static_cast<std::ptrdiff_t>(index), std::move(shared));
    }
    void erase(base::Id id)
    {
        std::erase_if(m_elements, [id](const Pointer& p) { return p->id == id; });
    }
    // The very same shared elements: quick, and true for a copy that was not changed.
    bool sameElements(const Table& other) const { return m_elements == other.m_elements; }
    friend bool operator==(const Table& a, const Table& b)
    {
        return std::equal(a.begin(), a.end(), b.begin(), b.end(),
                          [](const Pointer& x, const Pointer& y) { return x == y || *x == *y; });
    }

private:
    auto lowerBound(base::Id id) const
    {
        return std::lower_bound(m_elements.begin(), m_elements.end(), id,
                                [](const Pointer& p, base::Id key) { return p->id < key; });
    }

    std::vector<Pointer> m_elements;
};

} // namespace sumpwright::plan
