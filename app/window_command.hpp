// Opening the window, or a picture of a plan without one; the only part of the command line that needs Qt.
#pragma once

#include <string>

namespace sumpwright::app
{

struct WindowRequest {
    std::string plan;    // file to open; empty: an empty plan
    std::string picture; // PNG or SVG file to write instead of opening a window; empty: open the window
    bool dark = false;   // the picture's colours
    std::string runsBy;  // what the picture's runs are coloured by: "velocity", "head"; empty: nothing
};

// Exit code: 0 done, 1 a fault of the program or no display, 2 the plan or the picture's place is bad; then one line
// on standard error says why. With a window a bad plan is told in the window and the exit code is 0.
int runWindow(int argc, char** argv, const WindowRequest& request);

} // namespace sumpwright::app
