#include "core/assessment/assessment.hpp"

namespace sumpwright::assessment
{

bool sameResults(const Assessment& a, const Assessment& b)
{
    return *a.site == *b.site && *a.water == *b.water && *a.flow == *b.flow && *a.pumps == *b.pumps &&
           *a.season == *b.season && *a.headPaths == *b.headPaths && *a.sumps == *b.sumps && *a.service == *b.service &&
           *a.floor == *b.floor && *a.findings == *b.findings;
}

} // namespace sumpwright::assessment
