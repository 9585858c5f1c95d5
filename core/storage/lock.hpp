// PlanLock: one window writes a plan; a second is told who holds it and opens read-only. Lock files lie in the state
// folder, keyed by the plan's canonical path; the system lets go of a dead owner's lock, so it is taken over.
#pragma once

#include <filesystem>
#include <memory>
#include <variant>

#include "core/base/outcome.hpp"
#include "core/storage/process.hpp"

namespace sumpwright::storage
{

class PlanLock
{
public:
    ~PlanLock(); // releases
    PlanLock(const PlanLock&) = delete;
    PlanLock& operator=(const PlanLock&) = delete;

    struct HeldBy {
        ProcessMark owner;
    };
    using Answer = std::variant<std::unique_ptr<PlanLock>, HeldBy, base::Refusal>;
    static Answer take(const std::filesystem::path& stateFolder, const std::filesystem::path& planPath);

private:
    PlanLock(std::filesystem::path file, int descriptor) : m_file(std::move(file)), m_descriptor(descriptor) {}

    std::filesystem::path m_file;
    int m_descriptor = -1;
};

} // namespace sumpwright::storage
