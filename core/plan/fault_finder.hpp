// FaultFinder: collects faults of one element after another, and asks the questions every check repeats.
#pragma once

#include <cmath>
#include <string>
#include <utility>
#include <vector>

#include "core/plan/check.hpp"
#include "core/units/format.hpp"

namespace sumpwright::plan
{

class FaultFinder
{
public:
    void at(base::Id element, std::string part, std::string name);
    // A part inside the element ("ports/1", "L1"); an empty key goes back to the element itself.
    void inside(std::string key, std::string name);
    std::pair<std::string, std::string> inside() const { return {m_insideKey, m_insideName}; }
    void fault(const std::string& key, std::string id, std::string what, std::string accepts);

    // True when the number is finite and lies in the closed range.
    template <class Kind> bool within(const char* key, const Kind& value, const Kind& low, const Kind& high)
    {
        if (!std::isfinite(units::inSi(value)))
            return notFinite(key);
        if (units::inSi(value) >= units::inSi(low) && units::inSi(value) <= units::inSi(high))
            return true;
        fault(key, "plan.out-of-range", units::format(value) + " is out of range",
              units::format(low) + " to " + units::format(high));
        return false;
    }
    bool ratio(const char* key, double value, double low, double high);
    bool place(const char* key, Point place);
    bool level(const char* key, units::Elevation level);
    bool size(const char* key, units::Length size);
    void loss(const char* key, const std::optional<double>& lossCoefficient);
    void words(const char* key, const std::string& text, std::size_t longest, bool needed, bool linesAllowed = false);

    std::vector<Fault> take() { return std::move(m_faults); }
    const std::vector<Fault>& faults() const { return m_faults; }

private:
    bool notFinite(const char* key);

    std::vector<Fault> m_faults;
    base::Id m_element;
    std::string m_part;
    std::string m_name;
    std::string m_insideKey;
    std::string m_insideName;
};

} // namespace sumpwright::plan
