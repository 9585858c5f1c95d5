#include "core/plan/edits/target.hpp"

#include "core/plan/tidy.hpp"

namespace sumpwright::plan
{

namespace
{

struct Finder {
    const Plan& plan;

    std::optional<Vertex> operator()(const Nowhere&) const { return std::nullopt; }
    std::optional<Vertex> operator()(const AtPort& at) const
    {
        return placeOf(plan, RunEnd(PortEnd{at.vessel, at.port, std::nullopt}));
    }
    std::optional<Vertex> operator()(const AtPump& at) const { return placeOf(plan, RunEnd(PumpEnd{at.pump})); }
    std::optional<Vertex> operator()(const AtTee& at) const
    {
        return placeOf(plan, RunEnd(TeeEnd{at.tee, std::nullopt}));
    }
    std::optional<Vertex> operator()(const OntoRun& onto) const
    {
        const Run* run = plan.runs.find(onto.run);
        if (!run || run->vertices.empty())
            return std::nullopt;
        Vertex place = placeAlong(*run, onto.station);
        place.at = tidy(place.at);
        place.level = tidy(place.level);
        return place;
    }
    std::optional<Vertex> operator()(const NewPort& made) const
    {
        const Vessel* vessel = plan.vessels.find(made.vessel);
        if (!vessel)
            return std::nullopt;
        Vertex place;
        place.at = tidy(vessel->centre + turned(made.offset, vessel->turn));
        place.level = made.level;
        return place;
    }
};

} // namespace

std::optional<Vertex> placeOf(const Plan& plan, const Target& target) { return std::visit(Finder{plan}, target); }

} // namespace sumpwright::plan
