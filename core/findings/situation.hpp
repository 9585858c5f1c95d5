// Situation: a plan with its results, and the look-ups that many rules share, made once per assessment.
#pragma once

#include <unordered_map>
#include <vector>

#include "core/assessment/assessment.hpp"
#include "core/space/outline.hpp"
#include "core/space/pipe_body.hpp"

namespace sumpwright::findings
{

using assessment::Assessment;
using assessment::RunningState;
using space::footprintOf, space::gapBetween, space::gapTo, space::Outline, space::overlap;

// A run that meets a port, pump or tee with one of its ends.
struct Meeting {
    const plan::Run* run = nullptr;
    bool atStart = true;
};

class Situation
{
public:
    explicit Situation(const Assessment& assessment); // outlives this object

    const Assessment& results() const { return m_assessment; }
    const plan::Plan& plan() const { return m_assessment.plan; }
    const catalogue::Catalogue& catalogue() const { return *m_assessment.catalogue; }

    const std::vector<Meeting>& meetingsAt(base::Id portPumpOrTee) const;
    // Outlines of the vessels, in the order of their ids.
    const std::vector<Outline>& outlines() const { return m_outlines; }
    // Runs as bodies in space: those with a length and a pipe of the catalogue.
    const std::vector<space::PipeBody>& bodies() const { return m_bodies; }
    bool anyPumpRuns() const;
    // What has to leave a vessel by lips and outlets, in the running state where that is more; none where neither is
    // known.
    std::optional<units::Flow> largestOutflow(base::Id vessel) const;
    // Largest flow of a run in either state, without its sign.
    std::optional<units::Flow> largestFlow(base::Id run) const;

private:
    const Assessment& m_assessment;
    std::unordered_map<base::Id, std::vector<Meeting>> m_meetings;
    std::vector<Outline> m_outlines;
    std::vector<space::PipeBody> m_bodies;
};

} // namespace sumpwright::findings
