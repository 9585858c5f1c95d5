// Pipeline: all stages and then the findings, each run only when its own input changed. Not for two threads at once.
#pragma once

#include <cstdint>
#include <memory>

#include "core/assessment/stages.hpp"

namespace sumpwright::engine
{

class Pipeline
{
public:
    explicit Pipeline(std::shared_ptr<const catalogue::Catalogue> catalogue) : m_stages(std::move(catalogue)) {}

    std::shared_ptr<const assessment::Assessment> assess(const plan::Plan& plan, std::uint64_t revision);

    std::uint64_t runsOf(assessment::StageName stage) const { return m_stages.runsOf(stage); }
    std::uint64_t findingsRuns() const { return m_findings.runs(); }

private:
    // What the rules read, without annotations and revision.
    struct FindingsInput {
        assessment::Assessment results;
        bool operator==(const FindingsInput& other) const;
    };

    assessment::Stages m_stages;
    assessment::Memo<FindingsInput, assessment::Findings> m_findings;
};

} // namespace sumpwright::engine
