// Provenance: where a table row comes from: the key of a source in resources/sources.json, how its value was
// obtained, and the range inside which it may be used.
#pragma once

#include <array>
#include <string>
#include <string_view>

namespace sumpwright::catalogue
{

enum class Basis {
    Seen,           // read in the published text
    Memory,         // from memory, the page not seen yet: shown as such
    Computed,       // computed with the stated formula or reference library
    Inference,      // own inference, nothing published behind it; also every invented row
    CommonPractice, // a fact of the trade without a source
    Own,            // a part the person typed in or imported
};

inline constexpr std::array allBases{Basis::Seen,      Basis::Memory,         Basis::Computed,
                                     Basis::Inference, Basis::CommonPractice, Basis::Own};

// The word used in the tables: "seen", "memory", "computed", "inference", "common-practice", "own".
constexpr std::string_view basisKey(Basis basis)
{
    switch (basis) {
    case Basis::Seen:
        return "seen";
    case Basis::Memory:
        return "memory";
    case Basis::Computed:
        return "computed";
    case Basis::Inference:
        return "inference";
    case Basis::CommonPractice:
        return "common-practice";
    case Basis::Own:
        return "own";
    }
    return "";
}

struct Source {
    std::string id;
    std::string title;
    Basis basis = Basis::Memory;
    std::string note;
};

struct Provenance {
    std::string source; // a key of resources/sources.json
    Basis basis = Basis::Memory;
    std::string range; // where the values hold, plain English; empty where there is nothing to say
    std::string note;  // e.g. "invented, typical shape"
};

} // namespace sumpwright::catalogue
