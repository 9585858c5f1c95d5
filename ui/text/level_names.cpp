#include "ui/text/level_names.hpp"

#include <QCoreApplication>

#include "ui/text/subject.hpp"

namespace sumpwright::ui::text
{

namespace
{
class LevelNames
{
    Q_DECLARE_TR_FUNCTIONS(LevelNames)
};

QString portOf(const plan::Plan& plan, const plan::LevelRef& level)
{
    const plan::Vessel* vessel = plan.vessels.find(level.element);
    const plan::Port* port = vessel ? plan::findPort(*vessel, level.port) : nullptr;
    return port ? portName(*vessel, *port) : LevelNames::tr("port");
}
} // namespace

QString levelName(const plan::Plan& plan, const plan::LevelRef& level)
{
    using plan::LevelKind;
    switch (level.kind) {
    case LevelKind::base:
        return LevelNames::tr("base");
    case LevelKind::rim:
        return LevelNames::tr("rim");
    case LevelKind::running:
        return LevelNames::tr("running level");
    case LevelKind::lip:
    case LevelKind::inlet:
    case LevelKind::sideOutlet:
        return portOf(plan, level);
    case LevelKind::drain:
        return LevelNames::tr("drain level of %1").arg(portOf(plan, level));
    case LevelKind::vent:
        return LevelNames::tr("vent of %1").arg(portOf(plan, level));
    case LevelKind::pumpOutlet:
        return LevelNames::tr("outlet");
    case LevelKind::tee:
        return LevelNames::tr("level");
    case LevelKind::vertex:
        return LevelNames::tr("vertex %1").arg(static_cast<int>(level.vertex) + 1);
    }
    return {};
}

QString levelOfWhat(const plan::Plan& plan, const plan::LevelRef& level)
{
    return LevelNames::tr("%1 of %2", "a level and the element it belongs to")
        .arg(levelName(plan, level), subject(plan, level.element));
}

} // namespace sumpwright::ui::text
