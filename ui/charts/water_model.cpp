#include <QCoreApplication>

#include "ui/charts/models.hpp"
#include "ui/text/names.hpp"
#include "ui/text/result_names.hpp"
#include "ui/text/subject.hpp"

namespace sumpwright::ui::charts
{

namespace
{

using assessment::WaterState;

struct Words {
    Q_DECLARE_TR_FUNCTIONS(WaterChart)
};

enum Part { fishTanks, beds, otherVessels, sumps, pipes, spilled, partCount };

QString partName(int part)
{
    switch (part) {
    case fishTanks:
        return Words::tr("Fish tanks");
    case beds:
        return Words::tr("Grow beds");
    case otherVessels:
        return Words::tr("Settlers");
    case sumps:
        return Words::tr("Sump");
    case pipes:
        return Words::tr("Pipes");
    default:
        return Words::tr("Spilled");
    }
}

int partOf(plan::VesselKind kind)
{
    switch (kind) {
    case plan::VesselKind::fishTank:
        return fishTanks;
    case plan::VesselKind::sump:
        return sumps;
    case plan::VesselKind::mediaBed:
    case plan::VesselKind::raftBed:
        return beds;
    case plan::VesselKind::settler:
        break;
    }
    return otherVessels;
}

struct Sums {
    double cubicMetres[partCount] = {};
    std::vector<base::Id> vessels[partCount];
};

Sums sumsIn(const assessment::Assessment& results, WaterState state)
{
    Sums sums;
    for (const auto& vessel : results.water->vessels) {
        const plan::Vessel* drawn = results.plan.vessels.find(vessel.id);
        const auto& water = vessel.water[state];
        if (!drawn || !water.ok())
            continue;
        const int part = partOf(drawn->kind);
        sums.cubicMetres[part] += units::inCubicMetres(water->volume);
        sums.vessels[part].push_back(vessel.id);
    }
    if (const auto& total = results.water->totals[state]; total.ok()) {
        sums.cubicMetres[pipes] = units::inCubicMetres(total->inPipes);
        sums.cubicMetres[spilled] = units::inCubicMetres(total->spilled);
    }
    return sums;
}

WorkingOf workingOf(const Sums& sums, int part, WaterState state)
{
    if (part == pipes)
        return [state](const assessment::Assessment& now) { return assessment::workingOfWaterInPipes(now, state); };
    if (part == spilled)
        return {};
    return [vessels = sums.vessels[part], state](const assessment::Assessment& now) {
        return assessment::workingOfWaterIn(now, vessels, state);
    };
}

// In the legend, where all have to stand in one line.
QString shortName(int part)
{
    return part == fishTanks ? Words::tr("Tanks") : part == beds ? Words::tr("Beds") : partName(part);
}

QString rowName(WaterState state)
{
    switch (state) {
    case WaterState::runningLeast:
        return Words::tr("Beds flooded");
    case WaterState::runningMost:
        return Words::tr("Beds drained");
    case WaterState::pumpStopped:
        return Words::tr("Pump stopped");
    case WaterState::toRim:
        break;
    }
    return Words::tr("To the rim");
}

QString sentenceOf(const assessment::Assessment& results, const text::DisplaySettings& display)
{
    const auto& total = results.water->totals[WaterState::runningLeast];
    if (!total.ok())
        return text::heading(text::whyMissing(total)) + u'.';
    if (results.water->vessels.empty())
        return Words::tr("No vessel yet: the water begins with the first one.");
    QString sentence = Words::tr("%1 of water in all.").arg(display.quantityText(total->all()));
    for (const auto& sump : results.sumps->sumps) {
        const QString name = text::heading(text::subject(results.plan, sump.id));
        if (!sump.pumpStop.ok()) {
            sentence += Words::tr(" %1 when the pump stops: %2.").arg(name, text::whyMissing(sump.pumpStop));
        } else if (units::inSi(sump.pumpStop->spilled) > 0.0) {
            sentence += Words::tr(" When the pump stops, %1 spills %2.")
                            .arg(text::subject(results.plan, sump.id), display.quantityText(sump.pumpStop->spilled));
        } else {
            sentence += Words::tr(" When the pump stops, %1 has room for %2 more.")
                            .arg(text::subject(results.plan, sump.id), display.quantityText(sump.pumpStop->roomLeft));
        }
    }
    return sentence;
}

} // namespace

BarModel waterModel(const assessment::Assessment& results, const text::DisplaySettings& display)
{
    BarModel model;
    model.sentence = sentenceOf(results, display);
    if (results.water->vessels.empty())
        return model;
    model.working = [](const assessment::Assessment& now) {
        return assessment::workingOfWaterTotal(now, WaterState::runningLeast);
    };
    const bool us = display.system == units::UnitSystem::us;
    const char* unit = us ? "US gal" : "L";
    model.axisTitle = us ? Words::tr("Volume V (US gal)") : Words::tr("Volume V (L)");
    model.table = {{Words::tr("State"), Words::tr("Where"), Words::tr("Volume")},
                   {QString(), QString(), QString::fromLatin1(unit)},
                   {}};
    const WaterState states[] = {WaterState::runningLeast, WaterState::runningMost, WaterState::pumpStopped};
    Sums sums[3];
    bool used[partCount] = {};
    for (int i = 0; i < 3; ++i) {
        sums[i] = sumsIn(results, states[i]);
        for (int part = 0; part < partCount; ++part)
            used[part] = used[part] || sums[i].cubicMetres[part] > 0.0;
    }
    int column[partCount] = {};
    for (int part = 0; part < partCount; ++part) {
        column[part] = static_cast<int>(model.parts.size());
        if (used[part])
            model.parts << shortName(part);
    }
    for (std::size_t i = 0; i < std::size(states); ++i) {
        const WaterState state = states[i];
        if (!results.water->totals[state].ok())
            continue;
        const int row = static_cast<int>(model.rows.size());
        model.rows << rowName(state);
        for (int part = 0; part < partCount; ++part) {
            const units::Volume volume = units::cubicMetres(sums[i].cubicMetres[part]);
            if (!used[part] || units::inSi(volume) <= 0.0)
                continue;
            model.segments.push_back(
                {row, column[part], units::inUnit(volume, unit),
                 Words::tr("%1 – %2: %3").arg(rowName(state), partName(part), display.quantityText(volume)),
                 sums[i].vessels[part].empty() ? base::Id{} : sums[i].vessels[part].front(),
                 workingOf(sums[i], part, state)});
            model.table.rows.push_back(
                {rowName(state), partName(part), ChartTable::number(units::inUnit(volume, unit))});
        }
    }
    return model;
}

} // namespace sumpwright::ui::charts
