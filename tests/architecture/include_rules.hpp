// The include directions of the house, read from layers.json.
#pragma once

#include <map>
#include <set>
#include <string>
#include <vector>

#include "tests/architecture/source_tree.hpp"

namespace sumpwright::architecture
{

class IncludeRules
{
public:
    explicit IncludeRules(const std::string& layersJson);

    bool knows(const std::string& room) const { return m_rooms.count(room) > 0; }
    std::set<std::string> rooms() const;
    // Whether `room` may look at `other` (a room).
    bool mayInclude(const std::string& room, const std::string& other) const;
    // "core/plan/run.hpp:7: ..." for every include the rules forbid.
    std::vector<std::string> offences(const SourceFile& file) const;

private:
    struct Room {
        std::set<std::string> rooms, libraries, librariesInCpp;
    };

    std::string libraryOf(const std::string& header) const; // empty: the standard library; "?": unknown
    std::string offence(const SourceFile& file, const std::string& included, bool ownFile) const;

    std::map<std::string, Room> m_rooms;
    std::map<std::string, std::vector<std::string>> m_libraries;
};

} // namespace sumpwright::architecture
