#include "app/file_complaint.hpp"

namespace sumpwright::app
{

std::string inOneLine(std::string text)
{
    for (char& c : text)
        if (static_cast<unsigned char>(c) < 0x20 || c == 0x7f)
            c = ' ';
    return text;
}

std::string fileComplaint(const std::string& file, const base::Refusal& refusal)
{
    const std::string line = base::oneLine(refusal);
    return inOneLine(refusal.place == file ? line : file + ": " + line);
}

} // namespace sumpwright::app
