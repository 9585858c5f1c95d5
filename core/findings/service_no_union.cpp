#include "core/findings/each_rule.hpp"
#include "core/findings/service_groups.hpp"

namespace sumpwright::findings
{
namespace
{

bool wanting(const assessment::Service& service) { return service.shutOff && !service.comesApart; }

void tell(const Situation& situation, const Rule& rule, std::vector<Finding>& findings)
{
    tellService(situation, rule, wanting, findings);
}

} // namespace

// Behind its valve a joint that comes apart; a solvent-welded pipe must be cut.
const Rule serviceNoUnion{"service.no-union", "add-union", "common-practice", tell};

} // namespace sumpwright::findings
