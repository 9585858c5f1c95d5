#include "ui/text/result_names.hpp"

#include <QCoreApplication>

namespace sumpwright::ui::text
{

namespace
{
class Results
{
    Q_DECLARE_TR_FUNCTIONS(Results)
};
} // namespace

QString nameOf(assessment::WaterState state)
{
    switch (state) {
    case assessment::WaterState::runningLeast:
        return Results::tr("running, beds flooded (least flow)");
    case assessment::WaterState::runningMost:
        return Results::tr("running, beds drained (most flow)");
    case assessment::WaterState::pumpStopped:
        return Results::tr("pump stopped");
    case assessment::WaterState::toRim:
        return Results::tr("every vessel to its rim");
    }
    return {};
}

QString nameOf(assessment::RunningState state)
{
    switch (state) {
    case assessment::RunningState::least:
        return Results::tr("least flow");
    case assessment::RunningState::most:
        return Results::tr("most flow");
    }
    return {};
}

QString nameOf(assessment::YearEnd end)
{
    switch (end) {
    case assessment::YearEnd::fouledCold:
        return Results::tr("fouled, coldest water");
    case assessment::YearEnd::newWarm:
        return Results::tr("new, warmest water");
    }
    return {};
}

QString nameOf(assessment::LoadCase loadCase)
{
    switch (loadCase) {
    case assessment::LoadCase::bedsFlooded:
        return Results::tr("all beds flooded");
    case assessment::LoadCase::toRim:
        return Results::tr("every vessel to its rim");
    }
    return {};
}

QString nameOf(assessment::HeldBy heldBy)
{
    switch (heldBy) {
    case assessment::HeldBy::lip:
        return Results::tr("held by its lip");
    case assessment::HeldBy::sideOutlet:
        return Results::tr("held by its side outlet");
    case assessment::HeldBy::drainLevel:
        return Results::tr("drained by its siphon");
    case assessment::HeldBy::entry:
        return Results::tr("as entered");
    case assessment::HeldBy::balance:
        return Results::tr("what the other vessels leave");
    case assessment::HeldBy::siphonBack:
        return Results::tr("emptied back through an inlet");
    case assessment::HeldBy::rim:
        return Results::tr("at the rim");
    }
    return {};
}

QString nameOf(assessment::Trust trust)
{
    switch (trust) {
    case assessment::Trust::measured:
        return Results::tr("measured");
    case assessment::Trust::catalogue:
        return Results::tr("from the catalogue");
    case assessment::Trust::assumed:
        return Results::tr("assumed");
    }
    return {};
}

QString nameOf(assessment::FlowRegime regime)
{
    switch (regime) {
    case assessment::FlowRegime::still:
        return Results::tr("still");
    case assessment::FlowRegime::laminar:
        return Results::tr("laminar");
    case assessment::FlowRegime::transition:
        return Results::tr("between laminar and turbulent");
    case assessment::FlowRegime::turbulent:
        return Results::tr("turbulent");
    }
    return {};
}

QString nameOf(assessment::FittingRole role)
{
    switch (role) {
    case assessment::FittingRole::entry:
        return Results::tr("entry");
    case assessment::FittingRole::exit:
        return Results::tr("exit");
    case assessment::FittingRole::bend:
        return Results::tr("bend");
    case assessment::FittingRole::teeRun:
        return Results::tr("tee, straight through");
    case assessment::FittingRole::teeBranch:
        return Results::tr("tee, branch");
    case assessment::FittingRole::boreChange:
        return Results::tr("change of bore");
    case assessment::FittingRole::valve:
        return Results::tr("valve");
    case assessment::FittingRole::extra:
        return Results::tr("fitting");
    }
    return {};
}

QString nameOf(assessment::LossBasis basis)
{
    switch (basis) {
    case assessment::LossBasis::catalogue:
        return Results::tr("from the catalogue");
    case assessment::LossBasis::formula:
        return Results::tr("by formula");
    case assessment::LossBasis::overridden:
        return Results::tr("entered by hand");
    case assessment::LossBasis::none:
        return Results::tr("no loss counted");
    }
    return {};
}

QString nameOf(assessment::Severity severity)
{
    switch (severity) {
    case assessment::Severity::error:
        return Results::tr("Error");
    case assessment::Severity::warning:
        return Results::tr("Warning");
    case assessment::Severity::note:
        return Results::tr("Note");
    }
    return {};
}

QString whyMissing(assessment::Status status, const assessment::Reason& reason)
{
    const QString why = QCoreApplication::translate("Reasons", reason.text.c_str());
    switch (status) {
    case assessment::Status::solved:
        return {};
    case assessment::Status::notComputed:
        return Results::tr("not computed: %1").arg(why);
    case assessment::Status::notSolved:
        return Results::tr("not solved: %1").arg(why);
    }
    return {};
}

QString sourceTitle(const catalogue::Catalogue& catalogue, const std::string& key)
{
    if (key.empty())
        return {};
    if (key == "common-practice")
        return Results::tr("common practice, no source");
    const auto source = catalogue.source(key);
    if (!source)
        return QString::fromStdString(key);
    const QString title = QString::fromStdString((*source)->title);
    return (*source)->basis == catalogue::Basis::Memory ? Results::tr("%1 (from memory)").arg(title) : title;
}

} // namespace sumpwright::ui::text
