// Random networks for the hydraulics properties: trees and grids fed by a pump, with one-way outlets of which some
// lie out of reach. The seed decides everything.
#pragma once

#include <algorithm>
#include <random>
#include <utility>
#include <vector>

#include "core/hydraulics/network.hpp"

namespace sumpwright::random_networks
{

using hydraulics::Network;
using hydraulics::PipeLink;

class Dice
{
public:
    explicit Dice(unsigned seed) : m_engine(seed) {}
    double between(double low, double high) { return std::uniform_real_distribution<double>(low, high)(m_engine); }
    int upTo(int last) { return std::uniform_int_distribution<int>(0, last)(m_engine); }
    bool oneIn(int n) { return upTo(n - 1) == 0; }
    std::mt19937& engine() { return m_engine; }

private:
    std::mt19937 m_engine;
};

struct Built {
    Network network;
    std::size_t sump = 0;             // node
    std::size_t pump = 0;             // link
    std::vector<std::size_t> outlets; // links
};

inline PipeLink pipe(double boreMm, double lengthM, double sumK, bool oneWay = false, double roughnessMm = 0.0015)
{
    return {units::millimetres(boreMm), units::metres(lengthM), units::millimetres(roughnessMm), sumK, oneWay, {}};
}

inline hydraulics::PumpCurve pumpFor(Dice& dice, int outlets)
{
    const double head = dice.between(1.8, 4.5), flow = dice.between(300.0, 900.0) * outlets + 500.0;
    std::vector<hydraulics::PumpPoint> points;
    for (const auto& [q, h] :
         std::vector<std::pair<double, double>>{{0, 1}, {0.25, 0.91}, {0.5, 0.69}, {0.75, 0.39}, {1, 0}})
        points.push_back({units::litresPerHour(q * flow), units::metresHead(h * head)});
    return *hydraulics::PumpCurve::fromPoints(points);
}

inline double pipeBore(Dice& dice)
{
    constexpr double bores[] = {13.0, 17.0, 21.2, 27.2, 34.0, 42.6, 53.6};
    return bores[dice.upTo(6)];
}

inline void addOutlet(Built& built, Dice& dice, std::size_t junction)
{
    const double level = dice.oneIn(3) ? dice.between(1.5, 5.5) : dice.between(0.3, 1.2);
    const std::size_t outlet = built.network.addFixedGrade(units::elevationMetres(level));
    built.outlets.push_back(built.network.addLink(
        junction, outlet, pipe(pipeBore(dice), dice.between(0.2, 3.0), dice.between(1.0, 30.0), true)));
}

inline Built start(Dice& dice, int outlets)
{
    Built built;
    built.network.viscosity = units::squareMetresPerSecond(dice.between(0.66e-6, 1.6e-6));
    built.sump = built.network.addFixedGrade(units::elevationMetres(dice.between(-0.2, 0.4)));
    const std::size_t discharge = built.network.addJunction();
    built.pump = built.network.addLink(built.sump, discharge, hydraulics::PumpLink{pumpFor(dice, outlets), 1.0});
    return built;
}

// Every new junction hangs on an earlier one; leaves and some others have outlets.
inline Built tree(unsigned seed)
{
    Dice dice(seed);
    const int junctions = 2 + dice.upTo(28);
    Built built = start(dice, junctions);
    std::vector<std::size_t> nodes = {1};
    std::vector<bool> hasChild(1, false);
    for (int i = 0; i < junctions; ++i) {
        const std::size_t parent = static_cast<std::size_t>(dice.upTo(static_cast<int>(nodes.size()) - 1));
        nodes.push_back(built.network.addJunction());
        hasChild.push_back(false);
        hasChild[parent] = true;
        built.network.addLink(nodes[parent], nodes.back(),
                              pipe(pipeBore(dice) + 8.0, dice.between(0.2, 6.0), dice.between(0.0, 8.0)));
    }
    for (std::size_t i = 1; i < nodes.size(); ++i)
        if (!hasChild[i] || dice.oneIn(3))
            addOutlet(built, dice, nodes[i]);
    return built;
}

inline Built grid(unsigned seed)
{
    Dice dice(seed);
    const int width = 2 + dice.upTo(5), height = 2 + dice.upTo(5);
    Built built = start(dice, width * height);
    std::vector<std::size_t> nodes = {1};
    for (int i = 1; i < width * height; ++i)
        nodes.push_back(built.network.addJunction());
    const auto join = [&](int a, int b) {
        built.network.addLink(
            nodes[a], nodes[b],
            pipe(pipeBore(dice), dice.between(0.2, 3.0), dice.oneIn(4) ? 0.0 : dice.between(0.0, 5.0), dice.oneIn(8)));
    };
    for (int y = 0; y < height; ++y)
        for (int x = 0; x < width; ++x) {
            const int i = y * width + x;
            if (x + 1 < width)
                join(i, i + 1);
            if (y + 1 < height)
                join(i, i + width);
            if (!dice.oneIn(3))
                addOutlet(built, dice, nodes[i]);
        }
    return built;
}

// The same network with its nodes and links in another order.
struct Shuffled {
    Network network;
    std::vector<std::size_t> nodeAt; // old index -> new
    std::vector<std::size_t> linkAt;
};

inline Shuffled shuffled(const Network& original, unsigned seed)
{
    Dice dice(seed);
    const auto order = [&](std::size_t count) {
        std::vector<std::size_t> all(count);
        for (std::size_t i = 0; i < count; ++i)
            all[i] = i;
        std::shuffle(all.begin(), all.end(), dice.engine());
        return all;
    };
    Shuffled result;
    result.nodeAt = order(original.nodes.size());
    result.linkAt = order(original.links.size());
    result.network = original;
    for (std::size_t i = 0; i < original.nodes.size(); ++i)
        result.network.nodes[result.nodeAt[i]] = original.nodes[i];
    for (std::size_t k = 0; k < original.links.size(); ++k) {
        hydraulics::NetworkLink link = original.links[k];
        link.from = result.nodeAt[link.from];
        link.to = result.nodeAt[link.to];
        result.network.links[result.linkAt[k]] = link;
    }
    return result;
}

} // namespace sumpwright::random_networks
