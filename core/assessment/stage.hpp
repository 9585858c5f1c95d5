// Stage<T>: a computed value, or the reason why there is none. Never a value that is not a number.
// "not computed": something the person has not given yet, or that this program does not model.
// "not solved": everything was given, but the equations have no answer that could be found.
#pragma once

#include <string>
#include <utility>
#include <variant>

#include "core/base/ensure.hpp"
#include "core/base/id.hpp"

namespace sumpwright::assessment
{

enum class Status { solved, notComputed, notSolved };

struct Reason {
    std::string id;   // stable, e.g. "altitude-missing"
    std::string text; // plain English, e.g. "altitude missing"
    base::Id element; // the element at fault; none where there is no single one

    friend bool operator==(const Reason&, const Reason&) = default;
};

template <class T> class Stage
{
public:
    Stage(T value) : m_state(std::in_place_index<0>, std::move(value)) {}
    static Stage notComputed(Reason reason) { return Stage(Missing{Status::notComputed, std::move(reason)}); }
    static Stage notSolved(Reason reason) { return Stage(Missing{Status::notSolved, std::move(reason)}); }
    // Carries the reason of another stage on, whatever that one holds.
    template <class U> static Stage missingAs(const Stage<U>& other)
    {
        return Stage(Missing{other.status(), other.reason()});
    }
    Stage() : Stage(Missing{Status::notComputed, {"not-asked", "not asked for", {}}}) {}

    bool ok() const { return m_state.index() == 0; }
    explicit operator bool() const { return ok(); }
    Status status() const { return ok() ? Status::solved : std::get<1>(m_state).status; }
    const T& value() const
    {
        base::ensure(ok(), "value of a stage that has one");
        return std::get<0>(m_state);
    }
    const T& operator*() const { return value(); }
    const T* operator->() const { return &value(); }
    const Reason& reason() const
    {
        base::ensure(!ok(), "reason of a stage without a value");
        return std::get<1>(m_state).reason;
    }
    friend bool operator==(const Stage&, const Stage&) = default;

private:
    struct Missing {
        Status status;
        Reason reason;
        friend bool operator==(const Missing&, const Missing&) = default;
    };
    explicit Stage(Missing missing) : m_state(std::in_place_index<1>, std::move(missing)) {}

    std::variant<T, Missing> m_state;
};

} // namespace sumpwright::assessment
