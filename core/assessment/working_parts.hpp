// What the workings are put together from: inputs written as the command line takes them, and lists of named values.
#pragma once

#include <string>

#include "core/assessment/working.hpp"
#include "core/units/format.hpp"
#include "core/units/measures.hpp"
#include "core/worksheets/lists.hpp"

namespace sumpwright::assessment
{

template <class Kind> WorkingInput input(const char* name, const Kind& value)
{
    return {name, units::exactText(value)};
}
inline WorkingInput input(const char* name, units::Area area) // in m2, which people read best
{
    return {name, units::exactRatioText(units::inSquareMetres(area)) + " m2"};
}
inline std::string flowText(units::Flow flow) // in L/h, for the same reason
{
    return units::exactRatioText(units::inLitresPerHour(flow)) + " L/h";
}
inline WorkingInput input(const char* name, units::Flow flow) { return {name, flowText(flow)}; }
inline WorkingInput ratioInput(const char* name, double value) { return {name, units::exactRatioText(value)}; }

// "T1: 12 L; B1: 4 L", an entry at a time.
class ListText
{
public:
    template <class Kind> void add(const std::string& name, const Kind& value) { put(name, units::exactText(value)); }
    void add(const std::string& name, units::Flow flow) { put(name, flowText(flow)); }
    void put(const std::string& name, const std::string& value)
    {
        const std::string shown = worksheets::listName(name);
        m_text += (m_text.empty() ? "" : "; ") + (shown.empty() ? "" : shown + ": ") + value;
    }
    const std::string& text() const { return m_text; }
    bool empty() const { return m_text.empty(); }
    void into(Working& working, const char* name) const // nothing where it is empty
    {
        if (!m_text.empty())
            working.inputs.push_back({name, m_text});
    }

private:
    std::string m_text;
};

inline WaterState waterStateOf(RunningState state)
{
    return state == RunningState::least ? WaterState::runningLeast : WaterState::runningMost;
}

inline units::Flow sizeOf(units::Flow flow) { return flow < units::Flow() ? -flow : flow; }

// Null where there is none.
const RunFlow* flowOf(const Assessment& assessment, base::Id run, RunningState state);
const DutyPoint* dutyOf(const Assessment& assessment, base::Id pump, RunningState state); // with a flow above 0
const VesselWater* waterOf(const Assessment& assessment, base::Id vessel, WaterState state);

// Model or curve, and speed.
void addPump(Working& working, const Assessment& assessment, const plan::Pump& pump);

// From the pump's water to where its worst path ends.
struct Lift {
    units::Elevation from;
    units::Elevation to;
};
std::optional<Lift> liftOf(const Assessment& assessment, const plan::Pump& pump, const HeadPath& path,
                           RunningState state);

// Bottom, area and medium of a vessel, as worksheets ask for them.
void addVessel(Working& working, const Assessment& assessment, const plan::Vessel& vessel);

} // namespace sumpwright::assessment
