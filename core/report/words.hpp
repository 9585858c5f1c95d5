// Plain English of findings, elements and reasons, for the command line, the JSON answer and, reused, the window.
#pragma once

#include <string>

#include "core/assessment/assessment.hpp"
#include "core/units/number_style.hpp"
#include "core/units/unit_system.hpp"

namespace sumpwright::report
{

// How quantities are written inside the sentences.
struct Writing {
    units::UnitSystem system = units::UnitSystem::metric;
    units::NumberStyle style = units::NumberStyle::point();
};

struct FindingWords {
    std::string message; // one sentence: what is wrong, where, by how much
    std::string advice;  // one sentence: what mends it; empty where nothing is to be mended
    std::string source;  // who says so, ready to print
};
FindingWords wordsOf(const assessment::Finding& finding, const assessment::Assessment& assessment,
                     const Writing& writing = {});

// "fish tank FT1", "run P3", "valve V2 of run P3"; "an element that is gone" for an id the plan does not have.
std::string nameOf(const plan::Plan& plan, base::Id element);
// "media beds B1 to B6", "runs P1, P4 and P7", "fish tank FT1 and run P3".
std::string namesOf(const plan::Plan& plan, const std::vector<base::Id>& elements);
// An amount with its unit; empty for none.
std::string textOf(const assessment::Amount& amount, const Writing& writing = {});
const char* wordFor(assessment::Severity severity); // "error", "warning", "note"

// "not computed: altitude missing"
template <class T> std::string whyMissing(const assessment::Stage<T>& stage)
{
    const char* start = stage.status() == assessment::Status::notSolved ? "not solved: " : "not computed: ";
    return stage.ok() ? std::string() : start + stage.reason().text;
}

} // namespace sumpwright::report
