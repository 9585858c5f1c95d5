#include "core/catalogue/read_rows.hpp"

#include "core/units/measures.hpp"

namespace sumpwright::catalogue
{
namespace
{

HooperCoefficients readHooper(const Row& row)
{
    HooperCoefficients hooper{row.ratio("k1"), row.ratio("k_infinity")};
    row.requireAllRead();
    return hooper;
}

DarbyCoefficients readDarby(const Row& row)
{
    DarbyCoefficients darby{row.ratio("k1"), row.ratio("ki"), row.ratio("kd")};
    row.requireAllRead();
    return darby;
}

CraneCoefficient readCrane(const Row& row)
{
    const bool plain = row.has("plain_k");
    CraneCoefficient crane{row.ratio(plain ? "plain_k" : "multiple"), plain};
    row.requireAllRead();
    return crane;
}

// "5 deg" of a quarter turn, or a plain fraction of the bore.
double readFractionClosed(const Row& row, std::string_view field)
{
    if (row.isText(field))
        return units::inDegrees(row.quantity<units::Angle>(field)) / 90.0;
    return row.ratio(field);
}

void readOpenings(const Row& row, Fitting& fitting)
{
    if (!row.has("openings"))
        return;
    for (const Row& point : row.parts("openings")) {
        fitting.openings.push_back({readFractionClosed(point, "closed"), point.ratio("added_k")});
        point.requireAllRead();
    }
    for (std::size_t i = 1; i < fitting.openings.size(); ++i)
        row.require(fitting.openings[i].fractionClosed > fitting.openings[i - 1].fractionClosed &&
                        fitting.openings[i].addedK > fitting.openings[i - 1].addedK,
                    "openings", "closing further does not add loss from row to row", "both columns ascend");
    fitting.shutFrom = readFractionClosed(row, "shut_from");
    row.require(!fitting.openings.empty() && fitting.openings.back().fractionClosed < fitting.shutFrom &&
                    fitting.shutFrom <= 1.0,
                "shut_from", "the valve is shut before the last row of its table", "beyond the last row, at most 1");
    fitting.openingSource = row.text("opening_source");
}

} // namespace

Fitting readFitting(const Row& row)
{
    Fitting fitting;
    fitting.id = row.text("id");
    fitting.name = row.text("name");
    if (row.has("valve"))
        fitting.valve = row.choice<ValveKind>("valve", {{"ball", ValveKind::Ball},
                                                        {"gate", ValveKind::Gate},
                                                        {"butterfly", ValveKind::Butterfly},
                                                        {"globe", ValveKind::Globe},
                                                        {"check", ValveKind::Check}});
    fitting.defaultK = row.ratio("default_k");
    fitting.defaultKFrom = row.quantity<units::Length>("default_k_from");
    fitting.defaultKTo = row.quantity<units::Length>("default_k_to");
    row.require(fitting.defaultKFrom < fitting.defaultKTo, "default_k_to", "the range of bores is empty",
                "more than default_k_from");
    if (row.has("hooper"))
        fitting.hooper = readHooper(row.part("hooper"));
    if (row.has("darby"))
        fitting.darby = readDarby(row.part("darby"));
    if (row.has("crane"))
        fitting.crane = readCrane(row.part("crane"));
    if (fitting.hooper || fitting.darby || fitting.crane)
        fitting.coefficientSource = row.text("coefficient_source");
    readOpenings(row, fitting);
    fitting.cracking = row.quantityIfAny<units::Head>("cracking");
    fitting.provenance = readProvenance(row);
    row.requireAllRead();
    return fitting;
}

} // namespace sumpwright::catalogue
