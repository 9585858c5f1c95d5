#include "core/engine/pipeline.hpp"

#include "core/findings/rules.hpp"

namespace sumpwright::engine
{
namespace
{

bool samePlace(const plan::Plan& a, const plan::Plan& b)
{
    return (a.site == b.site || *a.site == *b.site) && (a.floor == b.floor || *a.floor == *b.floor) &&
           a.fixtures == b.fixtures && a.vessels == b.vessels && a.pumps == b.pumps && a.tees == b.tees &&
           a.runs == b.runs;
}

} // namespace

bool Pipeline::FindingsInput::operator==(const FindingsInput& other) const
{
    const assessment::Assessment &x = results, &y = other.results;
    return samePlace(x.plan, y.plan) && x.catalogue == y.catalogue && x.site == y.site && x.water == y.water &&
           x.flow == y.flow && x.pumps == y.pumps && x.headPaths == y.headPaths && x.sumps == y.sumps &&
           x.service == y.service && x.floor == y.floor;
}

std::shared_ptr<const assessment::Assessment> Pipeline::assess(const plan::Plan& plan, std::uint64_t revision)
{
    auto result = std::make_shared<assessment::Assessment>(m_stages.assess(plan));
    result->revision = revision;
    result->findings =
        m_findings.get({*result}, [](const FindingsInput& in) { return findings::findingsOf(in.results); });
    return result;
}

} // namespace sumpwright::engine
