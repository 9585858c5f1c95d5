#include "core/findings/each_rule.hpp"
#include "core/findings/rows_of_basis.hpp"

namespace sumpwright::findings
{
namespace
{

void tell(const Situation& situation, const Rule& rule, std::vector<Finding>& findings)
{
    tellRowsOfBasis(catalogue::Basis::Memory, situation, rule, findings);
}

} // namespace

// Rows whose value was written from memory, the page not seen.
const Rule catalogueFromMemory{"catalogue.from-memory", "verify-row", "common-practice", tell};

} // namespace sumpwright::findings
