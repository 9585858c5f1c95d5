// Inputs that several worksheets ask in the same words and ranges.
#pragma once

#include "core/worksheets/worksheet.hpp"

namespace sumpwright::worksheets
{

InputSpec quantityInput(std::string name, std::string meaning, units::KindId kind, std::string least, std::string most);
InputSpec listInput(std::string name, std::string meaning, units::KindId kind, std::string least, std::string most);
InputSpec optionally(InputSpec spec); // it may stay empty
InputSpec moreThan(InputSpec spec);   // its least value is left out itself

InputSpec levelInput(std::string name, std::string meaning);   // -500 to 9000 m
InputSpec areaInput(std::string name, std::string meaning);    // 1 cm2 to 1 000 000 m2
InputSpec volumesInput(std::string name, std::string meaning); // a list, each 0 to 1 000 000 m3
InputSpec flowInput();                                         // more than 0, at most 1 m3/s
InputSpec boreInput();                                         // 1 mm to 1 m
InputSpec lengthInput();                                       // 0 to 10 km
InputSpec roughnessInput();                                    // 0 to 10 mm, new plastic pipe by default
InputSpec corrugatedFactorInput();                             // 0 to 1, 0 (a plain wall) by default
InputSpec waterTemperatureInput();                             // 0 to 40 degC, 20 degC by default
InputSpec openingHeadInput(); // of springs in non-return valves; 0 to 100 m, 0 by default
InputSpec sumKInput();        // 0 to 10 000, 0 by default

Note corrugatedNote(); // corrugated hose: the factor is an estimate
Note transitionNote(); // the flow is between laminar and turbulent
Note roughNote();      // rougher than the Moody chart

} // namespace sumpwright::worksheets
