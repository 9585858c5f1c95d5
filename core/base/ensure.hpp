// ensure(): a check of the programmer's own promises, on in every build. Throws BrokenPromise.
#pragma once

#include <stdexcept>
#include <string>

namespace sumpwright::base {

struct BrokenPromise : std::logic_error {
    using std::logic_error::logic_error;
};

inline void ensure(bool kept, const char* promise)
{
    if (!kept)
        throw BrokenPromise(std::string("broken promise: ") + promise);
}

} // namespace sumpwright::base
