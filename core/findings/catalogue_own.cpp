#include "core/findings/each_rule.hpp"
#include "core/findings/rows_of_basis.hpp"

namespace sumpwright::findings
{
namespace
{

void tell(const Situation& situation, const Rule& rule, std::vector<Finding>& findings)
{
    tellRowsOfBasis(catalogue::Basis::Own, situation, rule, findings);
}

} // namespace

// Parts the person typed in or imported: nothing printed stands behind them.
const Rule catalogueOwn{"catalogue.own", "", "own-part", tell};

} // namespace sumpwright::findings
