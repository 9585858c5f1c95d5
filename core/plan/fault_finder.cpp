#include "core/plan/fault_finder.hpp"

#include <algorithm>

#include "core/plan/limits.hpp"

namespace sumpwright::plan
{

namespace
{

std::string spaced(std::string key)
{
    std::replace(key.begin(), key.end(), '_', ' ');
    std::replace(key.begin(), key.end(), '/', ' ');
    return key;
}

std::string joined(const std::string& a, const std::string& b, const char* between)
{
    return a.empty() || b.empty() ? a + b : a + between + b;
}

bool controlByte(char byte, bool linesAllowed)
{
    const auto value = static_cast<unsigned char>(byte);
    return (value < 0x20 || value == 0x7f) && !(linesAllowed && (byte == '\n' || byte == '\t'));
}

} // namespace

void FaultFinder::at(base::Id element, std::string part, std::string name)
{
    m_element = element;
    m_part = std::move(part);
    m_name = std::move(name);
    inside({}, {});
}

void FaultFinder::inside(std::string key, std::string name)
{
    m_insideKey = std::move(key);
    m_insideName = std::move(name);
}

void FaultFinder::fault(const std::string& key, std::string id, std::string what, std::string accepts)
{
    const std::string name = joined(m_name.empty() ? m_part : m_name, m_insideName, " ");
    m_faults.push_back({m_element,
                        m_part,
                        joined(m_insideKey, key, "/"),
                        {std::move(id), joined(name, spaced(key), ", "), std::move(what), std::move(accepts)}});
}

bool FaultFinder::notFinite(const char* key)
{
    fault(key, "plan.not-finite", "not a finite number", "a finite number");
    return false;
}

bool FaultFinder::ratio(const char* key, double value, double low, double high)
{
    if (!std::isfinite(value))
        return notFinite(key);
    if (value >= low && value <= high)
        return true;
    fault(key, "plan.out-of-range", units::exactRatioText(value) + " is out of range",
          units::exactRatioText(low) + " to " + units::exactRatioText(high));
    return false;
}

bool FaultFinder::place(const char* key, Point place)
{
    return within(key, place.x, -limits::farthest, limits::farthest) &&
           within(key, place.y, -limits::farthest, limits::farthest);
}

bool FaultFinder::level(const char* key, units::Elevation level)
{
    return within(key, level, limits::lowest, limits::highest);
}

bool FaultFinder::size(const char* key, units::Length size)
{
    return within(key, size, limits::leastSize, limits::largestSize);
}

void FaultFinder::loss(const char* key, const std::optional<double>& lossCoefficient)
{
    if (lossCoefficient)
        ratio(key, *lossCoefficient, 0.0, limits::largestLoss);
}

void FaultFinder::words(const char* key, const std::string& text, std::size_t longest, bool needed, bool linesAllowed)
{
    if (needed && text.empty())
        fault(key, "plan.text-missing", "nothing entered", "a text");
    if (text.size() > longest)
        fault(key, "plan.text-too-long", std::to_string(text.size()) + " bytes of text",
              "up to " + std::to_string(longest) + " bytes");
    if (std::any_of(text.begin(), text.end(), [&](char byte) { return controlByte(byte, linesAllowed); }))
        fault(key, "plan.bad-characters", "text with control characters", "text without them");
}

} // namespace sumpwright::plan
