#include "core/findings/each_rule.hpp"

namespace sumpwright::findings
{
namespace
{

void tell(const Situation& situation, const Rule& rule, std::vector<Finding>& findings)
{
    for (const auto& vessel : situation.plan().vessels) {
        const units::Length height = vessel->baseLevel - plan::levelAt(*situation.plan().floor, vessel->centre);
        const bool stands = vessel->stand && vessel->stand->kind != plan::StandKind::flat;
        if (stands || height <= units::millimetres(20.0))
            continue;
        findings.push_back(findingOf(rule, Severity::warning, {vessel->id}));
        findings.back().value = height;
    }
}

} // namespace

// It stands above the floor and nothing is said to carry it.
const Rule standMissing{"floor.stand-missing", "add-stand", "common-practice", tell};

} // namespace sumpwright::findings
