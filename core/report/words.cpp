#include "core/report/words.hpp"

#include <algorithm>
#include <cctype>
#include <numeric>
#include <type_traits>

#include "core/report/sentences.hpp"
#include "core/report/tag_spans.hpp"
#include "core/units/format.hpp"

namespace sumpwright::report
{
namespace
{

constexpr std::size_t mostNames = 6; // in a list; the rest is counted

const char* kindWord(plan::VesselKind kind)
{
    switch (kind) {
    case plan::VesselKind::fishTank:
        return "fish tank";
    case plan::VesselKind::sump:
        return "sump";
    case plan::VesselKind::mediaBed:
        return "media bed";
    case plan::VesselKind::raftBed:
        return "raft bed";
    case plan::VesselKind::settler:
        return "settler";
    }
    return "";
}

const char* kindWord(plan::PortKind kind)
{
    switch (kind) {
    case plan::PortKind::inlet:
        return "inlet";
    case plan::PortKind::lip:
        return "lip";
    case plan::PortKind::sideOutlet:
        return "outlet";
    }
    return "";
}

const char* kindWord(plan::FixtureKind kind)
{
    switch (kind) {
    case plan::FixtureKind::wall:
        return "wall";
    case plan::FixtureKind::door:
        return "door";
    case plan::FixtureKind::post:
        return "post";
    case plan::FixtureKind::powerPoint:
        return "power point";
    }
    return "";
}

std::string named(const char* kind, const std::string& tag) { return tag.empty() ? kind : kind + (" " + tag); }

std::string nameOfPart(const plan::Plan& plan, base::Id part)
{
    for (const auto& vessel : plan.vessels)
        if (const plan::Port* port = plan::findPort(*vessel, part))
            return named(kindWord(port->kind), port->tag) + " of " + named(kindWord(vessel->kind), vessel->tag);
    for (const auto& run : plan.runs)
        for (const plan::Valve& valve : run->valves)
            if (valve.id == part)
                return named("valve", valve.tag) + " of " + named("run", run->tag);
    return "an element that is gone";
}

// "media bed" for a media bed; empty for what has no tag to count by.
std::string kindWordOf(const plan::Plan& plan, base::Id element)
{
    if (const auto* vessel = plan.vessels.find(element))
        return kindWord(vessel->kind);
    if (const auto* fixture = plan.fixtures.find(element))
        return kindWord(fixture->kind);
    if (plan.runs.find(element))
        return "run";
    if (plan.pumps.find(element))
        return "pump";
    return plan.tees.find(element) ? "tee" : "";
}

// "a, b and c"; of many the first, and how many more.
std::string joined(const std::vector<std::string>& names, const std::vector<std::size_t>& counts)
{
    std::string list;
    const std::size_t shown = names.size() > mostNames + 1 ? mostNames : names.size();
    for (std::size_t i = 0; i < shown; ++i)
        list += (i == 0 ? "" : i + 1 == names.size() ? " and " : ", ") + names[i];
    if (shown < names.size())
        list += " and " +
                std::to_string(std::accumulate(counts.begin() + static_cast<std::ptrdiff_t>(shown), counts.end(),
                                               std::size_t{0})) +
                " more";
    return list;
}

std::string namesInFull(const plan::Plan& plan, const std::vector<base::Id>& elements)
{
    std::vector<std::string> names;
    for (const base::Id element : elements)
        names.push_back(nameOf(plan, element));
    return joined(names, std::vector<std::size_t>(names.size(), 1));
}

const Sentence* sentenceOf(std::span<const Sentence> sentences, std::string_view id)
{
    const auto at = std::find_if(sentences.begin(), sentences.end(), [id](const Sentence& s) { return s.id == id; });
    return at == sentences.end() ? nullptr : &*at;
}

std::string plainText(const assessment::Amount& amount, const Writing& writing)
{
    const double* ratio = std::get_if<double>(&amount);
    return ratio ? units::formatRatio(*ratio, writing.style, 2) : textOf(amount, writing);
}

std::string filled(std::string_view pattern, const assessment::Finding& finding, const plan::Plan& plan,
                   const Writing& writing)
{
    const auto valueOf = [&](std::string_view key) -> std::string {
        if (key == "value")
            return textOf(finding.value, writing);
        if (key == "limit")
            return textOf(finding.limit, writing);
        if (key == "beside")
            return textOf(finding.beside, writing);
        if (key == "plain value")
            return plainText(finding.value, writing);
        if (key == "plain limit")
            return plainText(finding.limit, writing);
        if (key == "subject")
            return finding.subject;
        if (key == "all")
            return namesOf(plan, finding.elements);
        if (key.find('|') != std::string_view::npos)
            return std::string(finding.alike > 1 ? key.substr(key.find('|') + 1) : key.substr(0, key.find('|')));
        if (key == "1" && finding.alike > 1)
            return namesOf(plan, {finding.elements.begin(),
                                  finding.elements.begin() + static_cast<std::ptrdiff_t>(finding.alike)});
        const std::size_t index = key == "2" ? 1 : 0;
        return index < finding.elements.size() ? nameOf(plan, finding.elements[index]) : std::string("the plan");
    };
    std::string text;
    while (!pattern.empty()) {
        const std::size_t open = pattern.find('{'), close = pattern.find('}', open);
        text += pattern.substr(0, open);
        if (open == std::string_view::npos || close == std::string_view::npos)
            break;
        text += valueOf(pattern.substr(open + 1, close - open - 1));
        pattern.remove_prefix(close + 1);
    }
    if (!text.empty())
        text[0] = static_cast<char>(std::toupper(static_cast<unsigned char>(text[0])));
    return text;
}

std::string sourceWords(const std::string& key, const catalogue::Catalogue* catalogue)
{
    if (key == "common-practice" || key.empty())
        return "common practice, no source";
    if (!catalogue)
        return key;
    for (const catalogue::Source& source : catalogue->sources())
        if (source.id == key)
            return source.title + (source.basis == catalogue::Basis::Memory ? " (from memory)" : "");
    return key;
}

} // namespace

FindingWords wordsOf(const assessment::Finding& finding, const assessment::Assessment& assessment,
                     const Writing& writing)
{
    FindingWords words;
    if (const Sentence* sentence = sentenceOf(findingSentences(), finding.id)) {
        const bool bare = std::holds_alternative<std::monostate>(finding.value) && !sentence->withoutValue.empty();
        words.message = filled(bare ? sentence->withoutValue : sentence->text, finding, assessment.plan, writing);
    } else {
        words.message = finding.id;
    }
    if (const Sentence* advice = sentenceOf(adviceSentences(), finding.mend))
        words.advice = filled(advice->text, finding, assessment.plan, writing);
    words.source = sourceWords(finding.source, assessment.catalogue.get());
    return words;
}

std::string nameOf(const plan::Plan& plan, base::Id element)
{
    if (const auto* vessel = plan.vessels.find(element))
        return named(kindWord(vessel->kind), vessel->tag);
    if (const auto* run = plan.runs.find(element))
        return named("run", run->tag);
    if (const auto* pump = plan.pumps.find(element))
        return named("pump", pump->tag);
    if (const auto* tee = plan.tees.find(element))
        return named("tee", tee->tag);
    if (const auto* fixture = plan.fixtures.find(element))
        return named(kindWord(fixture->kind), fixture->tag);
    if (plan.notes.find(element))
        return "a note";
    if (plan.dimensions.find(element))
        return "a dimension line";
    return nameOfPart(plan, element);
}

std::string namesOf(const plan::Plan& plan, const std::vector<base::Id>& elements)
{
    const std::string kind = elements.empty() ? "" : kindWordOf(plan, elements.front());
    std::vector<std::string> tags;
    for (const base::Id element : elements)
        if (const std::string tag = plan::tagOf(plan, element); !tag.empty() && kindWordOf(plan, element) == kind)
            tags.push_back(tag);
    if (kind.empty() || elements.size() < 2 || tags.size() < elements.size())
        return namesInFull(plan, elements);
    std::vector<std::string> names;
    std::vector<std::size_t> counts;
    for (const TagSpan& span : spansOf(tags)) {
        names.push_back(span.count > 1 ? span.first + " to " + span.last : span.first);
        counts.push_back(span.count);
    }
    return kind + "s " + joined(names, counts);
}

std::string textOf(const assessment::Amount& amount, const Writing& writing)
{
    return std::visit(
        [&writing](const auto& value) -> std::string {
            using Kind = std::decay_t<decltype(value)>;
            if constexpr (std::is_same_v<Kind, std::monostate>)
                return {};
            else if constexpr (std::is_same_v<Kind, double>)
                return value <= 1.0 ? units::formatPercent(value, writing.style, 2)
                                    : units::formatRatio(value, writing.style, 2);
            else if constexpr (std::is_same_v<Kind, units::Length>)
                return units::format(value, writing.system, writing.style, {.smallInMillimetres = true});
            else
                return units::format(value, writing.system, writing.style);
        },
        amount);
}

const char* wordFor(assessment::Severity severity)
{
    switch (severity) {
    case assessment::Severity::error:
        return "error";
    case assessment::Severity::warning:
        return "warning";
    case assessment::Severity::note:
        return "note";
    }
    return "";
}

} // namespace sumpwright::report
