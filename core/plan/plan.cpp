#include "core/plan/plan.hpp"

namespace sumpwright::plan
{

namespace
{

template <class T> bool same(const std::shared_ptr<const T>& a, const std::shared_ptr<const T>& b)
{
    return a == b || (a && b && *a == *b);
}

} // namespace

bool operator==(const Plan& a, const Plan& b)
{
    return same(a.site, b.site) && same(a.floor, b.floor) && a.fixtures == b.fixtures && a.vessels == b.vessels &&
           a.pumps == b.pumps && a.tees == b.tees && a.runs == b.runs && a.notes == b.notes &&
           a.dimensions == b.dimensions && same(a.underlay, b.underlay) && same(a.ownParts, b.ownParts) &&
           a.extra == b.extra;
}

std::optional<ElementKind> kindOf(const Plan& plan, base::Id id)
{
    if (plan.vessels.find(id))
        return ElementKind::vessel;
    if (plan.runs.find(id))
        return ElementKind::run;
    if (plan.pumps.find(id))
        return ElementKind::pump;
    if (plan.tees.find(id))
        return ElementKind::tee;
    if (plan.fixtures.find(id))
        return ElementKind::fixture;
    if (plan.notes.find(id))
        return ElementKind::note;
    if (plan.dimensions.find(id))
        return ElementKind::dimension;
    return std::nullopt;
}

std::string tagOf(const Plan& plan, base::Id id)
{
    if (const auto* vessel = plan.vessels.find(id))
        return vessel->tag;
    if (const auto* run = plan.runs.find(id))
        return run->tag;
    if (const auto* pump = plan.pumps.find(id))
        return pump->tag;
    if (const auto* tee = plan.tees.find(id))
        return tee->tag;
    if (const auto* fixture = plan.fixtures.find(id))
        return fixture->tag;
    return {};
}

} // namespace sumpwright::plan
