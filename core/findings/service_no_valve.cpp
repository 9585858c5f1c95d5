#include "core/findings/each_rule.hpp"
#include "core/findings/service_groups.hpp"

namespace sumpwright::findings
{
namespace
{

bool wanting(const assessment::Service& service) { return !service.shutOff; }

void tell(const Situation& situation, const Rule& rule, std::vector<Finding>& findings)
{
    tellService(situation, rule, wanting, findings);
}

} // namespace

// A valve between it and the rest of the pressure side, so that the rest can go on.
const Rule serviceNoValve{"service.no-valve", "add-valve", "common-practice", tell};

} // namespace sumpwright::findings
