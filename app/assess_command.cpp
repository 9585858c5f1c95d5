#include "app/assess_command.hpp"

#include <ostream>

#include "app/file_complaint.hpp"
#include "core/engine/engine.hpp"
#include "core/report/assessment_text.hpp"
#include "core/storage/file.hpp"
#include "core/storage/plan_text.hpp"

namespace sumpwright::app
{
namespace
{

constexpr int done = 0;
constexpr int badInput = 2;

int complain(std::ostream& complaints, const std::string& file, const base::Refusal& refusal)
{
    complaints << "sumpwright assess: " << fileComplaint(file, refusal) << '\n';
    return badInput;
}

} // namespace

int runAssess(const AssessRequest& request, std::ostream& out, std::ostream& complaints)
{
    const auto text = storage::readFile(request.plan, storage::largestPlanBytes);
    if (!text)
        return complain(complaints, request.plan, text.refusal());
    const auto loaded = storage::loadText(*text);
    if (!loaded)
        return complain(complaints, request.plan, loaded.refusal());
    for (const std::string& key : loaded->unknownKeys)
        complaints << "sumpwright assess: " << inOneLine(request.plan + ": " + key) << ": not known, left aside\n";
    const auto assessment = engine::assess(loaded->plan, catalogue::Catalogue::builtIn());
    out << (request.json ? report::assessmentJson(*assessment) : report::assessmentLines(*assessment));
    return done;
}

} // namespace sumpwright::app
