#include "core/assessment/own_catalogue.hpp"

#include "core/assessment/rows.hpp"

namespace sumpwright::assessment
{
namespace
{

catalogue::Provenance provenanceOf(const plan::OwnPart& part)
{
    return {"own-part", catalogue::Basis::Own, "as its owner says; not checked", part.origin};
}

catalogue::Pipe rowOf(const plan::OwnPipe& own)
{
    catalogue::Pipe row;
    row.id = own.id;
    row.name = own.name;
    row.standard = "own part";
    row.material = "own part";
    row.outsideDiameter = own.outsideDiameter;
    row.bore = own.bore;
    row.wall = 0.5 * (own.outsideDiameter - own.bore);
    row.roughnessNew = own.roughness;
    row.corrugatedFactor = own.corrugatedFactor;
    row.pressureClass = own.gravityOnly ? "none" : "as printed";
    row.gravityOnly = own.gravityOnly;
    row.provenance = provenanceOf(own);
    return row;
}

catalogue::ValveKind kindOf(plan::OwnFittingKind kind)
{
    switch (kind) {
    case plan::OwnFittingKind::fitting:
        return catalogue::ValveKind::NotAValve;
    case plan::OwnFittingKind::ballValve:
        return catalogue::ValveKind::Ball;
    case plan::OwnFittingKind::gateValve:
        return catalogue::ValveKind::Gate;
    case plan::OwnFittingKind::butterflyValve:
        return catalogue::ValveKind::Butterfly;
    case plan::OwnFittingKind::globeValve:
        return catalogue::ValveKind::Globe;
    case plan::OwnFittingKind::nonReturnValve:
        return catalogue::ValveKind::Check;
    }
    return catalogue::ValveKind::NotAValve;
}

// A valve of a kind closes as that kind does.
void takeOpenings(catalogue::Fitting& row, const catalogue::Catalogue& tables)
{
    for (const catalogue::Fitting& like : tables.fittings())
        if (like.valve == row.valve && !like.openings.empty()) {
            row.openings = like.openings;
            row.shutFrom = like.shutFrom;
            row.openingSource = like.openingSource;
            return;
        }
}

catalogue::Fitting rowOf(const plan::OwnFitting& own, const catalogue::Catalogue& tables)
{
    catalogue::Fitting row;
    row.id = own.id;
    row.name = own.name;
    row.valve = kindOf(own.kind);
    row.defaultK = own.k.value_or(0.0);
    row.flowFactor = own.flowFactor;
    row.defaultKFrom = units::Length();
    row.defaultKTo = units::metres(10.0);
    row.cracking = own.cracking;
    row.provenance = provenanceOf(own);
    if (row.valve != catalogue::ValveKind::NotAValve)
        takeOpenings(row, tables);
    return row;
}

catalogue::Pump rowOf(const plan::OwnPump& own)
{
    catalogue::Pump row;
    row.id = own.id;
    row.name = own.name;
    for (const plan::CurvePoint& point : own.curve)
        row.points.push_back({point.flow, point.head});
    row.twoNumbers = own.twoNumbers;
    if (own.power)
        row.power = {{units::Flow(), *own.power}};
    row.minimumDepth = own.leastDepth.value_or(units::Length());
    row.dryRunDepth = row.minimumDepth;
    row.provenance = provenanceOf(own);
    return row;
}

} // namespace

std::shared_ptr<const catalogue::Catalogue> withOwnParts(const std::shared_ptr<const catalogue::Catalogue>& tables,
                                                         const plan::OwnParts& parts)
{
    if (parts.empty())
        return tables;
    catalogue::Tables all = tables->tables();
    for (const plan::OwnPipe& pipe : parts.pipes)
        all.pipes.push_back(rowOf(pipe));
    for (const plan::OwnFitting& fitting : parts.fittings)
        all.fittings.push_back(rowOf(fitting, *tables));
    for (const plan::OwnPump& pump : parts.pumps)
        all.pumps.push_back(rowOf(pump));
    return std::make_shared<const catalogue::Catalogue>(std::move(all));
}

} // namespace sumpwright::assessment
