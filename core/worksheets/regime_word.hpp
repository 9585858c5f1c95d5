// The words of worksheets for how water flows in a full pipe.
#pragma once

#include <string>

#include "core/hydraulics/friction.hpp"

namespace sumpwright::worksheets
{

inline std::string regimeWord(hydraulics::FlowRegime regime)
{
    switch (regime) {
    case hydraulics::FlowRegime::Still:
        return "still";
    case hydraulics::FlowRegime::Laminar:
        return "laminar";
    case hydraulics::FlowRegime::Transition:
        return "transition";
    case hydraulics::FlowRegime::Turbulent:
        return "turbulent";
    }
    return "still";
}

// The law by which the friction factor of a regime is found, for the working.
inline std::string frictionLaw(hydraulics::FlowRegime regime)
{
    switch (regime) {
    case hydraulics::FlowRegime::Still:
    case hydraulics::FlowRegime::Laminar:
        return "64 / Re";
    case hydraulics::FlowRegime::Transition:
        return "bridge from 64 / Re at Re 2000 to Colebrook at Re 4000";
    case hydraulics::FlowRegime::Turbulent:
        break;
    }
    return "Colebrook: 1/√f = -2 log10(ε/(3.7 D) + 2.51/(Re √f))";
}

} // namespace sumpwright::worksheets
