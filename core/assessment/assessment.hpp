// Assessment: everything computed for one plan, immutable and stamped with the plan's revision. No pointer is null.
// A part that did not change between two assessments keeps its pointer.
#pragma once

#include <cstdint>
#include <memory>

#include "core/assessment/finding.hpp"
#include "core/assessment/floor_result.hpp"
#include "core/assessment/head_path.hpp"
#include "core/assessment/pump_result.hpp"
#include "core/assessment/run_result.hpp"
#include "core/assessment/season_result.hpp"
#include "core/assessment/service_result.hpp"
#include "core/assessment/site_result.hpp"
#include "core/assessment/sump_result.hpp"
#include "core/assessment/water_result.hpp"
#include "core/catalogue/catalogue.hpp"
#include "core/plan/plan.hpp"

namespace sumpwright::assessment
{

struct Assessment {
    plan::Plan plan; // the plan these results belong to
    std::shared_ptr<const catalogue::Catalogue> catalogue;
    std::uint64_t revision = 0;
    std::shared_ptr<const SiteResult> site = std::make_shared<const SiteResult>();
    std::shared_ptr<const WaterResult> water = std::make_shared<const WaterResult>();
    std::shared_ptr<const FlowResult> flow = std::make_shared<const FlowResult>();
    std::shared_ptr<const PumpResults> pumps = std::make_shared<const PumpResults>();
    std::shared_ptr<const SeasonResult> season = std::make_shared<const SeasonResult>();
    std::shared_ptr<const HeadPaths> headPaths = std::make_shared<const HeadPaths>();
    std::shared_ptr<const SumpResults> sumps = std::make_shared<const SumpResults>();
    std::shared_ptr<const ServiceResult> service = std::make_shared<const ServiceResult>();
    std::shared_ptr<const FloorResult> floor = std::make_shared<const FloorResult>();
    std::shared_ptr<const Findings> findings = std::make_shared<const Findings>();
};

// The same results, whatever their revision and sharing.
bool sameResults(const Assessment& a, const Assessment& b);

} // namespace sumpwright::assessment
