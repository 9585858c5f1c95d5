#include "ui/text/design_words.hpp"

#include <QCoreApplication>

#include "ui/text/names.hpp"
#include "ui/text/subject.hpp"

namespace sumpwright::ui::text
{

namespace
{

class DesignWords
{
    Q_DECLARE_TR_FUNCTIONS(DesignWords)
};

QString degrees(double opening, const DisplaySettings& display)
{
    return display.ratioText(units::inDegrees(sumpwright::design::handleFromOpen(opening)), 2);
}

QString outletName(const sumpwright::design::Outlet& outlet, const plan::Plan& plan)
{
    return subject(plan, outlet.port.vessel);
}

} // namespace

QString moneyText(units::Money amount, const std::string& currency, const DisplaySettings& display)
{
    units::Look look;
    look.currency = currency;
    return display.quantityText(amount, look);
}

QString sumText(units::Money amount, const std::string& currency, const DisplaySettings& display)
{
    return DesignWords::tr("%1 %2", "amount, currency")
        .arg(display.ratioText(units::inCurrency(amount), 4), QString::fromStdString(currency));
}

QString aimName(sumpwright::design::Aim aim)
{
    switch (aim) {
    case sumpwright::design::Aim::target:
        return DesignWords::tr("gets its target");
    case sumpwright::design::Aim::share:
        return DesignWords::tr("gets its share");
    case sumpwright::design::Aim::rest:
        return DesignWords::tr("takes the rest");
    case sumpwright::design::Aim::shut:
        return DesignWords::tr("shut");
    case sumpwright::design::Aim::noValve:
        return DesignWords::tr("lacks a valve");
    case sumpwright::design::Aim::unreachable:
        return DesignWords::tr("out of reach");
    case sumpwright::design::Aim::leftAlone:
        return DesignWords::tr("left as drawn");
    }
    return {};
}

QString valveName(const plan::ValveRef& valve, const plan::Plan& plan)
{
    const plan::Run* run = plan.runs.find(valve.run);
    QString tag;
    for (const plan::Valve& each : run ? run->valves : std::vector<plan::Valve>())
        if (each.id == valve.valve)
            tag = QString::fromStdString(each.tag);
    return DesignWords::tr("%1 on %2", "valve, pipe run").arg(tag, run ? QString::fromStdString(run->tag) : QString());
}

QString handleText(const sumpwright::design::ValveOpening& valve, double gateTurns, const DisplaySettings& display)
{
    if (valve.after <= 0.0)
        return DesignWords::tr("shut");
    if (valve.after >= 1.0)
        return DesignWords::tr("open");
    if (valve.kind == hydraulics::ThrottleKind::Gate)
        return DesignWords::tr("%1 of %2 turns shut")
            .arg(display.ratioText((1.0 - valve.after) * gateTurns, 2), display.ratioText(gateTurns, 2));
    return DesignWords::tr("%1° towards shut").arg(degrees(valve.after, display));
}

QString handleBandText(const sumpwright::design::ValveOpening& valve, const DisplaySettings& display)
{
    if (valve.leastAfter == valve.mostAfter)
        return {};
    return DesignWords::tr("%1° to %2°").arg(degrees(valve.mostAfter, display), degrees(valve.leastAfter, display));
}

QString reasonOf(const sumpwright::design::ValveSetting& setting, bool speedTaken, const DisplaySettings& display)
{
    if (setting.share < 1.0)
        return DesignWords::tr("The pump cannot give all targets: they ask for %1, and %2 of head is missing at the "
                               "neediest outlet. Scaled alike, each outlet can have %3 of its target.")
            .arg(display.quantityText(setting.asked), display.quantityText(setting.missing),
                 display.percentText(setting.share));
    if (setting.restShare < 1.0)
        return DesignWords::tr("Each outlet gets its target once the outlets without one are held back to %1 of what "
                               "they would take.")
            .arg(display.percentText(setting.restShare));
    if (setting.speed && speedTaken)
        return DesignWords::tr("At %1 of the curve's speed each outlet gets its target, and the way to the neediest "
                               "stays open.")
            .arg(display.percentText(setting.speed->after));
    return DesignWords::tr("Each outlet gets its target with the least throttling: what head is to spare is burned in "
                           "the valve on its way.");
}

QStringList remarksOn(const sumpwright::design::ValveSetting& setting, const plan::Plan& plan, bool speedTaken,
                      const DisplaySettings& display)
{
    QStringList remarks;
    bool bands = false;
    for (const sumpwright::design::OutletSetting& outlet : setting.outlets) {
        const QString name = heading(outletName(outlet.outlet, plan));
        if (outlet.aim == sumpwright::design::Aim::noValve)
            remarks << DesignWords::tr("%1 takes more than its target: no valve on its way can burn %2. Put a ball or "
                                       "gate valve on %3.")
                           .arg(name, display.quantityText(outlet.spare), subject(plan, outlet.outlet.run));
        if (outlet.aim == sumpwright::design::Aim::unreachable)
            remarks << DesignWords::tr("No water comes to %1 at any flow: it lies too high, or its way is shut.")
                           .arg(outletName(outlet.outlet, plan));
        const auto after = outlet.after[setting.state];
        if (outlet.aim == sumpwright::design::Aim::rest && after && *after <= units::litresPerHour(1.0))
            remarks << DesignWords::tr("Nothing is left for %1, which has no target. Fish need water: give it one.")
                           .arg(outletName(outlet.outlet, plan));
    }
    for (const sumpwright::design::ValveOpening& valve : setting.valves)
        bands = bands || valve.leastAfter != valve.mostAfter;
    if (setting.speed && !speedTaken)
        remarks << DesignWords::tr("At %1 of the curve's speed pump %2 would give all targets with less throttling.")
                       .arg(display.percentText(setting.speed->after),
                            QString::fromStdString(plan::tagOf(plan, setting.speed->pump)));
    if (bands)
        remarks << DesignWords::tr("Plastic ball valves differ by 30 % from the table either way: start at the angle, "
                                   "then measure with bucket and watch.");
    return remarks;
}

QString pumpName(const sumpwright::design::PumpChoice& choice, const plan::Plan& plan)
{
    const QString name =
        choice.owner.valid()
            ? DesignWords::tr("own curve of %1").arg(QString::fromStdString(plan::tagOf(plan, choice.owner)))
            : QString::fromStdString(choice.modelId);
    return choice.present ? DesignWords::tr("%1 (now)").arg(name) : name;
}

QString verdictOn(const sumpwright::design::PumpChoice& choice, const DisplaySettings& display)
{
    switch (choice.verdict) {
    case sumpwright::design::PumpVerdict::does:
        return DesignWords::tr("does it");
    case sumpwright::design::PumpVerdict::lowOnCurve:
        return DesignWords::tr("does it, near shut-off");
    case sumpwright::design::PumpVerdict::beyondCurve:
        return DesignWords::tr("does it, beyond its curve");
    case sumpwright::design::PumpVerdict::uncovered:
        return DesignWords::tr("needs %1 of water, has %2")
            .arg(display.quantityText(choice.neededDepth, {"mm"}), display.quantityText(choice.depth, {"mm"}));
    case sumpwright::design::PumpVerdict::tooWeak:
        return choice.missingHead > units::Head()
                   ? DesignWords::tr("short of %1 and %2")
                         .arg(display.quantityText(choice.missingFlow), display.quantityText(choice.missingHead))
                   : DesignWords::tr("short of %1").arg(display.quantityText(choice.missingFlow));
    case sumpwright::design::PumpVerdict::faulty:
        return DesignWords::tr("has no curve that can be used");
    }
    return {};
}

QString reasonOf(const sumpwright::design::PumpRanking& ranking, const sumpwright::design::PumpChoice& choice,
                 const plan::Plan& plan, const DisplaySettings& display)
{
    if (choice.verdict == sumpwright::design::PumpVerdict::faulty)
        return DesignWords::tr("%1 has no curve that can be used.").arg(heading(pumpName(choice, plan)));
    const QString duty =
        DesignWords::tr("%1 at %2").arg(display.quantityText(choice.flow), display.quantityText(choice.head));
    const QString place = DesignWords::tr("%1 of the flow at no head, %2 below shut-off, %3 to run-out")
                              .arg(display.percentText(choice.shareOfBoxFigure, 2),
                                   display.quantityText(choice.toShutOff), display.quantityText(choice.toRunOut));
    QString words = DesignWords::tr("%1 gives %2 (%3). %4 wanted: %5.")
                        .arg(heading(pumpName(choice, plan)), duty, place, display.quantityText(ranking.wanted),
                             verdictOn(choice, display));
    if (choice.depth && choice.neededDepth && choice.verdict != sumpwright::design::PumpVerdict::uncovered)
        words += u' ' +
                 DesignWords::tr("Water over the sump's bottom %1, needed %2.")
                     .arg(display.quantityText(choice.depth, {"mm"}), display.quantityText(choice.neededDepth, {"mm"}));
    return words;
}

QString nameOf(sumpwright::design::PipePart part)
{
    switch (part) {
    case sumpwright::design::PipePart::riser:
        return DesignWords::tr("riser");
    case sumpwright::design::PipePart::header:
        return DesignWords::tr("header");
    case sumpwright::design::PipePart::branch:
        return DesignWords::tr("branches");
    case sumpwright::design::PipePart::all:
        return DesignWords::tr("all pressure runs");
    }
    return {};
}

QString pipeName(const catalogue::Catalogue& catalogue, const std::string& id)
{
    const auto pipe = catalogue.pipe(id);
    return QString::fromStdString(pipe ? (*pipe)->name : id);
}

QString reasonOf(const sumpwright::design::PipeSizing& sizing, const sumpwright::design::PipeChoice& choice,
                 sumpwright::design::Kept kept, const std::string& currency, const DisplaySettings& display)
{
    const QString total = sumText(choice.total(), currency, display);
    const QString now = sumText(sizing.now.total(), currency, display);
    if (choice.pipes == sizing.now.pipes)
        return DesignWords::tr("The pipes as they are cost %1 with the power over these years.").arg(total);
    if (kept == sumpwright::design::Kept::pump)
        return DesignWords::tr("These pipes cost %1 with the power over these years, those of now %2; the pump then "
                               "gives %3 in place of %4.")
            .arg(total, now, display.quantityText(choice.flow), display.quantityText(sizing.now.flow));
    return DesignWords::tr("These pipes cost %1 with the power over these years, those of now %2; the same flow asks "
                           "for %3 of head in place of %4.")
        .arg(total, now, display.quantityText(choice.head), display.quantityText(sizing.now.head));
}

QStringList remarksOn(const sumpwright::design::PipeSizing& sizing, sumpwright::design::Kept kept,
                      const DisplaySettings& display)
{
    QStringList remarks;
    remarks
        << (sizing.exact
                ? DesignWords::tr("Best of all %1 combinations of the sizes their standard offers.").arg(sizing.tried)
                : DesignWords::tr("Too many combinations to try each: found by stepping to the best neighbour from "
                                  "three starts (%1 tried).")
                      .arg(sizing.tried));
    if (kept == sumpwright::design::Kept::flow)
        remarks << DesignWords::tr(
                       "Counted with a pump that gives just that head at %1 wire-to-water, every valve on the "
                       "neediest way open: choose the pump and set the valves next.")
                       .arg(display.percentText(sizing.wireToWater, 2));
    if (!sizing.assumed.empty())
        remarks << DesignWords::tr("Prices of pipe nobody typed are assumed, an invented typical curve: an estimate. "
                                   "Fittings are not counted.");
    constexpr units::Velocity settling = units::metresPerSecond(0.3);
    if (sizing.best.slowest < settling)
        remarks << DesignWords::tr("In the slowest run the water goes %1: below %2 solids may settle.")
                       .arg(display.quantityText(sizing.best.slowest), display.quantityText(settling));
    return remarks;
}

} // namespace sumpwright::ui::text
