// Outcome<T>: a value, or a Refusal that says where, what, why and how to mend.
// For user and file errors; a programmer's error goes to ensure().
#pragma once

#include <string>
#include <utility>
#include <variant>

#include "core/base/ensure.hpp"

namespace sumpwright::base {

// The core emits ids, the words are made by the caller's text room. `detail` holds what fills the sentence.
struct Refusal {
    std::string id;      // e.g. "units.wrong-kind"; stable, tested, translated
    std::string place;   // where: an input's name, "line 14, /vessels/2/wall_height", a character position
    std::string what;    // what was found, plain English
    std::string accepts; // what is accepted or how to mend it, plain English

    friend bool operator==(const Refusal&, const Refusal&) = default;
};

// "place: what; accepts" in one line, for the command line and the log.
inline std::string oneLine(const Refusal& refusal)
{
    std::string line = refusal.place.empty() ? std::string() : refusal.place + ": ";
    line += refusal.what;
    if (!refusal.accepts.empty())
        line += "; " + refusal.accepts;
    return line;
}

template <class T> class Outcome {
public:
    Outcome(T value) : m_state(std::in_place_index<0>, std::move(value)) {}
    Outcome(Refusal refusal) : m_state(std::in_place_index<1>, std::move(refusal)) {}

    bool ok() const { return m_state.index() == 0; }
    explicit operator bool() const { return ok(); }
    const T& value() const&
    {
        ensure(ok(), "value of a refused outcome");
        return std::get<0>(m_state);
    }
    T&& value() &&
    {
        ensure(ok(), "value of a refused outcome");
        return std::get<0>(std::move(m_state));
    }
    const T& operator*() const { return value(); }
    const T* operator->() const { return &value(); }
    const Refusal& refusal() const
    {
        ensure(!ok(), "refusal of a good outcome");
        return std::get<1>(m_state);
    }

private:
    std::variant<T, Refusal> m_state;
};

} // namespace sumpwright::base
