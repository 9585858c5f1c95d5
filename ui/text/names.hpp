// Names: what the things of a plan are called on screen. Lower case as inside a sentence; heading() makes a heading.
#pragma once

#include <QString>

#include "core/catalogue/provenance.hpp"
#include "core/plan/plan.hpp"

namespace sumpwright::ui::text
{

QString nameOf(plan::ElementKind kind);
QString nameOf(plan::VesselKind kind);
QString nameOf(plan::FixtureKind kind);
QString nameOf(plan::PortKind kind);
QString nameOf(plan::StandKind kind);
QString nameOf(plan::Service service);
QString nameOf(plan::PipeCondition condition);
QString nameOf(catalogue::Basis basis);
QString nameOf(plan::PumpArrangement arrangement);
QString nameOf(plan::OwnFittingKind kind);
// Of a row of the catalogue in a list; an own part is marked as such.
QString partName(const std::string& name, catalogue::Basis basis);

// The heading over a group of them in a list: "Fish tanks", "Pipe runs".
QString groupName(plan::ElementKind kind);
QString groupName(plan::VesselKind kind);
QString groupName(plan::FixtureKind kind);

QString heading(QString words); // first letter in upper case

} // namespace sumpwright::ui::text
