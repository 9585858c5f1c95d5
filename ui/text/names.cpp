#include "ui/text/names.hpp"

#include <QCoreApplication>

namespace sumpwright::ui::text
{

namespace
{
class Names
{
    Q_DECLARE_TR_FUNCTIONS(Names)
};
} // namespace

QString nameOf(plan::ElementKind kind)
{
    switch (kind) {
    case plan::ElementKind::fixture:
        return Names::tr("fixture");
    case plan::ElementKind::vessel:
        return Names::tr("vessel");
    case plan::ElementKind::pump:
        return Names::tr("pump");
    case plan::ElementKind::tee:
        return Names::tr("tee");
    case plan::ElementKind::run:
        return Names::tr("pipe run");
    case plan::ElementKind::note:
        return Names::tr("note");
    case plan::ElementKind::dimension:
        return Names::tr("dimension line");
    }
    return {};
}

QString nameOf(plan::VesselKind kind)
{
    switch (kind) {
    case plan::VesselKind::fishTank:
        return Names::tr("fish tank");
    case plan::VesselKind::sump:
        return Names::tr("sump");
    case plan::VesselKind::mediaBed:
        return Names::tr("grow bed");
    case plan::VesselKind::raftBed:
        return Names::tr("raft bed");
    case plan::VesselKind::settler:
        return Names::tr("settler");
    }
    return {};
}

QString nameOf(plan::FixtureKind kind)
{
    switch (kind) {
    case plan::FixtureKind::wall:
        return Names::tr("wall");
    case plan::FixtureKind::door:
        return Names::tr("door");
    case plan::FixtureKind::post:
        return Names::tr("post");
    case plan::FixtureKind::powerPoint:
        return Names::tr("power point");
    }
    return {};
}

QString nameOf(plan::PortKind kind)
{
    switch (kind) {
    case plan::PortKind::inlet:
        return Names::tr("inlet");
    case plan::PortKind::lip:
        return Names::tr("overflow or standpipe");
    case plan::PortKind::sideOutlet:
        return Names::tr("side outlet");
    }
    return {};
}

QString nameOf(plan::StandKind kind)
{
    switch (kind) {
    case plan::StandKind::flat:
        return Names::tr("flat on the floor");
    case plan::StandKind::legs:
        return Names::tr("on legs");
    case plan::StandKind::blocks:
        return Names::tr("on blocks");
    }
    return {};
}

QString nameOf(plan::Service service)
{
    switch (service) {
    case plan::Service::pressure:
        return Names::tr("pressure run");
    case plan::Service::gravity:
        return Names::tr("gravity run");
    }
    return {};
}

QString nameOf(plan::PipeCondition condition)
{
    switch (condition) {
    case plan::PipeCondition::asNew:
        return Names::tr("new");
    case plan::PipeCondition::inService:
        return Names::tr("in service");
    case plan::PipeCondition::fouled:
        return Names::tr("fouled");
    }
    return {};
}

QString nameOf(plan::PumpArrangement arrangement)
{
    switch (arrangement) {
    case plan::PumpArrangement::one:
        return Names::tr("one");
    case plan::PumpArrangement::twoParallel:
        return Names::tr("two side by side");
    case plan::PumpArrangement::twoInSeries:
        return Names::tr("two in a row");
    }
    return {};
}

QString nameOf(plan::OwnFittingKind kind)
{
    switch (kind) {
    case plan::OwnFittingKind::fitting:
        return Names::tr("fitting");
    case plan::OwnFittingKind::ballValve:
        return Names::tr("ball valve");
    case plan::OwnFittingKind::gateValve:
        return Names::tr("gate valve");
    case plan::OwnFittingKind::butterflyValve:
        return Names::tr("butterfly valve");
    case plan::OwnFittingKind::globeValve:
        return Names::tr("globe valve");
    case plan::OwnFittingKind::nonReturnValve:
        return Names::tr("non-return valve");
    }
    return {};
}

QString partName(const std::string& name, catalogue::Basis basis)
{
    const QString words = QString::fromStdString(name);
    return basis == catalogue::Basis::Own ? Names::tr("%1 (own)").arg(words) : words;
}

QString nameOf(catalogue::Basis basis)
{
    switch (basis) {
    case catalogue::Basis::Seen:
        return Names::tr("published, read in the source");
    case catalogue::Basis::Memory:
        return Names::tr("published, from memory");
    case catalogue::Basis::Computed:
        return Names::tr("computed");
    case catalogue::Basis::Inference:
        return Names::tr("invented, typical shape");
    case catalogue::Basis::Own:
        return Names::tr("own part");
    case catalogue::Basis::CommonPractice:
        return Names::tr("common practice, no source");
    }
    return {};
}

QString groupName(plan::ElementKind kind)
{
    switch (kind) {
    case plan::ElementKind::fixture:
        return Names::tr("Fixtures");
    case plan::ElementKind::vessel:
        return Names::tr("Vessels");
    case plan::ElementKind::pump:
        return Names::tr("Pumps");
    case plan::ElementKind::tee:
        return Names::tr("Tees");
    case plan::ElementKind::run:
        return Names::tr("Pipe runs");
    case plan::ElementKind::note:
        return Names::tr("Notes");
    case plan::ElementKind::dimension:
        return Names::tr("Dimension lines");
    }
    return {};
}

QString groupName(plan::VesselKind kind)
{
    switch (kind) {
    case plan::VesselKind::fishTank:
        return Names::tr("Fish tanks");
    case plan::VesselKind::sump:
        return Names::tr("Sumps");
    case plan::VesselKind::mediaBed:
        return Names::tr("Grow beds");
    case plan::VesselKind::raftBed:
        return Names::tr("Raft beds");
    case plan::VesselKind::settler:
        return Names::tr("Settlers");
    }
    return {};
}

QString groupName(plan::FixtureKind kind)
{
    switch (kind) {
    case plan::FixtureKind::wall:
        return Names::tr("Walls");
    case plan::FixtureKind::door:
        return Names::tr("Doors");
    case plan::FixtureKind::post:
        return Names::tr("Posts");
    case plan::FixtureKind::powerPoint:
        return Names::tr("Power points");
    }
    return {};
}

QString heading(QString words)
{
    if (!words.isEmpty())
        words[0] = words[0].toUpper();
    return words;
}

} // namespace sumpwright::ui::text
