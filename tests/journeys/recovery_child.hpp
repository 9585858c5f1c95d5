// The victim of the recovery journeys: a whole window in a process of its own that edits by key presses until it is
// killed. After every edit it writes one line "N T" to standard output: edits so far, and the monotonic clock in ms.
#pragma once

#include <string_view>

namespace sumpwright::tests
{

inline constexpr std::string_view childFlag = "--edit-until-killed";
inline constexpr double firstPlace = 1.0; // m, of the tank; every edit moves it one grid step of 0.1 m to the right

// Arguments after the flag: state folder, plan file or "-" for an untitled plan, edits between two savings (0: never).
int editUntilKilled(int argc, char** argv);

} // namespace sumpwright::tests
