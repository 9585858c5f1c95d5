#include "ui/parts/own_part_rows.hpp"

#include <algorithm>

#include "core/plan/edits/own_parts.hpp"
#include "core/worksheets/pump_points.hpp"
#include "ui/properties/enum_choice.hpp"
#include "ui/text/names.hpp"

namespace sumpwright::ui::parts
{

namespace
{

const std::vector<plan::OwnPipe>& listOf(const plan::OwnParts& parts, const plan::OwnPipe*) { return parts.pipes; }
const std::vector<plan::OwnFitting>& listOf(const plan::OwnParts& parts, const plan::OwnFitting*)
{
    return parts.fittings;
}
const std::vector<plan::OwnPump>& listOf(const plan::OwnParts& parts, const plan::OwnPump*) { return parts.pumps; }

template <class Part> const Part* find(const plan::OwnParts& parts, const std::string& id)
{
    const auto& list = listOf(parts, static_cast<const Part*>(nullptr));
    const auto at = std::find_if(list.begin(), list.end(), [&](const Part& part) { return part.id == id; });
    return at == list.end() ? nullptr : &*at;
}

// One change to the part as it is now.
template <class Part, class How> std::optional<base::Refusal> change(OwnPartForm& form, How how)
{
    const Part* now = find<Part>(form.parts(), form.id());
    if (!now)
        return std::nullopt;
    Part changed = *now;
    how(changed);
    return form.commit(plan::putOwnPart(std::move(changed)));
}

template <class Part, class Of> OwnPartForm::Shown shown(OwnPartForm& form, Of of)
{
    return [&form, of] {
        const Part* now = find<Part>(form.parts(), form.id());
        return now ? of(*now) : QString();
    };
}

template <class Part> void addTextRow(OwnPartForm& form, const QString& label, std::string Part::*which)
{
    form.addEntry(
        label,
        [&form, which](const QString& typed) {
            return change<Part>(form, [&](Part& part) { part.*which = typed.trimmed().toStdString(); });
        },
        shown<Part>(form, [which](const Part& part) { return QString::fromStdString(part.*which); }));
}

template <class Part> void addIdentityRows(OwnPartForm& form)
{
    addTextRow<Part>(form, OwnPartForm::tr("Name"), &Part::name);
    addTextRow<Part>(form, OwnPartForm::tr("Numbers from"), &Part::origin);
}

template <class Part, class Kind>
void addQuantityRow(OwnPartForm& form, const QString& label, Kind Part::*which, text::EntryUnit unit = {})
{
    form.addEntry(
        label,
        [&form, which, unit](const QString& typed) -> std::optional<base::Refusal> {
            const auto value = form.display().read<Kind>(typed, unit);
            return value ? change<Part>(form, [&](Part& part) { part.*which = *value; }) : value.refusal();
        },
        shown<Part>(form,
                    [&form, which, unit](const Part& part) { return form.display().entryText(part.*which, unit); }));
}

template <class Part, class Kind, class How>
void addOptionalRow(OwnPartForm& form, const QString& label, std::optional<Kind> Part::*which,
                    const QString& emptyWords, How how, text::EntryUnit unit = {})
{
    form.addEntry(
        label,
        [&form, which, unit, how](const QString& typed) -> std::optional<base::Refusal> {
            std::optional<Kind> value;
            if (!typed.trimmed().isEmpty()) {
                const auto read = form.display().read<Kind>(typed, unit);
                if (!read)
                    return read.refusal();
                value = *read;
            }
            return change<Part>(form, [&](Part& part) { part.*which = value, how(part); });
        },
        shown<Part>(form,
                    [&form, which, unit](const Part& part) {
                        return part.*which ? form.display().entryText(*(part.*which), unit) : QString();
                    }),
        emptyWords);
}

template <class Part, class How>
void addOptionalRatioRow(OwnPartForm& form, const QString& label, std::optional<double> Part::*which,
                         const QString& emptyWords, How how)
{
    form.addEntry(
        label,
        [&form, which, how](const QString& typed) -> std::optional<base::Refusal> {
            std::optional<double> value;
            if (!typed.trimmed().isEmpty()) {
                const auto read = form.display().readRatio(typed);
                if (!read)
                    return read.refusal();
                value = *read;
            }
            return change<Part>(form, [&](Part& part) { part.*which = value, how(part); });
        },
        shown<Part>(form,
                    [&form, which](const Part& part) {
                        return part.*which ? form.display().ratioEntryText(*(part.*which)) : QString();
                    }),
        emptyWords);
}

constexpr auto nothing = [](auto&) {};

QString pointsText(const text::DisplaySettings& display, const std::vector<plan::CurvePoint>& curve)
{
    QStringList points;
    for (const plan::CurvePoint& point : curve)
        points << QStringLiteral("%1: %2").arg(display.entryText(point.flow), display.entryText(point.head));
    return points.join(QStringLiteral("; "));
}

void addPointsRow(OwnPartForm& form)
{
    form.addEntry(
        OwnPartForm::tr("Points of the curve"),
        [&form](const QString& typed) -> std::optional<base::Refusal> {
            const auto points = sumpwright::worksheets::readPumpPoints(typed.toStdString(), form.display().numbers);
            if (!points)
                return points.refusal();
            return change<plan::OwnPump>(form, [&](plan::OwnPump& pump) {
                pump.curve.clear();
                for (const auto& point : *points)
                    pump.curve.push_back({point.flow, point.head});
            });
        },
        shown<plan::OwnPump>(form,
                             [&form](const plan::OwnPump& pump) { return pointsText(form.display(), pump.curve); }));
}

void addBoxRows(OwnPartForm& form)
{
    form.addEntry(
        OwnPartForm::tr("Head at no flow"),
        [&form](const QString& typed) -> std::optional<base::Refusal> {
            const auto head = form.display().read<units::Head>(typed);
            return head ? change<plan::OwnPump>(form, [&](plan::OwnPump& pump) { pump.curve.front().head = *head; })
                        : head.refusal();
        },
        shown<plan::OwnPump>(
            form, [&form](const plan::OwnPump& pump) { return form.display().entryText(pump.curve.front().head); }));
    form.addEntry(
        OwnPartForm::tr("Flow at no head"),
        [&form](const QString& typed) -> std::optional<base::Refusal> {
            const auto flow = form.display().read<units::Flow>(typed);
            return flow ? change<plan::OwnPump>(form, [&](plan::OwnPump& pump) { pump.curve.back().flow = *flow; })
                        : flow.refusal();
        },
        shown<plan::OwnPump>(
            form, [&form](const plan::OwnPump& pump) { return form.display().entryText(pump.curve.back().flow); }));
}

} // namespace

void addPipeRows(OwnPartForm& form)
{
    addIdentityRows<plan::OwnPipe>(form);
    addQuantityRow(form, OwnPartForm::tr("Outside diameter"), &plan::OwnPipe::outsideDiameter, text::inSmallSizes);
    addQuantityRow(form, OwnPartForm::tr("Bore"), &plan::OwnPipe::bore, text::inSmallSizes);
    addQuantityRow(form, OwnPartForm::tr("Roughness"), &plan::OwnPipe::roughness, text::inSmallSizes);
    addOptionalRatioRow(form, OwnPartForm::tr("Friction factor, corrugated"), &plan::OwnPipe::corrugatedFactor,
                        OwnPartForm::tr("smooth inside"), nothing);
    form.addChoice(
        OwnPartForm::tr("Pressure"),
        {{"holds", OwnPartForm::tr("holds pressure"), {}}, {"none", OwnPartForm::tr("gravity runs only"), {}}},
        [&form](const std::string& key) {
            return change<plan::OwnPipe>(form, [&](plan::OwnPipe& pipe) { pipe.gravityOnly = key == "none"; });
        },
        [&form]() -> std::string {
            const auto* pipe = find<plan::OwnPipe>(form.parts(), form.id());
            return pipe && pipe->gravityOnly ? "none" : "holds";
        });
}

void addFittingRows(OwnPartForm& form)
{
    using Kind = plan::OwnFittingKind;
    addIdentityRows<plan::OwnFitting>(form);
    form.addChoice(
        OwnPartForm::tr("Kind"),
        properties::choicesOf({Kind::fitting, Kind::ballValve, Kind::gateValve, Kind::butterflyValve, Kind::globeValve,
                               Kind::nonReturnValve}),
        [&form](const std::string& key) {
            return change<plan::OwnFitting>(form, [&](plan::OwnFitting& fitting) {
                fitting.kind = properties::enumOf<Kind>(key);
                if (fitting.kind != Kind::nonReturnValve)
                    fitting.cracking.reset();
            });
        },
        [&form] {
            const auto* fitting = find<plan::OwnFitting>(form.parts(), form.id());
            return fitting ? properties::keyOf(fitting->kind) : std::string();
        });
    addOptionalRatioRow(form, OwnPartForm::tr("K, fully open"), &plan::OwnFitting::k, OwnPartForm::tr("by Kv"),
                        [](plan::OwnFitting& fitting) {
                            if (fitting.k)
                                fitting.flowFactor.reset();
                        });
    addOptionalRow(form, OwnPartForm::tr("Kv, flow at 1 bar"), &plan::OwnFitting::flowFactor, OwnPartForm::tr("by K"),
                   [](plan::OwnFitting& fitting) {
                       if (fitting.flowFactor)
                           fitting.k.reset();
                   });
    const auto* fitting = find<plan::OwnFitting>(form.parts(), form.id());
    if (fitting && fitting->kind == Kind::nonReturnValve)
        addOptionalRow(form, OwnPartForm::tr("Head that opens it"), &plan::OwnFitting::cracking,
                       OwnPartForm::tr("none"), nothing);
}

void addPumpRows(OwnPartForm& form)
{
    addIdentityRows<plan::OwnPump>(form);
    form.addChoice(
        OwnPartForm::tr("Curve"),
        {{"points", OwnPartForm::tr("by points"), {}}, {"box", OwnPartForm::tr("two numbers of its box"), {}}},
        [&form](const std::string& key) {
            return change<plan::OwnPump>(form, [&](plan::OwnPump& pump) {
                pump.twoNumbers = key == "box";
                if (pump.twoNumbers)
                    pump.curve = {{units::Flow(), pump.curve.front().head}, {pump.curve.back().flow, units::Head()}};
            });
        },
        [&form]() -> std::string {
            const auto* pump = find<plan::OwnPump>(form.parts(), form.id());
            return pump && pump->twoNumbers ? "box" : "points";
        });
    const auto* pump = find<plan::OwnPump>(form.parts(), form.id());
    if (pump && pump->twoNumbers)
        addBoxRows(form);
    else
        addPointsRow(form);
    addOptionalRow(form, OwnPartForm::tr("Electrical input"), &plan::OwnPump::power, OwnPartForm::tr("not given"),
                   nothing);
    addOptionalRow(form, OwnPartForm::tr("Least depth of water"), &plan::OwnPump::leastDepth,
                   OwnPartForm::tr("not given"), nothing, text::inSmallSizes);
}

std::string shapeOf(const plan::OwnParts& parts, const std::string& id)
{
    if (find<plan::OwnPipe>(parts, id))
        return "pipe";
    if (const auto* fitting = find<plan::OwnFitting>(parts, id))
        return fitting->kind == plan::OwnFittingKind::nonReturnValve ? "non-return-valve" : "fitting";
    if (const auto* pump = find<plan::OwnPump>(parts, id))
        return pump->twoNumbers ? "pump-box" : "pump";
    return {};
}

} // namespace sumpwright::ui::parts
