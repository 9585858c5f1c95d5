// From one row of a table file to one entry of the catalogue. Each throws BadRow, and checks that the values make sense
// together; all fields of the row are read or the row is refused.
#pragma once

#include <string>

#include "core/catalogue/catalogue.hpp"
#include "core/catalogue/row.hpp"

namespace sumpwright::catalogue
{

Provenance readProvenance(const Row& row);
Source readSource(const std::string& key, const Row& row);
Pipe readPipe(const Row& row);
RoughnessState readRoughness(const Row& row);
Fitting readFitting(const Row& row);
Pump readPump(const Row& row);
Medium readMedium(const Row& row);
LiveLoad readLiveLoad(const Row& row);
VesselTemplate readVessel(const Row& row);
Support readSupport(const Row& row);

} // namespace sumpwright::catalogue
