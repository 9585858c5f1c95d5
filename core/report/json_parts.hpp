// Parts of the JSON of an assessment: quantities with their unit, stages with their reason, elements by id and tag.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <type_traits>
#include <vector>

#include "core/assessment/assessment.hpp"
#include "core/assessment/working.hpp"
#include "core/report/words.hpp"
#include "core/worksheets/json_text.hpp"

namespace sumpwright::report
{

using worksheets::JsonText;

// The number and unit of a quantity as JSON tells them.
struct JsonNumber {
    double value = 0.0;
    std::string unit;
};
JsonNumber jsonNumber(const assessment::Amount& amount);
JsonNumber jsonNumber(units::Density density);
JsonNumber jsonNumber(units::KinematicViscosity viscosity);
JsonNumber jsonNumber(units::Energy energy);
JsonNumber jsonNumber(units::Time time);
JsonNumber jsonNumber(units::Money money, const std::string& currency);
JsonNumber jsonNumber(assessment::FlowPerPower flowPerPower);

void put(JsonText& json, std::string_view key, const JsonNumber& number);
template <class Kind> void put(JsonText& json, std::string_view key, const Kind& quantity)
{
    if constexpr (std::is_convertible_v<Kind, assessment::Amount>)
        put(json, key, jsonNumber(assessment::Amount(quantity)));
    else
        put(json, key, jsonNumber(quantity));
}

// {"status": ..., "reason_id": ..., "reason": ..., "message": ...}, or {"status": "solved", ...} with what `fill` puts.
void putMissing(JsonText& json, assessment::Status status, const assessment::Reason& reason, const plan::Plan& plan);
template <class T, class Fill>
void putStage(JsonText& json, std::string_view key, const assessment::Stage<T>& stage, const plan::Plan& plan,
              Fill fill)
{
    json.beginObject(key);
    if (stage) {
        json.word("status", "solved");
        fill(*stage);
    } else {
        putMissing(json, stage.status(), stage.reason(), plan);
    }
    json.endObject();
}
// A stage of one quantity: its value and unit beside the status.
template <class Kind>
void putValueStage(JsonText& json, std::string_view key, const assessment::Stage<Kind>& stage, const plan::Plan& plan)
{
    putStage(json, key, stage, plan, [&json](const Kind& quantity) {
        JsonNumber number;
        if constexpr (std::is_convertible_v<Kind, assessment::Amount>)
            number = jsonNumber(assessment::Amount(quantity));
        else
            number = jsonNumber(quantity);
        json.number("value", number.value);
        json.word("unit", number.unit);
    });
}

void putElement(JsonText& json, base::Id element, const plan::Plan& plan); // "id" and "tag" into the open object
void putWorking(JsonText& json, const std::optional<assessment::Working>& working);
void putSeries(JsonText& json, std::string_view key, const std::vector<JsonNumber>& numbers);

const char* keyOf(assessment::WaterState state);
const char* keyOf(assessment::RunningState state);
const char* keyOf(assessment::LoadCase loadCase);
const char* keyOf(assessment::YearEnd end);

// The sections, each a key of the whole object.
void putVessels(JsonText& json, const assessment::Assessment& assessment);
void putRuns(JsonText& json, const assessment::Assessment& assessment);
void putPumps(JsonText& json, const assessment::Assessment& assessment);
void putSumps(JsonText& json, const assessment::Assessment& assessment);
void putService(JsonText& json, const assessment::Assessment& assessment);
void putFloor(JsonText& json, const assessment::Assessment& assessment);

} // namespace sumpwright::report
