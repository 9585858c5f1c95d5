// sumpwright assess PLAN [--json]: everything computed for a plan file, as text or as JSON
// (resources/schema/assessment.schema.json).
#pragma once

#include <iosfwd>
#include <string>

namespace sumpwright::app
{

struct AssessRequest {
    std::string plan; // file
    bool json = false;
};

// Exit code: 0 when the plan was read, whatever of it could be computed; 2 when it could not be read, with one line on
// `complaints` that says where, what and how to mend. Keys this version does not know are named there too.
int runAssess(const AssessRequest& request, std::ostream& out, std::ostream& complaints);

} // namespace sumpwright::app
