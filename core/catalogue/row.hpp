// Row: one row of a table file, read field by field. Every failure throws BadRow, which says file, row and field;
// Catalogue::fromJson turns it into an outcome. Quantities are texts with a unit ("27.2 mm"), ratios plain numbers.
#pragma once

#include <functional>
#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "core/base/outcome.hpp"
#include "core/catalogue/medium.hpp"
#include "core/units/measures.hpp"
#include "core/units/parse.hpp"

namespace sumpwright::catalogue
{

struct BadRow {
    base::Refusal refusal;
};

class Row
{
public:
    bool has(std::string_view field) const;
    std::string text(std::string_view field) const;                               // must be there, not empty
    std::string textOr(std::string_view field, std::string_view otherwise) const; // may be absent or empty
    double ratio(std::string_view field) const;                                   // finite, not negative
    bool flag(std::string_view field) const;                                      // absent is false
    Row part(std::string_view field) const;                                       // an object
    std::vector<Row> parts(std::string_view field) const;                         // a list of objects
    template <class Kind> Kind quantity(std::string_view field) const;            // not negative
    template <class Kind> std::optional<Kind> quantityIfAny(std::string_view field) const
    {
        return has(field) ? std::optional<Kind>(quantity<Kind>(field)) : std::nullopt;
    }
    template <class Kind> Spread<Kind> spread(std::string_view field) const;
    Spread<double> ratioSpread(std::string_view field) const;
    template <class Choice>
    Choice choice(std::string_view field, const std::vector<std::pair<std::string_view, Choice>>& words) const;

    bool isText(std::string_view field) const;
    [[noreturn]] void fail(std::string_view field, std::string what, std::string accepts) const;
    void require(bool kept, std::string_view field, const char* what, const char* accepts) const
    {
        if (!kept)
            fail(field, what, accepts);
    }
    void requireAllRead() const; // a field nobody asked for is a typing error
    std::string place(std::string_view field) const;

    struct Node;
    explicit Row(std::shared_ptr<const Node> node) : m_node(std::move(node)) {}

private:
    void checkRead(std::string_view field, const base::Refusal* refused, bool negative) const;

    std::shared_ptr<const Node> m_node;
};

// The rows of a file in order, group fields filled in. Throws BadRow on text that is not such a file.
std::vector<Row> rowsOf(const std::string& file, const std::string& text);

// sources.json: key and fields of each source.
std::vector<std::pair<std::string, Row>> sourceRowsOf(const std::string& file, const std::string& text);

template <class Kind> Kind Row::quantity(std::string_view field) const
{
    const base::Outcome<Kind> read = units::parse<Kind>(text(field));
    checkRead(field, read.ok() ? nullptr : &read.refusal(), read.ok() && units::inSi(*read) < 0.0);
    return *read;
}

template <class Kind> Spread<Kind> Row::spread(std::string_view field) const
{
    const Row values = part(field);
    Spread<Kind> spread{values.quantity<Kind>("low"), values.quantity<Kind>("typical"), values.quantity<Kind>("high")};
    values.requireAllRead();
    require(spread.low <= spread.typical && spread.typical <= spread.high, field, "low, typical and high do not ascend",
            "low <= typical <= high");
    return spread;
}

template <class Choice>
Choice Row::choice(std::string_view field, const std::vector<std::pair<std::string_view, Choice>>& words) const
{
    const std::string found = text(field);
    std::string accepted;
    for (const auto& [word, value] : words) {
        if (word == found)
            return value;
        accepted += (accepted.empty() ? "one of " : ", ") + std::string(word);
    }
    fail(field, "\"" + found + "\" is not known here", accepted);
}

} // namespace sumpwright::catalogue
