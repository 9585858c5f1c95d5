// Subjects: how a sentence names the elements of a plan: "grow bed B2", "3 grow beds", "sump S1, standpipe O1".
#pragma once

#include <vector>

#include <QString>

#include "core/plan/plan.hpp"

namespace sumpwright::ui::text
{

// "grow bed B2", "pipe run P7", "note". A port, vertex fitting or valve is named by itself and its owner. An id the
// plan does not know: "element".
QString subject(const plan::Plan& plan, base::Id id);
// "grow bed B2", "3 grow beds", "5 elements"; nothing: "the plan".
QString subjects(const plan::Plan& plan, const std::vector<base::Id>& ids);
// Each by name: "grow beds B1 to B6", "pipe runs P1, P4 and P7", "fish tank FT1 and pipe run P3".
QString allSubjects(const plan::Plan& plan, const std::vector<base::Id>& ids);
// Where one end of a run is: "sump S1, outlet O1", "pump P1", "tee T3", "open end".
QString endName(const plan::Plan& plan, const plan::RunEnd& end);
// "standpipe O1" in a bed, "overflow O1" elsewhere; the kind alone where there is no tag.
QString portKindName(plan::PortKind port, plan::VesselKind vessel);
QString portName(const plan::Vessel& vessel, const plan::Port& port);

} // namespace sumpwright::ui::text
