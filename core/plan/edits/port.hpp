// Ports of vessels: made, removed, changed. Attached runs follow place and level.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/plan/edits/edit.hpp"

namespace sumpwright::plan
{

struct PortRef {
    base::Id vessel;
    base::Id port;
    friend bool operator==(const PortRef&, const PortRef&) = default;
};

// The new port gets the id plan.nextId had before, and a tag free in its vessel: I1 inlet, L1 lip, O1 side outlet.
Edit addPort(base::Id vessel, PortKind kind, Point offset, units::Elevation level);
Edit removePorts(std::vector<PortRef> ports);                // ends of runs that met them become open
Edit setPortKind(std::vector<PortRef> ports, PortKind kind); // levels and target that no longer apply are dropped
Edit setPortOffset(PortRef port, Point offset);
Edit setPortLevel(std::vector<PortRef> ports, units::Elevation level);
Edit setPortBore(std::vector<PortRef> ports, std::optional<units::Length> bore);
Edit setDrainLevel(std::vector<PortRef> lips, std::optional<units::Elevation> level);
// Of the lip or outlet that a screen leaves free; none: no screen.
Edit setOpenFraction(std::vector<PortRef> outlets, std::optional<double> openFraction);
Edit setVentLevel(std::vector<PortRef> inlets, std::optional<units::Elevation> level);
Edit setTargetFlow(std::vector<PortRef> inlets, std::optional<units::Flow> flow);

} // namespace sumpwright::plan
