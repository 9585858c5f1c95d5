#include "core/worksheets/pump_points.hpp"

#include "core/units/parse.hpp"

namespace sumpwright::worksheets
{
namespace
{

constexpr std::size_t mostPoints = 100;

std::string_view trimmed(std::string_view text)
{
    const std::size_t begin = text.find_first_not_of(" \t");
    if (begin == std::string_view::npos)
        return {};
    return text.substr(begin, text.find_last_not_of(" \t") + 1 - begin);
}

base::Refusal atPoint(std::size_t number, base::Refusal refusal)
{
    refusal.place = "point " + std::to_string(number);
    return refusal;
}

} // namespace

base::Outcome<std::vector<hydraulics::PumpPoint>> readPumpPoints(std::string_view text, const units::NumberStyle& style)
{
    std::vector<hydraulics::PumpPoint> points;
    while (!text.empty()) {
        const std::size_t end = text.find(';');
        const std::string_view pair = trimmed(text.substr(0, end));
        text = end == std::string_view::npos ? std::string_view() : text.substr(end + 1);
        if (text.empty() && pair.empty())
            break; // a closing semicolon
        if (points.size() == mostPoints)
            return base::Refusal{"worksheets.too-many-points", "", "there are more than 100 points",
                                 "at most 100 points"};
        const std::size_t number = points.size() + 1;
        const std::size_t colon = pair.find(':');
        if (colon == std::string_view::npos)
            return atPoint(number, {"worksheets.bad-points", "", "a colon between flow and head is missing",
                                    "\"1125 L/h: 2.9 m\", points parted by semicolons"});
        const auto flow = units::parse<units::Flow>(trimmed(pair.substr(0, colon)), style);
        if (!flow)
            return atPoint(number, flow.refusal());
        const auto head = units::parse<units::Head>(trimmed(pair.substr(colon + 1)), style);
        if (!head)
            return atPoint(number, head.refusal());
        points.push_back({*flow, *head});
    }
    if (points.empty())
        return base::Refusal{"worksheets.bad-points", "", "there are no points",
                             "\"0 L/h: 3.2 m; 1125 L/h: 2.9 m; ...\""};
    return points;
}

} // namespace sumpwright::worksheets
