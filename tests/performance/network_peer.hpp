// The same network solved by a general library: every flow and every junction's grade unknown at once, Newton's method
// of KINSOL (SUNDIALS) with the exact sparse Jacobian, factorised by KLU. It knows nothing of networks beyond their
// equations and evaluates the same law of each link.
#pragma once

#include "core/hydraulics/network.hpp"

namespace sumpwright::performance
{

struct PeerAnswer {
    bool solved = false;
    long steps = 0;
    double residual = 0.0;          // largest misfit of any equation: m, and m3/s
    double largestDifference = 0.0; // of any link's flow from the given answer, m3/s
};

// From nothing: equations, symbolic and numeric factorisation. `answer` is what to compare with.
PeerAnswer solveByPeer(const hydraulics::Network& network, const hydraulics::NetworkResult& answer);

} // namespace sumpwright::performance
