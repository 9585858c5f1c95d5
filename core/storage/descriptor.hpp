// Descriptor: an open file of the system, closed when it goes.
#pragma once

#include <utility>

#include <unistd.h>

namespace sumpwright::storage
{

class Descriptor
{
public:
    explicit Descriptor(int number) : m_number(number) {}
    Descriptor(Descriptor&& other) noexcept : m_number(std::exchange(other.m_number, -1)) {}
    Descriptor& operator=(Descriptor&&) = delete;
    ~Descriptor()
    {
        if (m_number >= 0)
            ::close(m_number);
    }

    bool good() const { return m_number >= 0; }
    int number() const { return m_number; }
    int release() { return std::exchange(m_number, -1); }
    // False when the system could not keep what was written.
    bool close() { return ::close(release()) == 0; }

private:
    int m_number;
};

} // namespace sumpwright::storage
