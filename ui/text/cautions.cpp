#include "ui/text/cautions.hpp"

#include <QCoreApplication>

namespace sumpwright::ui::text
{

namespace
{
class Cautions
{
    Q_DECLARE_TR_FUNCTIONS(Cautions)
};
} // namespace

QString loadCaution()
{
    return Cautions::tr("Weights and pressures are estimates from the sizes and densities listed. Whether this floor "
                        "may carry them is for a structural engineer or the building authority to decide; give them "
                        "these figures before pouring or filling.");
}

QString electricalCaution()
{
    return Cautions::tr("Sockets, cables and protection near water are work for a licensed electrician; local codes "
                        "apply.");
}

QString drinkingWaterCaution()
{
    return Cautions::tr("Keep an air gap between any drinking-water outlet and this system; local plumbing rules "
                        "apply.");
}

QString legCaution()
{
    return Cautions::tr("The load is shared evenly between the legs here; real legs do not share evenly. The stand and "
                        "what lies under each pad are for someone qualified to judge.");
}

} // namespace sumpwright::ui::text
