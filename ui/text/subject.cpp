#include "ui/text/subject.hpp"

#include <numeric>

#include <QCoreApplication>

#include "core/report/tag_spans.hpp"
#include "ui/text/names.hpp"

namespace sumpwright::ui::text
{

namespace
{
class Subjects
{
    Q_DECLARE_TR_FUNCTIONS(Subjects)
};

QString tagged(const QString& kind, const std::string& tag)
{
    return tag.empty()
               ? kind
               : Subjects::tr("%1 %2", "kind and tag, as in: grow bed B2").arg(kind, QString::fromStdString(tag));
}

QString ofOwner(const QString& part, const QString& owner)
{
    return Subjects::tr("%1 of %2", "part and owner, as in: inlet I1 of grow bed B2").arg(part, owner);
}

// The kind as finely as it is told apart on screen.
QString kindWord(const plan::Plan& plan, base::Id id)
{
    if (const auto* vessel = plan.vessels.find(id))
        return nameOf(vessel->kind);
    if (const auto* fixture = plan.fixtures.find(id))
        return nameOf(fixture->kind);
    if (const auto kind = plan::kindOf(plan, id))
        return nameOf(*kind);
    return {};
}

QString part(const plan::Plan& plan, base::Id id)
{
    for (const auto& vessel : plan.vessels)
        if (const auto* port = plan::findPort(*vessel, id))
            return ofOwner(portName(*vessel, *port), subject(plan, vessel->id));
    for (const auto& run : plan.runs)
        for (const auto& valve : run->valves)
            if (valve.id == id)
                return ofOwner(tagged(Subjects::tr("fitting"), valve.tag), subject(plan, run->id));
    return Subjects::tr("element");
}

// "3 grow beds": counted words of each kind, so that a language can bend them.
QString counted(const plan::Plan& plan, base::Id first, int count)
{
    if (const auto* vessel = plan.vessels.find(first)) {
        switch (vessel->kind) {
        case plan::VesselKind::fishTank:
            return Subjects::tr("%1 fish tanks").arg(count);
        case plan::VesselKind::sump:
            return Subjects::tr("%1 sumps").arg(count);
        case plan::VesselKind::mediaBed:
            return Subjects::tr("%1 grow beds").arg(count);
        case plan::VesselKind::raftBed:
            return Subjects::tr("%1 raft beds").arg(count);
        case plan::VesselKind::settler:
            return Subjects::tr("%1 settlers").arg(count);
        }
    }
    if (plan.runs.find(first))
        return Subjects::tr("%1 pipe runs").arg(count);
    return Subjects::tr("%1 elements").arg(count);
}
// The kind of several, as in "grow beds B1 to B6"; empty for what is not told by tags.
QString kindOfSeveral(const plan::Plan& plan, base::Id id)
{
    if (const auto* vessel = plan.vessels.find(id)) {
        switch (vessel->kind) {
        case plan::VesselKind::fishTank:
            return Subjects::tr("fish tanks");
        case plan::VesselKind::sump:
            return Subjects::tr("sumps");
        case plan::VesselKind::mediaBed:
            return Subjects::tr("grow beds");
        case plan::VesselKind::raftBed:
            return Subjects::tr("raft beds");
        case plan::VesselKind::settler:
            return Subjects::tr("settlers");
        }
    }
    if (plan.runs.find(id))
        return Subjects::tr("pipe runs");
    if (plan.pumps.find(id))
        return Subjects::tr("pumps");
    return plan.tees.find(id) ? Subjects::tr("tees") : QString();
}

// "a, b and c"; of many the first, and how many more.
QString joined(const QStringList& names, const QList<int>& counts)
{
    constexpr qsizetype most = 6;
    const qsizetype shown = names.size() > most + 1 ? most : names.size();
    QStringList list = names.mid(0, shown);
    const QString last = shown < names.size()
                             ? Subjects::tr("%1 more").arg(std::accumulate(counts.begin() + shown, counts.end(), 0))
                         : list.size() > 1 ? list.takeLast()
                                           : QString();
    const QString start = list.join(QStringLiteral(", "));
    return last.isEmpty() ? start : Subjects::tr("%1 and %2", "a list and its last").arg(start, last);
}
} // namespace

QString portKindName(plan::PortKind port, plan::VesselKind vessel)
{
    if (port != plan::PortKind::lip)
        return nameOf(port);
    const bool bed = vessel == plan::VesselKind::mediaBed || vessel == plan::VesselKind::raftBed;
    return bed ? Subjects::tr("standpipe") : Subjects::tr("overflow");
}

QString portName(const plan::Vessel& vessel, const plan::Port& port)
{
    return tagged(portKindName(port.kind, vessel.kind), port.tag);
}

QString subject(const plan::Plan& plan, base::Id id)
{
    const QString kind = kindWord(plan, id);
    return kind.isEmpty() ? part(plan, id) : tagged(kind, plan::tagOf(plan, id));
}

QString subjects(const plan::Plan& plan, const std::vector<base::Id>& ids)
{
    if (ids.empty())
        return Subjects::tr("the plan");
    if (ids.size() == 1)
        return subject(plan, ids.front());
    const auto count = static_cast<int>(ids.size());
    const QString kind = kindWord(plan, ids.front());
    for (const auto id : ids)
        if (kind.isEmpty() || kindWord(plan, id) != kind)
            return Subjects::tr("%1 elements").arg(count);
    return counted(plan, ids.front(), count);
}

QString allSubjects(const plan::Plan& plan, const std::vector<base::Id>& ids)
{
    QStringList names;
    QList<int> counts;
    const QString kind = ids.size() > 1 ? kindOfSeveral(plan, ids.front()) : QString();
    std::vector<std::string> tags;
    for (const base::Id id : ids)
        if (const std::string tag = plan::tagOf(plan, id); !tag.empty() && kindOfSeveral(plan, id) == kind)
            tags.push_back(tag);
    if (kind.isEmpty() || tags.size() < ids.size()) {
        for (const base::Id id : ids)
            names << subject(plan, id);
        return joined(names, QList<int>(names.size(), 1));
    }
    for (const report::TagSpan& span : report::spansOf(tags)) {
        const QString first = QString::fromStdString(span.first);
        names << (span.count > 1 ? Subjects::tr("%1 to %2", "first and last of a row of tags")
                                       .arg(first, QString::fromStdString(span.last))
                                 : first);
        counts << static_cast<int>(span.count);
    }
    return Subjects::tr("%1 %2", "kind and tags, as in: grow beds B1 to B6").arg(kind, joined(names, counts));
}

QString endName(const plan::Plan& plan, const plan::RunEnd& end)
{
    if (const auto* at = std::get_if<plan::PortEnd>(&end)) {
        const auto* vessel = plan.vessels.find(at->vessel);
        const auto* port = vessel ? plan::findPort(*vessel, at->port) : nullptr;
        if (port)
            return Subjects::tr("%1, %2", "vessel and its port")
                .arg(subject(plan, at->vessel), portName(*vessel, *port));
        return subject(plan, at->vessel);
    }
    if (const auto* at = std::get_if<plan::PumpEnd>(&end))
        return subject(plan, at->pump);
    if (const auto* at = std::get_if<plan::TeeEnd>(&end))
        return subject(plan, at->tee);
    return Subjects::tr("open end");
}

} // namespace sumpwright::ui::text
