// L D L^T of a sparse symmetric positive definite matrix whose pattern stays while its values change.
// The elimination order (approximate minimum degree), the fill and every update's target are found once; a
// factorisation then runs through them without searching. Values are plain numbers of the caller's unit.
// Method: George and Liu 1981; ordering Amestoy, Davis and Duff 1996.
#pragma once

#include <cstdint>
#include <utility>
#include <vector>

namespace sumpwright::hydraulics::kernel
{

class SparseLdl
{
public:
    using Index = std::int32_t;
    using Pair = std::pair<Index, Index>;

    // Rows 0 to rows-1; `pairs` lists the off-diagonal places in use, either way round, repeats allowed.
    SparseLdl(Index rows, const std::vector<Pair>& pairs);

    Index rows() const { return static_cast<Index>(m_place.size()); }
    // Where row i and the off-diagonal of two rows live inside; ask once, then add to them by place.
    Index placeOf(Index row) const { return m_place[row]; }
    Index offDiagonalPlace(Index rowA, Index rowB) const;

    void clear();
    double& diagonal(Index place) { return m_diagonal[place]; }
    double& offDiagonal(Index offPlace) { return m_lower[offPlace]; }
    double& rightSide(Index place) { return m_right[place]; }

    // Factorises in place and turns the right side into the solution. False where a pivot is not above zero.
    bool solve();
    double solution(Index place) const { return m_right[place]; }

private:
    void findFill(std::vector<std::vector<Index>>& columns);
    void findTargets();
    Index find(Index row, Index column) const;

    std::vector<Index> m_place;       // row -> place in the elimination order
    std::vector<Index> m_columnStart; // strict lower triangle by columns, places ascending
    std::vector<Index> m_rowOf;
    std::vector<Index> m_targetStart; // per column: where its pairwise updates go
    std::vector<Index> m_target;
    std::vector<double> m_lower;
    std::vector<double> m_diagonal;
    std::vector<double> m_right;
};

} // namespace sumpwright::hydraulics::kernel
