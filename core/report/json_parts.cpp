#include "core/report/json_parts.hpp"

namespace sumpwright::report
{
namespace
{

struct ToJsonNumber {
    JsonNumber operator()(std::monostate) const { return {0.0, "1"}; }
    JsonNumber operator()(double ratio) const { return {ratio, "1"}; }
    JsonNumber operator()(units::Length v) const { return {units::inMetres(v), "m"}; }
    JsonNumber operator()(units::Elevation v) const { return {units::inMetres(v), "m"}; }
    JsonNumber operator()(units::Area v) const { return {units::inSquareMetres(v), "m2"}; }
    JsonNumber operator()(units::Volume v) const { return {units::inCubicMetres(v), "m3"}; }
    JsonNumber operator()(units::Flow v) const { return {units::inCubicMetresPerSecond(v), "m3/s"}; }
    JsonNumber operator()(units::Velocity v) const { return {units::inMetresPerSecond(v), "m/s"}; }
    JsonNumber operator()(units::Head v) const { return {units::inMetresHead(v), "m"}; }
    JsonNumber operator()(units::Pressure v) const { return {units::inPascals(v), "Pa"}; }
    JsonNumber operator()(units::GroundPressure v) const { return {units::inSi(v), "Pa"}; }
    JsonNumber operator()(units::Mass v) const { return {units::inKilograms(v), "kg"}; }
    JsonNumber operator()(units::Force v) const { return {units::inNewtons(v), "N"}; }
    JsonNumber operator()(units::Power v) const { return {units::inWatts(v), "W"}; }
    JsonNumber operator()(units::Slope v) const { return {units::inMetresPerMetre(v), "m/m"}; }
    JsonNumber operator()(units::Angle v) const { return {units::inRadians(v), "rad"}; }
    JsonNumber operator()(units::Temperature v) const { return {units::inCelsius(v), "degC"}; }
};

} // namespace

JsonNumber jsonNumber(const assessment::Amount& amount) { return std::visit(ToJsonNumber{}, amount); }
JsonNumber jsonNumber(units::Density density) { return {units::inKilogramsPerCubicMetre(density), "kg/m3"}; }
JsonNumber jsonNumber(units::KinematicViscosity viscosity)
{
    return {units::inSquareMetresPerSecond(viscosity), "m2/s"};
}
JsonNumber jsonNumber(units::Energy energy) { return {units::inKilowattHours(energy), "kWh"}; }
JsonNumber jsonNumber(units::Time time) { return {units::inSeconds(time), "s"}; }
JsonNumber jsonNumber(units::Money money, const std::string& currency) { return {units::inCurrency(money), currency}; }
JsonNumber jsonNumber(assessment::FlowPerPower flowPerPower)
{
    return {assessment::inLitresPerHourPerWatt(flowPerPower), "L/(h W)"};
}

void put(JsonText& json, std::string_view key, const JsonNumber& number)
{
    json.beginObject(key);
    json.number("value", number.value);
    json.word("unit", number.unit);
    json.endObject();
}

void putMissing(JsonText& json, assessment::Status status, const assessment::Reason& reason, const plan::Plan& plan)
{
    const std::string word = status == assessment::Status::notSolved ? "not solved" : "not computed";
    json.word("status", word);
    json.word("reason", reason.text);
    json.word("reason_id", reason.id);
    json.word("message", word + ": " + reason.text);
    if (reason.element.valid()) {
        json.beginObject("element");
        putElement(json, reason.element, plan);
        json.endObject();
    }
}

void putElement(JsonText& json, base::Id element, const plan::Plan& plan)
{
    json.number("id", static_cast<double>(element.number));
    json.word("name", nameOf(plan, element));
}

void putWorking(JsonText& json, const std::optional<assessment::Working>& working)
{
    if (!working)
        return;
    json.beginObject("working");
    json.word("worksheet", working->worksheet);
    json.beginObject("inputs");
    for (const assessment::WorkingInput& input : working->inputs)
        json.word(input.name, input.value);
    json.endObject();
    if (!working->note.empty())
        json.word("note", working->note);
    json.endObject();
}

void putSeries(JsonText& json, std::string_view key, const std::vector<JsonNumber>& numbers)
{
    json.beginObject(key);
    json.word("unit", numbers.empty() ? std::string("1") : numbers.front().unit);
    json.beginList("values");
    for (const JsonNumber& number : numbers)
        json.number({}, number.value);
    json.endList();
    json.endObject();
}

const char* keyOf(assessment::WaterState state)
{
    switch (state) {
    case assessment::WaterState::runningLeast:
        return "running_least";
    case assessment::WaterState::runningMost:
        return "running_most";
    case assessment::WaterState::pumpStopped:
        return "pump_stopped";
    case assessment::WaterState::toRim:
        return "to_rim";
    }
    return "";
}

const char* keyOf(assessment::RunningState state)
{
    switch (state) {
    case assessment::RunningState::least:
        return "least";
    case assessment::RunningState::most:
        return "most";
    }
    return "";
}

const char* keyOf(assessment::YearEnd end)
{
    switch (end) {
    case assessment::YearEnd::fouledCold:
        return "fouled_cold";
    case assessment::YearEnd::newWarm:
        return "new_warm";
    }
    return "";
}

const char* keyOf(assessment::LoadCase loadCase)
{
    switch (loadCase) {
    case assessment::LoadCase::bedsFlooded:
        return "beds_flooded";
    case assessment::LoadCase::toRim:
        return "to_rim";
    }
    return "";
}

} // namespace sumpwright::report
