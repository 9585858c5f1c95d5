#include "core/findings/each_rule.hpp"

namespace sumpwright::findings
{
namespace
{

void tell(const Situation& situation, const Rule& rule, std::vector<Finding>& findings)
{
    const std::vector<Outline>& all = situation.outlines();
    for (std::size_t i = 0; i < all.size(); ++i)
        for (std::size_t j = i + 1; j < all.size(); ++j)
            if (all[i].base < all[j].top && all[j].base < all[i].top && overlap(all[i], all[j]))
                findings.push_back(findingOf(rule, Severity::error, {all[i].id, all[j].id}));
}

} // namespace

// Two vessels take the same place at the same height; one above the other is none.
const Rule vesselsOverlap{"layout.overlap", "move-apart", "common-practice", tell};

} // namespace sumpwright::findings
