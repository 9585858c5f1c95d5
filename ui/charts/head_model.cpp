#include <algorithm>
#include <functional>
#include <limits>

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
    base::Id element; // none: several runs that take little
    units::Head head[partCount] = {};
    int fittingCount = 0;
    int runs = 1;
};

constexpr std::size_t mostRows = 12; // more would leave no room for their names

// One row for the lift, one for each run of the path; the steps of a run in one row.
std::vector<Row> rowsOf(const assessment::HeadPath& path)
{
    std::vector<Row> rows;
    for (const auto& step : path.steps) {
        if (rows.empty() || rows.back().element != step.element || step.kind == HeadStepKind::lift)
            rows.push_back({step.element});
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

// The lift and the runs that take most, in the order of the path, and all others in one row below.
std::vector<Row> chartRowsOf(const std::vector<Row>& rows)
{
    if (rows.size() <= mostRows)
        return rows;
    const auto weightOf = [](const Row& row) { // the lift first
        return units::inSi(row.head[lift]) != 0.0 ? std::numeric_limits<double>::infinity()
                                                  : units::inSi(row.head[friction] + row.head[fittings]);
    };
    std::vector<double> weights;
    for (const Row& row : rows)
        weights.push_back(weightOf(row));
    std::nth_element(weights.begin(), weights.begin() + (mostRows - 2), weights.end(), std::greater<>());
    const double least = weights[mostRows - 2];
    std::vector<Row> shown;
    Row others{{}, {}, 0, 0};
    for (const Row& row : rows) {
        if (weightOf(row) >= least && shown.size() + 1 < mostRows) {
            shown.push_back(row);
            continue;
        }
        for (int part = 0; part < partCount; ++part)
            others.head[part] += row.head[part];
        others.fittingCount += row.fittingCount;
        ++others.runs;
    }
    shown.push_back(others);
    return shown;
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

// The working of a part of a row: the lift by its levels, losses by the run's own flow.
WorkingOf workingOf(base::Id pump, const Row& row, int part)
{
    if (part == lift)
        return [pump](const assessment::Assessment& now) { return assessment::workingOfLift(now, pump); };
    return [run = row.element, part](const assessment::Assessment& now) {
        auto working = assessment::workingOfRunLoss(now, run, assessment::RunningState::least);
        if (working)
            working->output = part == friction ? "friction_loss" : "fitting_loss";
        return working;
    };
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
                             : text::heading(text::whyMissing(results.headPaths->pumps.front().path)) + u'.';
        return model;
    }
    model.sentence = sentenceOf(results, *pump, display);
    model.working = [id = pump->id](const assessment::Assessment& now) {
        return assessment::workingOfDutyPoint(now, id, assessment::RunningState::least);
    };
    model.parts = {partName(lift), partName(friction), partName(fittings)};
    model.table = {{Words::tr("Where"), Words::tr("What"), Words::tr("Head")},
                   {QString(), QString(), QString::fromLatin1(unit)},
                   {}};
    const auto nameOf = [&](const Row& row) {
        if (!row.element.valid())
            return Words::tr("%1 other runs").arg(row.runs);
        const QString tag = QString::fromStdString(plan::tagOf(results.plan, row.element));
        return units::inSi(row.head[lift]) != 0.0 ? Words::tr("Lift to %1").arg(tag) : tag;
    };
    const auto eachPart = [](const Row& row, auto&& take) {
        for (int part = 0; part < partCount; ++part)
            if (units::inSi(row.head[part]) > 0.0)
                take(part);
    };
    const auto rows = rowsOf(*pump->path);
    for (const Row& row : rows)
        eachPart(row, [&](int part) {
            model.table.rows.push_back(
                {nameOf(row), partName(part), ChartTable::number(units::inUnit(row.head[part], unit))});
        });
    for (const Row& row : chartRowsOf(rows)) {
        const int index = static_cast<int>(model.rows.size());
        model.rows << nameOf(row);
        eachPart(row, [&](int part) {
            QString reading =
                Words::tr("%1 – %2: %3").arg(nameOf(row), partName(part), display.quantityText(row.head[part]));
            if (part == fittings)
                reading += Words::tr(" in %1").arg(
                    text::counted(row.fittingCount, Words::tr("fitting"), Words::tr("fittings")));
            model.segments.push_back({index, part, units::inUnit(row.head[part], unit), reading, row.element,
                                      workingOf(pump->id, row, part)});
        });
    }
    return model;
}

} // namespace sumpwright::ui::charts
