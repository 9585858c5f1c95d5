// Networks the hydraulics tests share: invented layouts, and short ways to write links down.
#pragma once

#include <vector>

#include "core/hydraulics/network.hpp"
#include "tests/core/hydraulics/example_pumps.hpp"

namespace sumpwright::hydraulics::examples
{

constexpr double smoothPlastic = 1.5e-6; // m

inline units::KinematicViscosity waterAt20() { return units::squareMetresPerSecond(1.00340e-6); }

inline Network emptyNetwork()
{
    Network network;
    network.viscosity = waterAt20();
    return network;
}

inline PipeLink pipe(double boreMm, double lengthM, double sumK = 0.0, double roughnessM = smoothPlastic)
{
    return {units::millimetres(boreMm), units::metres(lengthM), units::metres(roughnessM), sumK, false, {}};
}

inline PipeLink oneWay(PipeLink link)
{
    link.oneWay = true;
    return link;
}

inline std::size_t level(Network& network, double metres)
{
    return network.addFixedGrade(units::elevationMetres(metres));
}

inline double lph(const NetworkResult& result, std::size_t link)
{
    return units::inLitresPerHour(result.links[link].flow);
}

inline double grade(const NetworkResult& result, std::size_t node)
{
    return units::inMetres(*result.nodes[node].grade);
}

// A pump lifts from a sump through a riser into a header with a row of free outlets.
struct Manifold {
    Network network;
    std::size_t pump = 0;
    std::vector<std::size_t> junctions;
    std::vector<std::size_t> outlets; // links
};

// Sump 0.20, G4500, riser 27.2 mm x 2 m K 1.8, header 27.2 mm in four pieces of 1.2 m; from its first junction
// 27.2 mm x 3 m K 3.5 to a tank inlet at 1.30, from the others 17 mm x 0.6 m K 6 to beds at 1.10.
inline Manifold tankAndFourBeds(double addedToFirstBed = 0.0, double addedToTank = 0.0, double lastBedLevel = 1.10)
{
    Manifold m;
    m.network = emptyNetwork();
    Network& n = m.network;
    const std::size_t sump = level(n, 0.20);
    const std::size_t discharge = n.addJunction();
    for (int i = 0; i < 5; ++i)
        m.junctions.push_back(n.addJunction());
    m.pump = n.addLink(sump, discharge, PumpLink{g4500(), 1.0});
    n.addLink(discharge, m.junctions[0], pipe(27.2, 2.0, 1.8));
    for (int i = 0; i < 4; ++i)
        n.addLink(m.junctions[i], m.junctions[i + 1], pipe(27.2, 1.2));
    m.outlets.push_back(n.addLink(m.junctions[0], level(n, 1.30), oneWay(pipe(27.2, 3.0, 3.5 + addedToTank))));
    for (int i = 1; i < 5; ++i)
        m.outlets.push_back(n.addLink(m.junctions[i], level(n, i == 4 ? lastBedLevel : 1.10),
                                      oneWay(pipe(17.0, 0.6, 6.0 + (i == 1 ? addedToFirstBed : 0.0)))));
    return m;
}

// Sump 0, G4500, riser 27.2 mm x 1.5 m K 2.5, header 27.2 mm in three pieces of 1 m, four beds behind 21.2 mm x 1 m
// K 5 at 1.0.
inline Manifold fourEqualBeds()
{
    Manifold m;
    m.network = emptyNetwork();
    Network& n = m.network;
    const std::size_t sump = level(n, 0.0);
    const std::size_t discharge = n.addJunction();
    for (int i = 0; i < 4; ++i)
        m.junctions.push_back(n.addJunction());
    m.pump = n.addLink(sump, discharge, PumpLink{g4500(), 1.0});
    n.addLink(discharge, m.junctions[0], pipe(27.2, 1.5, 2.5));
    for (int i = 0; i < 3; ++i)
        n.addLink(m.junctions[i], m.junctions[i + 1], pipe(27.2, 1.0));
    for (int i = 0; i < 4; ++i)
        m.outlets.push_back(n.addLink(m.junctions[i], level(n, 1.0), oneWay(pipe(21.2, 1.0, 5.0))));
    return m;
}

} // namespace sumpwright::hydraulics::examples
