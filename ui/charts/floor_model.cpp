#include <algorithm>

#include <QCoreApplication>

#include "ui/charts/models.hpp"
#include "ui/text/counted.hpp"
#include "ui/text/names.hpp"
#include "ui/text/result_names.hpp"
#include "ui/text/subject.hpp"

namespace sumpwright::ui::charts
{

namespace
{

using assessment::LoadCase;

struct Words {
    Q_DECLARE_TR_FUNCTIONS(FloorChart)
};

constexpr std::size_t mostRows = 12;

std::vector<const assessment::VesselLoad*> heaviestFirst(const assessment::FloorResult& floor)
{
    std::vector<const assessment::VesselLoad*> loads;
    for (const auto& vessel : floor.vessels)
        if (vessel.in(LoadCase::toRim).ok())
            loads.push_back(&vessel);
    std::stable_sort(loads.begin(), loads.end(), [](const auto* a, const auto* b) {
        return a->in(LoadCase::toRim)->underFootprint > b->in(LoadCase::toRim)->underFootprint;
    });
    return loads;
}

QString sentenceOf(const assessment::Assessment& results, const text::DisplaySettings& display, std::size_t leftOut)
{
    const auto& total = results.floor->in(LoadCase::toRim);
    if (!total.ok())
        return text::heading(text::whyMissing(total)) + u'.';
    if (results.floor->vessels.empty())
        return Words::tr("No vessel yet: the load begins with the first one.");
    QString sentence = Words::tr("Every vessel to its rim: %1 in all, at most %2 under %3 (estimate).")
                           .arg(display.quantityText(total->weight), display.quantityText(total->worstFootprint),
                                text::subject(results.plan, total->worstVessel));
    if (const auto& comparison = results.floor->comparison)
        sentence +=
            Words::tr(" That is %1 times the %2 that %3 lets a floor carry for “%4”.")
                .arg(display.ratioText(comparison->worstFootprintRatio, 2), display.quantityText(comparison->liveLoad),
                     QString::fromStdString(comparison->code), QString::fromStdString(comparison->use));
    sentence += Words::tr(" Whether a floor may carry this is for a structural engineer or the building authority.");
    if (leftOut > 0)
        sentence += Words::tr(" %1 not shown.")
                        .arg(text::counted(static_cast<int>(leftOut), Words::tr("lighter vessel"),
                                           Words::tr("lighter vessels")));
    return sentence;
}

QString caseName(LoadCase which)
{
    return which == LoadCase::toRim ? Words::tr("To the rim") : Words::tr("Beds flooded, running");
}

} // namespace

BarModel floorModel(const assessment::Assessment& results, const text::DisplaySettings& display)
{
    BarModel model;
    const bool us = display.system == units::UnitSystem::us;
    const char* unit = us ? "psf" : "kPa";
    model.axisTitle = us ? Words::tr("Pressure p (psf)") : Words::tr("Pressure p (kPa)");
    model.sideBySide = true;
    auto loads = heaviestFirst(*results.floor);
    model.table = {{Words::tr("Vessel"), Words::tr("Case"), Words::tr("Pressure"), Words::tr("Weight")},
                   {QString(), QString(), QString::fromLatin1(unit), us ? QStringLiteral("lbf") : QStringLiteral("kN")},
                   {}};
    model.parts = {caseName(LoadCase::toRim), caseName(LoadCase::bedsFlooded)};
    const std::size_t shown = std::min(loads.size(), mostRows);
    model.sentence = sentenceOf(results, display, loads.size() - shown);
    model.working = [](const assessment::Assessment& now) {
        return assessment::workingOfLoadTotal(now, LoadCase::toRim);
    };
    for (std::size_t i = 0; i < loads.size(); ++i) {
        const QString tag = QString::fromStdString(plan::tagOf(results.plan, loads[i]->id));
        for (const LoadCase which : {LoadCase::toRim, LoadCase::bedsFlooded}) {
            const auto& load = loads[i]->in(which);
            if (!load.ok())
                continue;
            const double pressure = units::inUnit(load->underFootprint, unit);
            model.table.rows.push_back({tag, caseName(which), ChartTable::number(pressure),
                                        ChartTable::number(units::inUnit(load->weight, us ? "lbf" : "kN"))});
            if (i < shown)
                model.segments.push_back(
                    {static_cast<int>(i), which == LoadCase::toRim ? 0 : 1, pressure,
                     Words::tr("%1, %2: %3 (%4 in all)")
                         .arg(text::heading(text::subject(results.plan, loads[i]->id)), caseName(which).toLower(),
                              display.quantityText(load->underFootprint), display.quantityText(load->weight)),
                     loads[i]->id, [id = loads[i]->id, which](const assessment::Assessment& now) {
                         return assessment::workingOfMass(now, id, which);
                     }});
        }
        if (i < shown)
            model.rows << tag;
    }
    if (const auto& comparison = results.floor->comparison; comparison && !model.rows.isEmpty())
        model.limit =
            LimitLine{units::inUnit(comparison->liveLoad, unit),
                      Words::tr("Live load, %1: %2")
                          .arg(QString::fromStdString(comparison->use), display.quantityText(comparison->liveLoad)),
                      &assessment::workingOfLiveLoad};
    return model;
}

} // namespace sumpwright::ui::charts
