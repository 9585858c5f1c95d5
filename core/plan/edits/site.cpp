#include "core/plan/edits/site.hpp"

#include "core/plan/edits/draft.hpp"

namespace sumpwright::plan
{

namespace
{

template <class Value> Edit setSite(const char* intent, Value Site::*property, Value value)
{
    return makeEdit(intent, {}, [property, value = std::move(value)](Draft& draft) {
        Site site = *draft.plan.site;
        site.*property = value;
        if (!(site == *draft.plan.site))
            draft.plan.site = std::make_shared<const Site>(std::move(site));
    });
}

} // namespace

Edit setSiteName(std::string name) { return setSite("edit.site-name", &Site::name, std::move(name)); }

Edit setClient(std::string client) { return setSite("edit.client", &Site::client, std::move(client)); }

Edit setDesigner(std::string designer) { return setSite("edit.designer", &Site::designer, std::move(designer)); }

Edit setAltitude(std::optional<units::Length> altitude) { return setSite("edit.altitude", &Site::altitude, altitude); }

Edit setDesignWater(units::Temperature temperature)
{
    return setSite("edit.design-water", &Site::designWater, temperature);
}

Edit setColdestWater(std::optional<units::Temperature> temperature)
{
    return setSite("edit.coldest-water", &Site::coldestWater, temperature);
}

Edit setWarmestWater(std::optional<units::Temperature> temperature)
{
    return setSite("edit.warmest-water", &Site::warmestWater, temperature);
}

Edit setDesignAir(units::Temperature temperature) { return setSite("edit.design-air", &Site::designAir, temperature); }

Edit setCurrency(std::string currency) { return setSite("edit.currency", &Site::currency, std::move(currency)); }

Edit setPowerPrice(std::optional<units::EnergyPrice> price)
{
    return setSite("edit.power-price", &Site::powerPrice, price);
}

Edit setPipeCondition(PipeCondition condition)
{
    return setSite("edit.pipe-condition", &Site::pipeCondition, condition);
}

Edit setFloorUse(std::string liveLoadId) { return setSite("edit.floor-use", &Site::floorUse, std::move(liveLoadId)); }

Edit setNorth(units::Angle north) { return setSite("edit.north", &Site::north, north); }

Edit setClearances(Clearances clearances) { return setSite("edit.clearances", &Site::clearances, clearances); }

} // namespace sumpwright::plan
