#include "tests/architecture/include_rules.hpp"

#include <nlohmann/json.hpp>
#include <regex>

namespace sumpwright::architecture
{

namespace
{

std::set<std::string> namesIn(const nlohmann::json& room, const char* key)
{
    return room.contains(key) ? room.at(key).get<std::set<std::string>>() : std::set<std::string>{};
}

// The rooms a room may look at, with those it takes over by "as".
std::set<std::string> roomsOf(const nlohmann::json& rooms, const std::string& name)
{
    const nlohmann::json& room = rooms.at(name);
    std::set<std::string> names = namesIn(room, "rooms");
    if (room.contains("as"))
        names.merge(roomsOf(rooms, room.at("as").get<std::string>()));
    return names;
}

std::string topOf(const std::string& room) { return room.substr(0, room.find('/')); }

bool isQtHeader(const std::string& header)
{
    static const std::regex qt("Q[A-Zt].*|q[a-z]+[.]h");
    return std::regex_match(header, qt);
}

} // namespace

IncludeRules::IncludeRules(const std::string& layersJson)
{
    const auto data = nlohmann::json::parse(layersJson);
    m_libraries = data.at("libraries").get<std::map<std::string, std::vector<std::string>>>();
    for (const auto& [name, room] : data.at("rooms").items()) {
        Room& rules = m_rooms[name];
        rules.rooms = roomsOf(data.at("rooms"), name);
        rules.libraries = namesIn(room, "libraries");
        rules.librariesInCpp = namesIn(room, "in_cpp");
    }
}

std::set<std::string> IncludeRules::rooms() const
{
    std::set<std::string> names;
    for (const auto& [name, rules] : m_rooms)
        names.insert(name);
    return names;
}

bool IncludeRules::mayInclude(const std::string& room, const std::string& other) const
{
    const std::set<std::string>& allowed = m_rooms.at(room).rooms;
    return room == other || allowed.count(other) > 0 || allowed.count(topOf(other)) > 0;
}

std::string IncludeRules::libraryOf(const std::string& header) const
{
    for (const auto& [name, prefixes] : m_libraries)
        for (const std::string& prefix : prefixes)
            if (name == "qt" ? isQtHeader(header) : header.starts_with(prefix))
                return name;
    static const std::regex standard("[a-z_0-9]+");
    return std::regex_match(header, standard) ? "" : "?";
}

std::string IncludeRules::offence(const SourceFile& file, const std::string& included, bool ownFile) const
{
    const std::string room = file.room();
    if (ownFile) {
        const std::string other = SourceFile{included, ""}.room();
        if (!knows(other))
            return "\"" + included + "\" is in no room of the house";
        return mayInclude(room, other) ? "" : room + " may not look at " + other;
    }
    const std::string library = libraryOf(included);
    const Room& rules = m_rooms.at(room);
    const bool inCpp = file.extension() == "cpp" && rules.librariesInCpp.count(library) > 0;
    if (library.empty() || inCpp || rules.libraries.count(library) > 0)
        return "";
    if (rules.librariesInCpp.count(library) > 0)
        return "<" + included + "> may be included in a .cpp only";
    return room + " may not use <" + included + ">" + (library == "?" ? ", a library layers.json does not know" : "");
}

std::vector<std::string> IncludeRules::offences(const SourceFile& file) const
{
    if (!knows(file.room()))
        return {file.path + ":1: " + file.room() + " is no room of the house"};
    static const std::regex include(R"(^\s*#\s*include\s*([<"])([^>"]+)[>"])");
    std::vector<std::string> found;
    const std::vector<std::string> lines = linesOf(file.text);
    for (std::size_t i = 0; i < lines.size(); ++i) {
        std::smatch match;
        if (!std::regex_search(lines[i], match, include) || match[2].str().ends_with(".moc"))
            continue;
        const std::string why = offence(file, match[2], match[1] == "\"");
        if (!why.empty())
            found.push_back(file.path + ":" + std::to_string(i + 1) + ": " + why);
    }
    return found;
}

} // namespace sumpwright::architecture
