// Worksheet: one question of the trade made answerable by itself: inputs with kind, default and valid range, outputs
// each in one fixed unit, the formula, its sources. It calls the very function the plan calls.
// Words here are plain English for the command line; the window translates by worksheet, input and output name.
#pragma once

#include <functional>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/base/outcome.hpp"
#include "core/catalogue/catalogue.hpp"
#include "core/units/number_style.hpp"
#include "core/worksheets/value.hpp"

namespace sumpwright::worksheets
{

enum class InputSort {
    Quantity,    // "27.2 mm": a number with a unit
    Ratio,       // "0.62": a plain number
    Choice,      // one of the words in `choices`
    CatalogueId, // an id of the table named in `choices.front()`: "pumps", "fittings", "media"
    Curve,       // "0 L/h: 3.2 m; 1125 L/h: 2.9 m; ...": a pump's points
    List,        // "T1: 12 L; B1: 4 L" or "12 L; 4 L": quantities, each with a name or without
    LoadList,    // "T1: 1060 kg on 1.2 m2; ...": masses, each on its footprint
};

struct InputSpec {
    std::string name;    // as typed: "bore"
    std::string meaning; // "inside diameter of the pipe"
    InputSort sort = InputSort::Quantity;
    units::KindId kind = units::KindId::ratio; // of a Quantity, or of each entry of a List
    std::string ifAbsent;                      // text of the default; "=bore": that input's value; empty: none
    bool required = true;                      // false: may stay empty (the formula has its own rule, see meaning)
    std::string least;                         // text of the smallest value accepted, "10 mm"; empty: no limit
    std::string most;                          // text of the largest
    bool leastExcluded = false;                // "more than", not "at least"
    std::vector<std::string> choices;
};

struct OutputSpec {
    std::string name;
    std::string meaning;
    std::string unit; // the one unit of this output: "m3/s"; "1" for ratios; "" for a word
    bool estimate = false;
};

struct NamedValue {
    std::string name;
    Value value;
    std::string unit;      // in which `value` is written; "" for a word, "1" for a ratio
    bool estimate = false; // outputs only
};

struct Answer {
    std::string worksheet;
    std::vector<NamedValue> inputs;   // given or by default, in the order of the specification
    std::vector<NamedValue> outputs;  // in the order of the specification
    std::vector<std::string> sources; // keys of sources.json
    std::vector<std::string> notes;   // ids of notes that apply to these inputs
    std::vector<std::string> working; // the formula with these numbers put in, line by line

    const NamedValue* output(std::string_view name) const; // null when there is none
};

// A caution or remark an answer may carry: its id and plain English.
struct Note {
    std::string id;
    std::string text;
};

class Inputs;

struct Worksheet {
    std::string id;
    std::string question; // "How much head does a pipe cost?"
    std::string formula;  // in symbols, one line
    std::vector<InputSpec> inputs;
    std::vector<OutputSpec> outputs;
    std::vector<std::string> sources;
    std::vector<Note> notes; // all that may apply
    // Fills outputs (in order), notes, working and further sources.
    std::function<base::Outcome<Answer>(const Inputs&)> compute;

    const InputSpec* input(std::string_view name) const;
    const OutputSpec* output(std::string_view name) const;
};

// One input as people and files write it: {"flow", "1520 L/h"}.
struct InputText {
    std::string name;
    std::string text;
};

// All worksheets, in the order of the list.
const std::vector<Worksheet>& allWorksheets();

// Refusal: "worksheets.unknown", naming the nearest ids.
base::Outcome<const Worksheet*> findWorksheet(std::string_view id);

// Refusals, place = the input's name: "worksheets.unknown-input", "-given-twice", "-missing-input", "-out-of-range",
// "-unknown-choice", "-bad-points", "-too-many-inputs", "catalogue.unknown-id", those of units::parse and of the
// functions called. `style` is the point for files and the command line.
base::Outcome<Answer> answer(const Worksheet& worksheet, const std::vector<InputText>& texts,
                             const catalogue::Catalogue& tables,
                             const units::NumberStyle& style = units::NumberStyle::point());

} // namespace sumpwright::worksheets
