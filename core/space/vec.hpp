// Vec: a place or direction in space as three plain numbers, for the geometry inside this room. Metres, x and y as on
// the sheet, z the level above datum.
#pragma once

#include <algorithm>
#include <cmath>

#include "core/space/pipe_body.hpp"

namespace sumpwright::space
{

class Vec
{
public:
    constexpr Vec(double x, double y, double z) : m_x(x), m_y(y), m_z(z) {}
    explicit Vec(const Spot& spot)
        : Vec(units::inMetres(spot.at.x), units::inMetres(spot.at.y), units::inMetres(spot.level))
    {
    }
    double x() const { return m_x; }
    double y() const { return m_y; }
    double z() const { return m_z; }
    double dot(const Vec& o) const { return m_x * o.m_x + m_y * o.m_y + m_z * o.m_z; }
    double length() const { return std::sqrt(dot(*this)); }
    Vec operator+(const Vec& o) const { return {m_x + o.m_x, m_y + o.m_y, m_z + o.m_z}; }
    Vec operator-(const Vec& o) const { return {m_x - o.m_x, m_y - o.m_y, m_z - o.m_z}; }
    Vec operator*(double by) const { return {m_x * by, m_y * by, m_z * by}; }

private:
    double m_x, m_y, m_z;
};

inline Spot spotOf(const Vec& v)
{
    return {{units::metres(v.x()), units::metres(v.y())}, units::elevationMetres(v.z())};
}

} // namespace sumpwright::space
