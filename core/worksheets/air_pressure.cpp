#include "core/nature/air.hpp"
#include "core/worksheets/answer_draft.hpp"
#include "core/worksheets/common_inputs.hpp"
#include "core/worksheets/each.hpp"

namespace sumpwright::worksheets
{
namespace
{

const Note standardDay{"standard-day", "The mean of a standard day; the weather moves it by 3 % either way."};

base::Outcome<Answer> compute(const Inputs& inputs)
{
    const auto altitude = inputs.get<units::Length>("altitude");
    const auto pressure = nature::airPressureAt(altitude);
    if (!pressure)
        return pressure.refusal();
    AnswerDraft draft(inputs);
    draft.put("pressure", *pressure);
    draft.work("p = 101325 Pa × (1 - 0.0065 K/m × ", altitude, " / 288.15 K)^5.25588 = ", *pressure);
    draft.note(standardDay.id);
    return draft.take();
}

} // namespace

Worksheet airPressure()
{
    Worksheet sheet;
    sheet.id = "air-pressure";
    sheet.question = "How high is the air pressure at an altitude?";
    sheet.formula = "p = 101325 Pa (1 - 0.0065 K/m H / 288.15 K)^5.25588";
    sheet.inputs = {quantityInput("altitude", "height above sea level", units::KindId::length, "-500 m", "5000 m")};
    sheet.outputs = {{"pressure", "air pressure of the standard atmosphere", "Pa"}};
    sheet.sources = {"iso-2533"};
    sheet.notes = {standardDay};
    sheet.compute = compute;
    return sheet;
}

} // namespace sumpwright::worksheets
