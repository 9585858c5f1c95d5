#include "core/storage/migrations.hpp"

#include <array>

#include "core/storage/plan_text.hpp"

namespace sumpwright::storage
{

namespace
{

using Step = void (*)(JsonNode& root);
// The step at index i leads from version i + 1 to version i + 2.
constexpr std::array<Step, planVersion - 1> steps{};

} // namespace

void migrate(JsonNode& root, int version)
{
    for (auto step = steps.begin() + (version - 1); step != steps.end(); ++step)
        (*step)(root);
}

} // namespace sumpwright::storage
