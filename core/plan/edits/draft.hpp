// Draft: the plan an edit works on. The body changes it and may refuse; what every edit owes - tees mended, run ends
// following what they meet, the checks - is done once, when the body is through.
#pragma once

#include <functional>
#include <map>
#include <string>
#include <string_view>
#include <vector>

#include "core/plan/edits/edit.hpp"
#include "core/plan/tags.hpp"

namespace sumpwright::plan
{

// Thrown by the body of an edit, caught by makeEdit; never leaves an edit.
struct Refused {
    base::Refusal refusal;
};
[[noreturn]] void refuse(std::string id, std::string place, std::string what, std::string accepts);
[[noreturn]] void refuseUnknown(base::Id id, const char* kind);

template <class Element> struct Kept;
template <> struct Kept<Fixture> {
    static constexpr auto table = &Plan::fixtures;
    static constexpr const char* name = "fixture";
};
template <> struct Kept<Vessel> {
    static constexpr auto table = &Plan::vessels;
    static constexpr const char* name = "vessel";
};
template <> struct Kept<Pump> {
    static constexpr auto table = &Plan::pumps;
    static constexpr const char* name = "pump";
};
template <> struct Kept<Tee> {
    static constexpr auto table = &Plan::tees;
    static constexpr const char* name = "tee";
};
template <> struct Kept<Run> {
    static constexpr auto table = &Plan::runs;
    static constexpr const char* name = "pipe run";
};
template <> struct Kept<Note> {
    static constexpr auto table = &Plan::notes;
    static constexpr const char* name = "note";
};
template <> struct Kept<DimensionLine> {
    static constexpr auto table = &Plan::dimensions;
    static constexpr const char* name = "dimension line";
};

class Draft
{
public:
    explicit Draft(const Plan& committed) : before(committed), plan(committed) {}

    const Plan& before;
    Plan plan;

    base::Id newId() { return {plan.nextId++}; }
    std::string newTag(std::string_view prefix);

    // Refuses an id the plan does not have.
    template <class Element> const Element& the(base::Id id) const
    {
        const Element* element = (plan.*Kept<Element>::table).find(id);
        if (!element)
            refuseUnknown(id, Kept<Element>::name);
        return *element;
    }
    template <class Element> void put(Element element) { (plan.*Kept<Element>::table).put(std::move(element)); }
    template <class Element> void erase(base::Id id) { (plan.*Kept<Element>::table).erase(id); }
    template <class Element, class Change> void change(base::Id id, Change&& how)
    {
        Element element = the<Element>(id);
        how(element);
        put(std::move(element));
    }

private:
    Tags m_tags;
    bool m_tagsKnown = false;
    std::map<std::string, int, std::less<>> m_lastNumber;
};

using DraftChange = std::function<void(Draft&)>;
Edit makeEdit(std::string intent, std::vector<base::Id> subjects, DraftChange body);

// One change made to each of many elements of a kind.
template <class Element>
Edit changeEach(std::string intent, std::vector<base::Id> ids, std::function<void(Element&)> how)
{
    return makeEdit(std::move(intent), ids, [ids, how](Draft& draft) {
        for (const base::Id id : ids)
            draft.change<Element>(id, how);
    });
}
// One property set on each of many elements of a kind.
template <class Element, class Value>
Edit setEach(std::string intent, std::vector<base::Id> ids, Value Element::*property, Value value)
{
    return changeEach<Element>(std::move(intent), std::move(ids),
                               [property, value](Element& element) { element.*property = value; });
}

} // namespace sumpwright::plan
