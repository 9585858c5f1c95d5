// Plain English of findings and reasons, for the command line, the JSON answer and, reused, the window.
#pragma once

#include <string>

#include "core/assessment/assessment.hpp"

namespace sumpwright::report
{

struct FindingWords {
    std::string message; // one sentence: what is wrong, where, by how much
    std::string advice;  // one sentence: what mends it; empty where nothing is to be mended
    std::string source;  // who says so, ready to print
};
FindingWords wordsOf(const assessment::Finding& finding, const assessment::Assessment& assessment);

// "fish tank FT1", "run P3", "valve V2 of run P3"; falls back on the kind alone where there is no tag.
std::string nameOf(const plan::Plan& plan, base::Id element);
// "not computed: altitude missing"
template <class T> std::string whyMissing(const assessment::Stage<T>& stage)
{
    const char* start = stage.status() == assessment::Status::notSolved ? "not solved: " : "not computed: ";
    return stage.ok() ? std::string() : start + stage.reason().text;
}

} // namespace sumpwright::report
