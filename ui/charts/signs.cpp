#include "ui/charts/signs.hpp"
#include "ui/text/counted.hpp"

#include <optional>

#include <QCoreApplication>

namespace sumpwright::ui::charts
{

namespace
{

using assessment::LoadCase;
using assessment::RunningState;
using assessment::Severity;
using assessment::WaterState;
using assessment::YearEnd;

struct Words {
    Q_DECLARE_TR_FUNCTIONS(VitalSigns)
};

// Differences smaller than this share are not worth a word.
constexpr double worthSaying = 0.002;

template <class Kind> QString lessThanBefore(const Kind& now, const Kind& before, const text::DisplaySettings& display)
{
    const double lost = units::inSi(before) - units::inSi(now);
    return lost > worthSaying * std::abs(units::inSi(before))
               ? Words::tr("%1 less").arg(display.quantityText(units::fromSi<Kind>(lost)))
               : QString();
}

template <class Kind> QString moreThanBefore(const Kind& now, const Kind& before, const text::DisplaySettings& display)
{
    const double gained = units::inSi(now) - units::inSi(before);
    return gained > worthSaying * std::abs(units::inSi(before))
               ? Words::tr("%1 more").arg(display.quantityText(units::fromSi<Kind>(gained)))
               : QString();
}

struct Room {
    base::Id sump;
    units::Volume least;
    bool spills = false;
};

// The sump with the least room after the pump has stopped.
std::optional<Room> leastRoom(const assessment::Assessment& results)
{
    std::optional<Room> room;
    for (const auto& sump : results.sumps->sumps)
        if (sump.pumpStop.ok() && (!room || sump.pumpStop->roomLeft < room->least))
            room = Room{sump.id, sump.pumpStop->roomLeft, units::inSi(sump.pumpStop->spilled) > 0.0};
    return room;
}

const assessment::PumpResult* firstPump(const assessment::Assessment& results)
{
    for (const auto& pump : results.pumps->pumps)
        if (pump.duty[RunningState::least].ok())
            return &pump;
    return nullptr;
}

QString yearOf(const assessment::Assessment& results, const assessment::PumpResult& pump,
               const text::DisplaySettings& display)
{
    const auto* season = assessment::find(results.season->pumps, pump.id);
    if (!season || !season->duty[YearEnd::fouledCold] || !season->duty[YearEnd::newWarm])
        return {};
    const auto span = assessment::spanOf(season->duty[YearEnd::fouledCold]->flow, season->duty[YearEnd::newWarm]->flow);
    return Words::tr("through the year about %1 to %2")
        .arg(display.quantityText(span.least), display.quantityText(span.most));
}

void addWater(std::vector<Sign>& signs, const assessment::Assessment& results, const text::DisplaySettings& display)
{
    const auto& total = results.water->totals[WaterState::runningLeast];
    if (total.ok() && !results.water->vessels.empty())
        signs.push_back({QStringLiteral("water"),
                         QStringLiteral("water"),
                         Words::tr("Water"),
                         display.quantityText(total->all()),
                         {},
                         {},
                         false});
}

void addDuty(std::vector<Sign>& signs, const assessment::Assessment& results, const assessment::Assessment* before,
             const text::DisplaySettings& display)
{
    const auto* first = firstPump(results);
    if (!first)
        return;
    const auto& duty = first->duty[RunningState::least];
    const auto* pumpBefore = before ? firstPump(*before) : nullptr;
    const auto* earlier = pumpBefore ? &*pumpBefore->duty[RunningState::least] : nullptr;
    const auto pumps = results.pumps->pumps.size();
    signs.push_back(
        {QStringLiteral("duty"), QStringLiteral("duty"),
         pumps > 1 ? Words::tr("First of %n pumps", nullptr, static_cast<int>(pumps)) : Words::tr("Pump duty"),
         Words::tr("%1 at %2").arg(display.quantityText(duty->flow), display.quantityText(duty->head)),
         earlier ? lessThanBefore(duty->flow, earlier->flow, display) : QString(), yearOf(results, *first, display),
         duty->beyondCurve});
}

void addSump(std::vector<Sign>& signs, const assessment::Assessment& results, const assessment::Assessment* before,
             const text::DisplaySettings& display)
{
    const auto room = leastRoom(results);
    if (!room)
        return;
    const auto earlier = before ? leastRoom(*before) : std::nullopt;
    signs.push_back({QStringLiteral("sump"),
                     QStringLiteral("water"),
                     Words::tr("Sump room after pump stop"),
                     room->spills ? Words::tr("spills %1").arg(display.quantityText(-room->least))
                                  : display.quantityText(room->least),
                     earlier ? lessThanBefore(room->least, earlier->least, display) : QString(),
                     {},
                     room->spills});
}

void addFloor(std::vector<Sign>& signs, const assessment::Assessment& results, const assessment::Assessment* before,
              const text::DisplaySettings& display)
{
    const auto& total = results.floor->in(LoadCase::toRim);
    if (!total.ok() || results.floor->vessels.empty())
        return;
    QString worse;
    if (before && before->floor->in(LoadCase::toRim).ok())
        worse = moreThanBefore(total->weight, before->floor->in(LoadCase::toRim)->weight, display);
    signs.push_back({QStringLiteral("floor"),
                     QStringLiteral("floor"),
                     Words::tr("Floor load, to the rim"),
                     Words::tr("%1, worst %2")
                         .arg(display.quantityText(total->weight), display.quantityText(total->worstFootprint)),
                     worse,
                     {},
                     false});
}

struct Counts {
    int errors = 0;
    int warnings = 0;
    int notes = 0;
};

Counts countsOf(const assessment::Findings& findings)
{
    Counts counts;
    for (const auto& finding : findings.list) {
        switch (finding.severity) {
        case Severity::error:
            ++counts.errors;
            break;
        case Severity::warning:
            ++counts.warnings;
            break;
        case Severity::note:
            ++counts.notes;
            break;
        }
    }
    return counts;
}

void addFindings(std::vector<Sign>& signs, const assessment::Assessment& results, const assessment::Assessment* before)
{
    const Counts counts = countsOf(*results.findings);
    QStringList parts;
    if (counts.errors)
        parts << text::counted(counts.errors, Words::tr("error"), Words::tr("errors"));
    if (counts.warnings)
        parts << text::counted(counts.warnings, Words::tr("warning"), Words::tr("warnings"));
    if (counts.notes)
        parts << text::counted(counts.notes, Words::tr("note"), Words::tr("notes"));
    QString worse;
    if (before) {
        const Counts earlier = countsOf(*before->findings);
        const int more = counts.errors + counts.warnings - earlier.errors - earlier.warnings;
        if (more > 0)
            worse = Words::tr("%n more", nullptr, more);
    }
    signs.push_back({QStringLiteral("findings"),
                     QString(),
                     Words::tr("Findings"),
                     parts.isEmpty() ? Words::tr("none") : parts.join(QStringLiteral(", ")),
                     worse,
                     {},
                     counts.errors > 0});
}

} // namespace

std::optional<assessment::Working> workingOfSign(const assessment::Assessment& results, const QString& id)
{
    if (id == QLatin1String("water"))
        return assessment::workingOfWaterTotal(results, WaterState::runningLeast);
    if (id == QLatin1String("floor"))
        return assessment::workingOfLoadTotal(results, LoadCase::toRim);
    if (id == QLatin1String("sump")) {
        const auto room = leastRoom(results);
        return room ? assessment::workingOfPumpStop(results, room->sump) : std::nullopt;
    }
    for (const auto& pump : results.pumps->pumps)
        if (id == QLatin1String("duty") && pump.duty[RunningState::least].ok())
            return assessment::workingOfDutyPoint(results, pump.id, RunningState::least);
    return std::nullopt;
}

std::vector<Sign> signsOf(const assessment::Assessment& results, const assessment::Assessment* before,
                          const text::DisplaySettings& display)
{
    std::vector<Sign> signs;
    addWater(signs, results, display);
    addDuty(signs, results, before, display);
    addSump(signs, results, before, display);
    addFloor(signs, results, before, display);
    addFindings(signs, results, before);
    return signs;
}

} // namespace sumpwright::ui::charts
