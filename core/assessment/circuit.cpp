#include "core/assessment/circuit.hpp"

#include <numeric>
#include <unordered_map>

namespace sumpwright::assessment
{
namespace
{

// Union-find over all elements, numbered basins, runs, pumps, tees in this order.
class Groups
{
public:
    explicit Groups(std::size_t count) : m_parent(count) { std::iota(m_parent.begin(), m_parent.end(), 0U); }
    std::size_t rootOf(std::size_t element)
    {
        while (m_parent[element] != element)
            element = m_parent[element] = m_parent[m_parent[element]];
        return element;
    }
    void join(std::size_t a, std::size_t b)
    {
        const std::size_t x = rootOf(a), y = rootOf(b);
        m_parent[std::max(x, y)] = std::min(x, y);
    }

private:
    std::vector<std::size_t> m_parent;
};

template <class Element>
std::unordered_map<base::Id, std::size_t> numbered(const std::vector<Element>& all, std::size_t from)
{
    std::unordered_map<base::Id, std::size_t> numbers;
    for (std::size_t i = 0; i < all.size(); ++i)
        numbers.emplace(all[i].id, from + i);
    return numbers;
}

} // namespace

std::vector<Circuit> circuitsOf(const Pipework& pipework, const std::vector<Basin>& basins)
{
    const std::size_t firstRun = basins.size(), firstPump = firstRun + pipework.runs.size();
    const std::size_t firstTee = firstPump + pipework.pumps.size(), count = firstTee + pipework.tees.size();
    std::unordered_map<base::Id, std::size_t> numbers = numbered(basins, 0);
    numbers.merge(numbered(pipework.pumps, firstPump));
    numbers.merge(numbered(pipework.tees, firstTee));

    Groups groups(count);
    for (std::size_t i = 0; i < pipework.runs.size(); ++i)
        for (const DrawnEnd* end : {&pipework.runs[i].from, &pipework.runs[i].to})
            if (const auto found = numbers.find(end->element); found != numbers.end())
                groups.join(firstRun + i, found->second);
    for (std::size_t i = 0; i < pipework.pumps.size(); ++i)
        if (const auto found = numbers.find(pipework.pumps[i].vessel); found != numbers.end())
            groups.join(firstPump + i, found->second);

    std::vector<Circuit> circuits;
    std::unordered_map<std::size_t, std::size_t> circuitOfRoot;
    for (std::size_t element = 0; element < count; ++element) {
        const auto [at, fresh] = circuitOfRoot.try_emplace(groups.rootOf(element), circuits.size());
        if (fresh)
            circuits.emplace_back();
        Circuit& circuit = circuits[at->second];
        if (element < firstRun) {
            circuit.basins.push_back(element);
            if (basins[element].isSump())
                circuit.sumps.push_back(element);
        } else if (element < firstPump) {
            circuit.runs.push_back(element - firstRun);
        } else if (element < firstTee) {
            circuit.pumps.push_back(element - firstPump);
        } else {
            circuit.tees.push_back(element - firstTee);
        }
    }
    return circuits;
}

} // namespace sumpwright::assessment
