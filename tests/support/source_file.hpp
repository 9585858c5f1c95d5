// Files of the source tree, for tests.
#pragma once

#include <fstream>
#include <sstream>
#include <stdexcept>
#include <string>

namespace sumpwright::test
{

inline std::string sourcePath(const std::string& path) { return std::string(SUMPWRIGHT_SOURCE) + "/" + path; }

inline std::string sourceText(const std::string& path)
{
    std::ifstream file(sourcePath(path), std::ios::binary);
    if (!file)
        throw std::runtime_error("cannot read " + path);
    std::ostringstream text;
    text << file.rdbuf();
    return text.str();
}

} // namespace sumpwright::test
