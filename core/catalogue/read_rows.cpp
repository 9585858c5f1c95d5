#include "core/catalogue/read_rows.hpp"

#include "core/units/measures.hpp"

namespace sumpwright::catalogue
{
namespace
{

Basis readBasis(const Row& row)
{
    std::vector<std::pair<std::string_view, Basis>> words;
    for (Basis basis : allBases)
        words.emplace_back(basisKey(basis), basis);
    return row.choice<Basis>("basis", words);
}

} // namespace

Provenance readProvenance(const Row& row)
{
    return {row.text("source"), readBasis(row), row.textOr("range", ""), row.textOr("note", "")};
}

Source readSource(const std::string& key, const Row& row)
{
    Source source{key, row.text("title"), readBasis(row), row.textOr("note", "")};
    row.requireAllRead();
    return source;
}

Pipe readPipe(const Row& row)
{
    Pipe pipe;
    pipe.id = row.text("id");
    pipe.name = row.text("name");
    pipe.standard = row.text("standard");
    pipe.material = row.text("material");
    pipe.outsideDiameter = row.quantity<units::Length>("outside_diameter");
    pipe.wall = row.quantity<units::Length>("wall");
    pipe.bore = row.quantityIfAny<units::Length>("bore").value_or(pipe.outsideDiameter - 2.0 * pipe.wall);
    row.require(pipe.wall > units::metres(0.0), "wall", "a pipe has a wall", "more than zero");
    row.require(pipe.bore > units::metres(0.0) && pipe.bore < pipe.outsideDiameter, "bore",
                "the bore does not fit into the outside diameter", "more than zero, less than the outside diameter");
    pipe.roughnessNew = row.quantity<units::Length>("roughness_new");
    if (row.has("corrugated_factor")) {
        pipe.corrugatedFactor = row.ratio("corrugated_factor");
        row.require(*pipe.corrugatedFactor >= 0.01 && *pipe.corrugatedFactor <= 1.0, "corrugated_factor",
                    "no corrugated hose has such a friction factor", "0.01 to 1, usually 0.06 to 0.10");
    }
    pipe.pressureClass = row.text("pressure_class");
    pipe.stockLength = row.quantity<units::Length>("stock_length");
    pipe.drinkingWater =
        row.choice<DrinkingWaterMark>("drinking_water", {{"look-for-mark", DrinkingWaterMark::LookForMark},
                                                         {"ask-maker", DrinkingWaterMark::AskMaker},
                                                         {"not-meant", DrinkingWaterMark::NotMeant}});
    pipe.gravityOnly = row.flag("gravity_only");
    pipe.provenance = readProvenance(row);
    row.requireAllRead();
    return pipe;
}

RoughnessState readRoughness(const Row& row)
{
    RoughnessState state{row.text("id"), row.text("name"), row.quantity<units::Length>("roughness"),
                         row.ratio("manning_n"), row.text("manning_source"), readProvenance(row)};
    row.requireAllRead();
    return state;
}

Pump readPump(const Row& row)
{
    Pump pump;
    pump.id = row.text("id");
    pump.name = row.text("name");
    for (const Row& point : row.parts("points")) {
        pump.points.push_back({point.quantity<units::Flow>("flow"), point.quantity<units::Head>("head")});
        point.requireAllRead();
    }
    row.require(pump.points.size() >= 2 && units::inSi(pump.points.front().flow) == 0.0, "points",
                "a curve starts at flow 0 and has two points or more", "the shut-off head first");
    for (std::size_t i = 1; i < pump.points.size(); ++i)
        row.require(pump.points[i].flow > pump.points[i - 1].flow && pump.points[i].head < pump.points[i - 1].head,
                    "points", "flow does not rise or head does not fall from point to point",
                    "ascending flow, falling head");
    pump.power = {{units::cubicMetresPerSecond(0.0), row.quantity<units::Power>("power")}};
    pump.minimumDepth = row.quantity<units::Length>("minimum_depth");
    pump.dryRunDepth = row.quantity<units::Length>("dry_run_depth");
    row.require(pump.dryRunDepth <= pump.minimumDepth, "dry_run_depth", "this is above the least depth for running",
                "at most minimum_depth");
    pump.solidsPassage = row.quantity<units::Length>("solids_passage");
    pump.outletSize = row.quantity<units::Length>("outlet_size");
    pump.provenance = readProvenance(row);
    row.requireAllRead();
    return pump;
}

Medium readMedium(const Row& row)
{
    Medium medium;
    medium.id = row.text("id");
    medium.name = row.text("name");
    medium.dryDensity = row.spread<units::Density>("dry_density");
    medium.absorption = row.ratioSpread("absorption");
    medium.porosity = row.ratioSpread("porosity");
    medium.retained = row.ratioSpread("retained");
    const auto fits = [](double porosity, double retained) { return porosity < 1.0 && retained <= porosity; };
    row.require(fits(medium.porosity.low, medium.retained.low) && fits(medium.porosity.high, medium.retained.high) &&
                    fits(medium.porosity.typical, medium.retained.typical),
                "porosity", "the retained water does not fit between the grains", "retained <= porosity < 1");
    medium.provenance = readProvenance(row);
    row.requireAllRead();
    return medium;
}

LiveLoad readLiveLoad(const Row& row)
{
    LiveLoad load{row.text("id"),
                  row.text("use"),
                  row.text("code"),
                  row.quantity<units::GroundPressure>("uniform"),
                  row.quantityIfAny<units::Force>("point"),
                  readProvenance(row)};
    row.requireAllRead();
    return load;
}

VesselTemplate readVessel(const Row& row)
{
    VesselTemplate vessel{row.text("id"),
                          row.text("name"),
                          row.quantity<units::Length>("length"),
                          row.quantity<units::Length>("width"),
                          row.quantity<units::Length>("wall_height"),
                          row.quantity<units::Volume>("nominal_volume"),
                          row.spread<units::Mass>("empty_mass"),
                          readProvenance(row)};
    row.requireAllRead();
    return vessel;
}

Support readSupport(const Row& row)
{
    Support support;
    support.id = row.text("id");
    support.name = row.text("name");
    support.material = row.text("material");
    support.standard = row.textOr("standard", "");
    support.outsideDiameter = row.quantity<units::Length>("outside_diameter");
    for (const Row& part : row.parts("spans")) {
        support.spans.push_back(
            {part.quantity<units::Temperature>("temperature"), part.quantity<units::Length>("span")});
        part.requireAllRead();
    }
    row.require(!support.spans.empty(), "spans", "there is no span", "one span or more");
    for (std::size_t i = 0; i < support.spans.size(); ++i)
        row.require(support.spans[i].span > units::Length() &&
                        (i == 0 || (support.spans[i].temperature > support.spans[i - 1].temperature &&
                                    support.spans[i].span <= support.spans[i - 1].span)),
                    "spans", "temperatures do not rise, or a span is zero or grows with the temperature",
                    "rising temperatures, spans that do not grow");
    support.provenance = readProvenance(row);
    row.requireAllRead();
    return support;
}

} // namespace sumpwright::catalogue
