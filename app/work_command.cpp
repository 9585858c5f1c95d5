#include "app/work_command.hpp"

#include <ostream>

#include "core/worksheets/written_answer.hpp"

namespace sumpwright::app
{
namespace
{

constexpr int done = 0;
constexpr int badInput = 2;

int complain(std::ostream& complaints, const base::Refusal& refusal)
{
    std::string line = base::oneLine(refusal);
    for (char& c : line)
        if (static_cast<unsigned char>(c) < 0x20)
            c = ' ';
    complaints << "sumpwright work: " << line << '\n';
    return badInput;
}

base::Outcome<std::vector<worksheets::InputText>> namedValues(const std::vector<std::string>& words)
{
    std::vector<worksheets::InputText> texts;
    for (const std::string& word : words) {
        const std::size_t equals = word.find('=');
        if (equals == std::string::npos || equals == 0)
            return base::Refusal{"work.not-name-value", "", "\"" + word.substr(0, 60) + "\" is not an input",
                                 "write name=value, in quotes where there are blanks: \"flow=1500 L/h\""};
        texts.push_back({word.substr(0, equals), word.substr(equals + 1)});
    }
    return texts;
}

} // namespace

int runWork(const WorkRequest& request, std::ostream& out, std::ostream& complaints)
{
    const auto tables = catalogue::Catalogue::builtIn();
    if (request.list && request.worksheet.empty()) {
        const auto& all = worksheets::allWorksheets();
        out << (request.json ? worksheets::listJson(all, *tables) : worksheets::listLines(all, *tables));
        return done;
    }
    if (request.worksheet.empty())
        return complain(complaints, {"work.no-worksheet", "", "no worksheet is named",
                                     "name one of those that \"sumpwright work --list\" shows"});
    const auto sheet = worksheets::findWorksheet(request.worksheet);
    if (!sheet)
        return complain(complaints, sheet.refusal());
    if (request.list) {
        const std::vector<worksheets::Worksheet> one = {**sheet};
        out << (request.json ? worksheets::listJson(one, *tables) : worksheets::listLines(one, *tables));
        return done;
    }
    const auto texts = namedValues(request.inputs);
    if (!texts)
        return complain(complaints, texts.refusal());
    const auto answer = worksheets::answer(**sheet, *texts, *tables);
    if (!answer)
        return complain(complaints, answer.refusal());
    out << (request.json ? worksheets::answerJson(*answer) : worksheets::answerLines(**sheet, *answer, *tables));
    return done;
}

} // namespace sumpwright::app
