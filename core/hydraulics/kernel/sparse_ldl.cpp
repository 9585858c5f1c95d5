#include "core/hydraulics/kernel/sparse_ldl.hpp"

#include <algorithm>
#include <numeric>

#include <Eigen/OrderingMethods>
#include <Eigen/Sparse>

namespace sumpwright::hydraulics::kernel
{
namespace
{

using Index = SparseLdl::Index;

// Below this many rows any order is as good: fill costs less than finding it.
constexpr Index smallestOrdered = 6;

std::vector<Index> eliminationPlaces(Index rows, const std::vector<SparseLdl::Pair>& pairs)
{
    std::vector<Index> places(rows);
    std::iota(places.begin(), places.end(), 0);
    if (rows < smallestOrdered)
        return places;
    std::vector<Eigen::Triplet<double, Index>> entries;
    entries.reserve(rows + 2 * pairs.size());
    for (Index i = 0; i < rows; ++i)
        entries.emplace_back(i, i, 1.0);
    for (const auto& [a, b] : pairs) {
        entries.emplace_back(a, b, 1.0);
        entries.emplace_back(b, a, 1.0);
    }
    Eigen::SparseMatrix<double, Eigen::ColMajor, Index> pattern(rows, rows);
    pattern.setFromTriplets(entries.begin(), entries.end());
    Eigen::PermutationMatrix<Eigen::Dynamic, Eigen::Dynamic, Index> order;
    Eigen::AMDOrdering<Index>()(pattern.selfadjointView<Eigen::Lower>(), order);
    for (Index place = 0; place < rows; ++place)
        places[order.indices()[place]] = place;
    return places;
}

} // namespace

SparseLdl::SparseLdl(Index rows, const std::vector<Pair>& pairs) : m_place(eliminationPlaces(rows, pairs))
{
    std::vector<std::vector<Index>> columns(rows);
    for (const auto& [a, b] : pairs) {
        const auto [first, second] = std::minmax(m_place[a], m_place[b]);
        if (first != second)
            columns[first].push_back(second);
    }
    findFill(columns);
    findTargets();
    m_lower.resize(m_rowOf.size());
    m_diagonal.resize(rows);
    m_right.resize(rows);
}

// A column's pattern passes to its first row below the diagonal (its parent in the elimination tree).
void SparseLdl::findFill(std::vector<std::vector<Index>>& columns)
{
    m_columnStart.assign(columns.size() + 1, 0);
    for (std::size_t j = 0; j < columns.size(); ++j) {
        std::vector<Index>& column = columns[j];
        std::sort(column.begin(), column.end());
        column.erase(std::unique(column.begin(), column.end()), column.end());
        if (column.size() > 1)
            columns[column.front()].insert(columns[column.front()].end(), column.begin() + 1, column.end());
        m_rowOf.insert(m_rowOf.end(), column.begin(), column.end());
        m_columnStart[j + 1] = static_cast<Index>(m_rowOf.size());
    }
}

void SparseLdl::findTargets()
{
    const std::size_t columns = m_place.size();
    m_targetStart.assign(columns + 1, 0);
    for (std::size_t j = 0; j < columns; ++j) {
        for (Index p = m_columnStart[j]; p < m_columnStart[j + 1]; ++p) {
            Index at = m_columnStart[m_rowOf[p]];
            for (Index q = p + 1; q < m_columnStart[j + 1]; ++q) {
                while (m_rowOf[at] != m_rowOf[q])
                    ++at;
                m_target.push_back(at);
            }
        }
        m_targetStart[j + 1] = static_cast<Index>(m_target.size());
    }
}

SparseLdl::Index SparseLdl::find(Index row, Index column) const
{
    const auto begin = m_rowOf.begin() + m_columnStart[column];
    const auto end = m_rowOf.begin() + m_columnStart[column + 1];
    return static_cast<Index>(std::lower_bound(begin, end, row) - m_rowOf.begin());
}

SparseLdl::Index SparseLdl::offDiagonalPlace(Index rowA, Index rowB) const
{
    const auto [first, second] = std::minmax(m_place[rowA], m_place[rowB]);
    return find(second, first);
}

void SparseLdl::clear()
{
    std::fill(m_lower.begin(), m_lower.end(), 0.0);
    std::fill(m_diagonal.begin(), m_diagonal.end(), 0.0);
    std::fill(m_right.begin(), m_right.end(), 0.0);
}

bool SparseLdl::solve()
{
    const Index rows = this->rows();
    for (Index j = 0; j < rows; ++j) {
        if (!(m_diagonal[j] > 0.0))
            return false;
        const double inverse = 1.0 / m_diagonal[j];
        const double right = m_right[j];
        const Index* target = m_target.data() + m_targetStart[j];
        const Index end = m_columnStart[j + 1];
        for (Index p = m_columnStart[j]; p < end; ++p) {
            const double factor = m_lower[p] * inverse;
            const Index row = m_rowOf[p];
            m_diagonal[row] -= factor * m_lower[p];
            m_right[row] -= factor * right;
            for (Index q = p + 1; q < end; ++q)
                m_lower[*target++] -= factor * m_lower[q];
        }
        m_diagonal[j] = inverse;
    }
    for (Index j = rows - 1; j >= 0; --j) {
        double value = m_right[j];
        for (Index p = m_columnStart[j]; p < m_columnStart[j + 1]; ++p)
            value -= m_lower[p] * m_right[m_rowOf[p]];
        m_right[j] = value * m_diagonal[j];
    }
    return true;
}

} // namespace sumpwright::hydraulics::kernel
