// One line that names a file once and says what is wrong with it; control characters become blanks.
#pragma once

#include <string>

#include "core/base/outcome.hpp"

namespace sumpwright::app
{

// A refusal of the file itself already names it as its place; one of its content gives a line in it.
std::string fileComplaint(const std::string& file, const base::Refusal& refusal);
std::string inOneLine(std::string text);

} // namespace sumpwright::app
