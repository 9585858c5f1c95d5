// Inputs: what a worksheet was given, read, completed by defaults and inside its ranges. A worksheet asks for them by
// name; asking for a name that is not there or of another kind is a broken promise of the worksheet.
#pragma once

#include <string_view>
#include <vector>

#include "core/base/ensure.hpp"
#include "core/base/outcome.hpp"
#include "core/worksheets/lists.hpp"
#include "core/worksheets/worksheet.hpp"

namespace sumpwright::worksheets
{

class Inputs
{
public:
    // Refusals as of answer() in worksheet.hpp.
    static base::Outcome<Inputs> read(const Worksheet& worksheet, const std::vector<InputText>& texts,
                                      const catalogue::Catalogue& tables, const units::NumberStyle& style);

    bool has(std::string_view name) const { return find(name) != nullptr; }
    template <class Kind> const Kind& get(std::string_view name) const
    {
        const NamedValue* found = find(name);
        base::ensure(found && std::holds_alternative<Kind>(found->value), "an input of this name and kind");
        return std::get<Kind>(found->value);
    }
    double ratio(std::string_view name) const { return get<double>(name); }
    const std::string& word(std::string_view name) const { return get<std::string>(name); }
    std::vector<ListEntry> list(std::string_view name) const; // none where it is not given
    std::string shown(std::string_view name) const;           // for people, in the number style of the inputs

    const std::vector<NamedValue>& values() const { return m_values; }
    const catalogue::Catalogue& tables() const { return *m_tables; }
    const units::NumberStyle& style() const { return m_style; }
    const std::string& currency() const { return m_currency; } // as written in a price; empty: none

private:
    Inputs(const Worksheet& worksheet, const catalogue::Catalogue& tables, const units::NumberStyle& style)
        : m_worksheet(&worksheet), m_tables(&tables), m_style(style)
    {
    }
    const NamedValue* find(std::string_view name) const;
    base::Outcome<bool> add(const InputSpec& spec, const std::string& text, const units::NumberStyle& style);

    const Worksheet* m_worksheet;
    const catalogue::Catalogue* m_tables;
    units::NumberStyle m_style;
    std::vector<NamedValue> m_values;
    std::string m_currency;
};

// "more than 0 mm, at most 1 m (m, cm, mm, ft, in)": what an input accepts, in one line.
std::string acceptedBy(const InputSpec& spec);

// A number of the input's kind inside its limits. Refusal: "worksheets.out-of-range", those of units::parse.
base::Outcome<Value> readNumber(const InputSpec& spec, const std::string& text, const units::NumberStyle& style);

// What is wrong with one input's text by itself, whatever the others are; nothing when it is accepted.
std::optional<base::Refusal> faultOf(const Worksheet& worksheet, const InputText& input,
                                     const catalogue::Catalogue& tables, const units::NumberStyle& style);
// The inputs that are needed and have neither a text nor a default, in order.
std::vector<std::string> missingInputs(const Worksheet& worksheet, const std::vector<InputText>& texts);

} // namespace sumpwright::worksheets
