#include "core/design/share_out.hpp"

#include <algorithm>

namespace sumpwright::design
{
namespace
{

constexpr double leastShare = 0.02;
constexpr double leastRest = 0.05;
constexpr double leastSpeed = 0.2;
constexpr int halvings = 24;

class Sharing
{
public:
    Sharing(DrawOff& bench, const std::vector<OutletPart>& roles, const std::vector<units::Flow>& targets,
            const base::StopToken& stop)
        : parts(roles), m_bench(bench), m_targets(targets), m_stop(stop), m_open(roles.size())
    {
    }

    std::vector<OutletPart> parts;

    // Shares of the rest are counted from these flows on.
    void countRestFrom(const DrawnOff& drawn) { m_open = drawn.outlets; }

    // What the rest takes with every valve open; false: no solution.
    bool open()
    {
        Draws none(parts.size());
        for (std::size_t i = 0; i < parts.size(); ++i)
            if (parts[i] == OutletPart::shut)
                none[i] = units::Flow();
        const DrawnOff drawn = m_bench.draw(none);
        m_open = drawn.outlets;
        return drawn.solved;
    }

    Draws drawsAt(double share, double rest) const
    {
        Draws draws(parts.size());
        for (std::size_t i = 0; i < parts.size(); ++i)
            switch (parts[i]) {
            case OutletPart::target:
                draws[i] = share * m_targets[i];
                break;
            case OutletPart::rest:
                if (rest < 1.0 && m_open[i] > units::Flow())
                    draws[i] = rest * m_open[i];
                break;
            case OutletPart::shut:
                draws[i] = units::Flow();
                break;
            case OutletPart::bystander:
            case OutletPart::unreachable:
                break;
            }
        return draws;
    }

    DrawnOff at(double share, double rest) const
    {
        m_stop.checkpoint();
        return m_bench.draw(drawsAt(share, rest));
    }

    // Of the outlets with a target; nothing where the network could not carry it.
    std::optional<units::Head> least(const DrawnOff& drawn) const
    {
        if (!drawn.solved)
            return std::nullopt;
        units::Head least = units::metresHead(1e6);
        for (std::size_t i = 0; i < parts.size(); ++i)
            if (parts[i] == OutletPart::target)
                least = std::min(least, drawn.spare[i].value_or(units::metresHead(-1e6)));
        return least;
    }

    bool does(double share, double rest) const
    {
        const auto spare = least(at(share, rest));
        return spare && *spare >= units::Head();
    }

    // Marks the outlets that get nothing even when next to nothing is asked; true when there were any.
    bool dropUnreachable()
    {
        const DrawnOff little = at(leastShare, leastShare);
        bool any = false;
        for (std::size_t i = 0; i < parts.size(); ++i) {
            if (parts[i] != OutletPart::target)
                continue;
            bool comes = little.solved && little.spare[i] && *little.spare[i] >= units::Head();
            if (!little.solved) {
                Draws alone(parts.size());
                alone[i] = leastShare * m_targets[i];
                const DrawnOff drawn = m_bench.draw(alone);
                comes = drawn.solved && drawn.spare[i];
            }
            if (!comes) {
                parts[i] = OutletPart::unreachable;
                any = true;
            }
        }
        return any;
    }

private:
    DrawOff& m_bench;
    const std::vector<units::Flow>& m_targets;
    const base::StopToken& m_stop;
    std::vector<units::Flow> m_open;
};

// The largest value in [low, high] for which the question is true; it is true at low, and false at high.
template <class Question> double largest(double low, double high, Question&& isTrue)
{
    for (int i = 0; i < halvings; ++i) {
        const double middle = (low + high) / 2.0;
        (isTrue(middle) ? low : high) = middle;
    }
    return low;
}

} // namespace

std::optional<SharedOut> shareOut(DrawOff& bench, std::vector<OutletPart> parts,
                                  const std::vector<units::Flow>& targets, const base::StopToken& stop)
{
    Sharing sharing(bench, parts, targets, stop);
    if (!sharing.open())
        return std::nullopt;
    SharedOut out;
    while (!sharing.does(leastShare, leastShare))
        if (!sharing.dropUnreachable())
            return std::nullopt;
    if (!sharing.does(1.0, 1.0)) {
        Sharing full = sharing;
        full.countRestFrom(full.at(1.0, 1.0)); // what it takes beside the targets in full
        if (full.does(1.0, leastRest)) {
            out.restShare = largest(leastRest, 1.0, [&](double rest) { return full.does(1.0, rest); });
            sharing.countRestFrom(full.at(1.0, 1.0));
        } else {
            out.missing = -sharing.least(sharing.at(1.0, leastRest)).value_or(units::Head());
            out.share = largest(leastShare, 1.0, [&](double share) { return sharing.does(share, share); });
            out.restShare = out.share;
        }
    }
    out.parts = sharing.parts;
    out.draws = sharing.drawsAt(out.share, out.restShare);
    out.drawn = sharing.at(out.share, out.restShare);
    return out.drawn.solved ? std::optional(out) : std::nullopt;
}

std::optional<double> lowestSpeed(DrawOff& bench, const std::vector<OutletPart>& parts,
                                  const std::vector<units::Flow>& targets, double highest, const base::StopToken& stop)
{
    const auto does = [&](double speed) {
        bench.setSpeed(speed);
        Sharing sharing(bench, parts, targets, stop);
        return sharing.open() && sharing.does(1.0, 1.0);
    };
    if (!does(highest))
        return std::nullopt;
    if (does(leastSpeed))
        return leastSpeed;
    double low = leastSpeed, high = highest;
    for (int i = 0; i < halvings; ++i) {
        const double middle = (low + high) / 2.0;
        (does(middle) ? high : low) = middle;
    }
    return high;
}

} // namespace sumpwright::design
