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

using assessment::HeadStepKind;

struct Words {
    Q_DECLARE_TR_FUNCTIONS(HeadChart)
};

enum Part { lift, friction, fittings, partCount };

QString partName(int part)
{
    switch (part) {
    case lift:
        return Words::tr("Lift");
    case friction:
        return Words::tr("Pipe friction");
    default:
        return Words::tr("Fittings and outlet");
    }
}

struct Row {
    base::Id element;
    units::Head head[partCount] = {};
    int fittingCount = 0;
};

// One row for the lift, one for each run of the path; the steps of a run in one row.
std::vector<Row> rowsOf(const assessment::HeadPath& path)
{
    std::vector<Row> rows;
    for (const auto& step : path.steps) {
        if (rows.empty() || rows.back().element != step.element || step.kind == HeadStepKind::lift)
            rows.push_back({step.element, {}, 0});
        Row& row = rows.back();
        switch (step.kind) {
        case HeadStepKind::lift:
            row.head[lift] += step.head;
            break;
        case HeadStepKind::friction:
            row.head[friction] += step.head;
            break;
        case HeadStepKind::fitting:
        case HeadStepKind::exit:
            row.head[fittings] += step.head;
            ++row.fittingCount;
            break;
        }
    }
    return rows;
}

// The path of the pump with the highest head; null when there is none.
const assessment::PumpHeadPath* pathShown(const assessment::Assessment& results)
{
    const assessment::PumpHeadPath* shown = nullptr;
    for (const auto& pump : results.headPaths->pumps)
        if (pump.path.ok() && (!shown || pump.path->pumpHead > shown->path->pumpHead))
            shown = &pump;
    return shown;
}

QString sentenceOf(const assessment::Assessment& results, const assessment::PumpHeadPath& pump,
                   const text::DisplaySettings& display)
{
    units::Head sums[3] = {};
    for (const auto& step : pump.path->steps)
        sums[step.kind == HeadStepKind::lift       ? lift
             : step.kind == HeadStepKind::friction ? friction
                                                   : fittings] += step.head;
    return Words::tr("On the hardest way, %1 to %2, %3 gives %4: %5 lifts the water, %6 goes into pipe walls, %7 into "
                     "fittings and the outlet.")
        .arg(text::subject(results.plan, pump.id), text::subject(results.plan, pump.path->vessel),
             Words::tr("the pump"), display.quantityText(pump.path->pumpHead), display.quantityText(sums[lift]),
             display.quantityText(sums[friction]), display.quantityText(sums[fittings]));
}

} // namespace

BarModel headModel(const assessment::Assessment& results, const text::DisplaySettings& display)
{
    BarModel model;
    const bool us = display.system == units::UnitSystem::us;
    const char* unit = us ? "ft" : "m";
    model.axisTitle = us ? Words::tr("Head H (ft)") : Words::tr("Head H (m)");
    const auto* pump = pathShown(results);
    if (!pump) {
        model.sentence = results.headPaths->pumps.empty()
                             ? Words::tr("No pump yet: stand one in the sump and lead a run from it.")
                             : Words::tr("Head: %1").arg(text::whyMissing(results.headPaths->pumps.front().path));
        return model;
    }
    model.sentence = sentenceOf(results, *pump, display);
    model.parts = {partName(lift), partName(friction), partName(fittings)};
    model.table = {{Words::tr("Where"), Words::tr("What"), Words::tr("Head")},
                   {QString(), QString(), QString::fromLatin1(unit)},
                   {}};
    for (const Row& row : rowsOf(*pump->path)) {
        const int index = static_cast<int>(model.rows.size());
        const bool isLift = units::inSi(row.head[lift]) != 0.0;
        const QString tag = QString::fromStdString(plan::tagOf(results.plan, row.element));
        const QString name = isLift ? Words::tr("Lift to %1").arg(tag) : tag;
        model.rows << name;
        for (int part = 0; part < partCount; ++part) {
            if (units::inSi(row.head[part]) <= 0.0)
                continue;
            QString reading = Words::tr("%1 – %2: %3").arg(name, partName(part), display.quantityText(row.head[part]));
            if (part == fittings)
                reading += Words::tr(" in %1").arg(
                    text::counted(row.fittingCount, Words::tr("fitting"), Words::tr("fittings")));
            model.segments.push_back({index, part, units::inUnit(row.head[part], unit), reading, row.element});
            model.table.rows.push_back({name, partName(part), ChartTable::number(units::inUnit(row.head[part], unit))});
        }
    }
    return model;
}

} // namespace sumpwright::ui::charts
