#include "core/findings/alike.hpp"

#include <algorithm>
#include <cmath>

namespace sumpwright::findings
{
namespace
{

using assessment::Amount;
using assessment::Finding;

constexpr double nearlySame = 1e-6; // of the amount; what rounding makes of equal vessels is far less

double plainNumber(double ratio) { return ratio; }
template <class Kind> double plainNumber(const Kind& quantity) { return units::inSi(quantity); }
double plainNumber(std::monostate) { return 0.0; }

bool same(const Amount& a, const Amount& b)
{
    if (a.index() != b.index())
        return false;
    const auto number = [](const auto& value) { return plainNumber(value); };
    const double x = std::visit(number, a), y = std::visit(number, b);
    return std::fabs(x - y) <= nearlySame * std::max(std::fabs(x), std::fabs(y));
}

bool ofOneElement(const Finding& finding, const plan::Plan& plan)
{
    const auto& elements = finding.elements;
    if (elements.empty())
        return false;
    const auto* vessel = plan.vessels.find(elements.front());
    return std::all_of(elements.begin() + 1, elements.end(),
                       [vessel](base::Id id) { return vessel && plan::findPort(*vessel, id); });
}

bool saysTheSame(const Finding& a, const Finding& b)
{
    return a.id == b.id && a.severity == b.severity && a.subject == b.subject && a.source == b.source &&
           a.mend == b.mend && a.elements.size() / a.alike == b.elements.size() && same(a.value, b.value) &&
           same(a.limit, b.limit) && same(a.beside, b.beside);
}

// Elements first, their ports behind them.
void join(Finding& whole, const Finding& further)
{
    whole.elements.insert(whole.elements.begin() + static_cast<std::ptrdiff_t>(whole.alike), further.elements.front());
    whole.elements.insert(whole.elements.end(), further.elements.begin() + 1, further.elements.end());
    ++whole.alike;
}

} // namespace

void joinAlike(std::vector<Finding>& findings, std::size_t first, const plan::Plan& plan)
{
    std::vector<Finding> kept;
    std::vector<std::size_t> open; // those of `kept` that may take up more
    for (std::size_t i = first; i < findings.size(); ++i) {
        Finding& finding = findings[i];
        const bool joins = ofOneElement(finding, plan);
        const auto like =
            std::find_if(open.begin(), open.end(), [&](std::size_t k) { return saysTheSame(kept[k], finding); });
        if (joins && like != open.end()) {
            join(kept[*like], finding);
            continue;
        }
        if (joins)
            open.push_back(kept.size());
        kept.push_back(std::move(finding));
    }
    findings.erase(findings.begin() + static_cast<std::ptrdiff_t>(first), findings.end());
    std::move(kept.begin(), kept.end(), std::back_inserter(findings));
}

} // namespace sumpwright::findings
