#include "ui/outline/outline_facts.hpp"

#include <QCoreApplication>

#include "ui/text/names.hpp"
#include "ui/text/subject.hpp"

namespace sumpwright::ui::outline
{

namespace
{
class Facts
{
    Q_DECLARE_TR_FUNCTIONS(OutlineFacts)
};

QString size(const text::DisplaySettings& display, units::Length length)
{
    units::Look look;
    look.withoutTrailingZeros = true;
    return display.quantityText(length, look);
}

QString vesselFacts(const plan::Vessel& vessel, const text::DisplaySettings& display)
{
    if (const auto* round = std::get_if<plan::RoundShape>(&vessel.shape))
        return Facts::tr("round %1, %2 high").arg(size(display, round->diameter), size(display, vessel.wallHeight));
    const auto frame = plan::frameOf(vessel.shape);
    return Facts::tr("%1 by %2, %3 high")
        .arg(size(display, frame.length), size(display, frame.width), size(display, vessel.wallHeight));
}

QString runFacts(const plan::Plan& plan, const plan::Run& run, const catalogue::Catalogue& catalogue,
                 const text::DisplaySettings& display)
{
    const auto pipe = catalogue.pipe(run.pipeId);
    const QString name = QString::fromStdString(pipe ? (*pipe)->name : run.pipeId);
    return Facts::tr("%1 of %2, %3 to %4", "length, pipe, from, to")
        .arg(display.quantityText(plan::lengthOf(run)), name, text::endName(plan, run.from),
             text::endName(plan, run.to));
}

QString pumpFacts(const plan::Plan& plan, const plan::Pump& pump, const catalogue::Catalogue& catalogue)
{
    const auto model = catalogue.pump(pump.modelId);
    const QString name =
        pump.modelId.empty() ? Facts::tr("own curve") : QString::fromStdString(model ? (*model)->name : pump.modelId);
    const QString place = Facts::tr("%1, in %2", "pump, vessel").arg(name, text::subject(plan, pump.vessel));
    return pump.running ? place : Facts::tr("%1, stopped").arg(place);
}
} // namespace

QString factsOf(const plan::Plan& plan, base::Id id, const catalogue::Catalogue& catalogue,
                const text::DisplaySettings& display)
{
    if (const auto* vessel = plan.vessels.find(id))
        return vesselFacts(*vessel, display);
    if (const auto* run = plan.runs.find(id))
        return runFacts(plan, *run, catalogue, display);
    if (const auto* pump = plan.pumps.find(id))
        return pumpFacts(plan, *pump, catalogue);
    if (const auto* tee = plan.tees.find(id))
        return Facts::tr("level %1").arg(display.quantityText(tee->level));
    if (const auto* fixture = plan.fixtures.find(id)) {
        const bool twoEnds = fixture->kind == plan::FixtureKind::wall || fixture->kind == plan::FixtureKind::door;
        return twoEnds ? Facts::tr("%1 long").arg(size(display, plan::distanceBetween(fixture->from, fixture->to)))
                       : Facts::tr("at %1, %2").arg(size(display, fixture->from.x), size(display, fixture->from.y));
    }
    if (const auto* note = plan.notes.find(id))
        return Facts::tr("at %1, %2").arg(size(display, note->at.x), size(display, note->at.y));
    return {};
}

QString titleOf(const plan::Plan& plan, base::Id id, const text::DisplaySettings& display)
{
    if (const auto* note = plan.notes.find(id))
        return QString::fromStdString(note->text).simplified();
    if (const auto* line = plan.dimensions.find(id))
        return size(display, plan::distanceBetween(line->from, line->to));
    const QString tag = QString::fromStdString(plan::tagOf(plan, id));
    return tag.isEmpty() ? text::subject(plan, id) : tag;
}

} // namespace sumpwright::ui::outline
