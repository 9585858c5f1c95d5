#include "core/findings/rules.hpp"

#include <algorithm>

#include "core/findings/alike.hpp"
#include "core/findings/each_rule.hpp"

namespace sumpwright::findings
{

Finding findingOf(const Rule& rule, Severity severity, std::vector<base::Id> elements)
{
    Finding finding;
    finding.id = rule.id;
    finding.severity = severity;
    finding.elements = std::move(elements);
    finding.source = rule.source;
    finding.mend = rule.mend;
    return finding;
}

namespace
{

const std::vector<const Rule*> rules{&planWithoutPump,
                                     &pumpFault,
                                     &pumpOff,
                                     &pumpWithoutRun,
                                     &pumpCannotLift,
                                     &pumpBeyondCurve,
                                     &pumpLowShare,
                                     &pumpLessWhenFouled,
                                     &pumpPowerMissing,
                                     &pumpParallelWithoutCheck,
                                     &pumpTogether,
                                     &pumpTwoNumbers,
                                     &pumpUncovered,
                                     &pumpNearDry,
                                     &pumpSwirl,
                                     &runOpenEnd,
                                     &runUnfed,
                                     &runUnknownPipe,
                                     &runVelocityHigh,
                                     &runGravityPipe,
                                     &runAboveReach,
                                     &runLowPressure,
                                     &runAgainstDrawing,
                                     &runTransition,
                                     &runCrosses,
                                     &runThroughVessel,
                                     &runThroughWall,
                                     &runInDoorway,
                                     &runAboveCeiling,
                                     &runBelowFloor,
                                     &runHighPoint,
                                     &runSupports,
                                     &serviceNoValve,
                                     &serviceNoUnion,
                                     &runCorrugated,
                                     &valveClosed,
                                     &valveNoTable,
                                     &teeLowPressure,
                                     &outletWithoutFlow,
                                     &outletLessWhenFouled,
                                     &altitudeMissing,
                                     &waterTemperature,
                                     &sumpLevel,
                                     &sumpRunsDry,
                                     &sumpSpills,
                                     &sumpLittleRoom,
                                     &sumpMissing,
                                     &sumpSeveral,
                                     &waterNotSolved,
                                     &vesselOverRim,
                                     &vesselFreeBoard,
                                     &vesselWithoutInlet,
                                     &vesselWithoutOutlet,
                                     &vesselLevelUnknown,
                                     &vesselLipToNowhere,
                                     &vesselFedTwice,
                                     &overflowTooSmall,
                                     &overflowNoisy,
                                     &overflowBoreUnknown,
                                     &emergencyMissing,
                                     &emergencyTooSmall,
                                     &vesselHeldByRun,
                                     &runSurcharged,
                                     &runFillHigh,
                                     &runSlow,
                                     &siphonBack,
                                     &gravityNoFall,
                                     &gravityRises,
                                     &vesselsOverlap,
                                     &vesselOutsideFloor,
                                     &aisleNarrow,
                                     &headroom,
                                     &doorNarrow,
                                     &reachValve,
                                     &reachSiphon,
                                     &reachBed,
                                     &standMissing,
                                     &raisedTank,
                                     &aboveLiveLoad,
                                     &floorUseUnknown,
                                     &floorCaution,
                                     &electricCaution,
                                     &powerPointWet,
                                     &catalogueUnknownRow,
                                     &catalogueOutOfRange,
                                     &catalogueFromMemory,
                                     &catalogueInvented,
                                     &catalogueOwn};

} // namespace

const std::vector<const Rule*>& allRules() { return rules; }

assessment::Findings findingsOf(const Assessment& assessment)
{
    const Situation situation(assessment);
    assessment::Findings findings;
    for (const Rule* rule : allRules()) {
        const std::size_t first = findings.list.size();
        rule->tell(situation, *rule, findings.list);
        joinAlike(findings.list, first, assessment.plan);
    }
    std::stable_sort(findings.list.begin(), findings.list.end(),
                     [](const Finding& a, const Finding& b) { return a.severity < b.severity; });
    return findings;
}

} // namespace sumpwright::findings
