// sumpwright work ID name=value ... [--json]: answers one worksheet. sumpwright work --list [--json]: lists them all.
#pragma once

#include <iosfwd>
#include <string>
#include <vector>

namespace sumpwright::app
{

struct WorkRequest {
    std::string worksheet;           // id; empty only with `list`
    std::vector<std::string> inputs; // "name=value"
    bool json = false;
    bool list = false; // of all worksheets, or of the one named
};

// Exit code: 0 answered, 2 bad input; then one line on `complaints` names the input, what was wrong, what is accepted.
int runWork(const WorkRequest& request, std::ostream& out, std::ostream& complaints);

} // namespace sumpwright::app
