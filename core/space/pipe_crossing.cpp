#include "core/space/pipe_crossing.hpp"

#include <cstdint>
#include <map>
#include <optional>
#include <tuple>

#include "core/space/vec.hpp"

namespace sumpwright::space
{
namespace
{

constexpr double longest = 1.0;    // m, of a piece a leg is cut into, so that each lies in or beside one cell
constexpr double joinedWithin = 3; // times what a pair needs, from a joint both meet

struct Piece {
    Vec a;
    Vec b;
    std::size_t body;
    std::int64_t column, row; // of the cell its middle lies in
};

struct Near {
    double between;
    Vec at;
};

// Nearest approach of two pieces; the place on the first.
Near nearest(const Vec& a, const Vec& b, const Vec& c, const Vec& d)
{
    const Vec u = b - a, v = d - c, w = a - c;
    const double uu = u.dot(u), uv = u.dot(v), vv = v.dot(v), uw = u.dot(w), vw = v.dot(w);
    const double area = uu * vv - uv * uv;
    double s = area > 1e-12 * uu * vv ? std::clamp((uv * vw - vv * uw) / area, 0.0, 1.0) : 0.0;
    double t = vv > 0.0 ? (uv * s + vw) / vv : 0.0;
    if (t < 0.0 || t > 1.0) {
        t = std::clamp(t, 0.0, 1.0);
        s = uu > 0.0 ? std::clamp((uv * t - uw) / uu, 0.0, 1.0) : 0.0;
    }
    const Vec at = a + u * s;
    return {(at - (c + v * t)).length(), at};
}

// The parts of a piece outside a ball.
std::vector<std::pair<Vec, Vec>> outside(const Vec& a, const Vec& b, const Vec& centre, double radius)
{
    const Vec u = b - a, w = a - centre;
    const double uu = u.dot(u), uw = u.dot(w), inside = uw * uw - uu * (w.dot(w) - radius * radius);
    if (uu == 0.0)
        return w.length() < radius ? std::vector<std::pair<Vec, Vec>>{} : std::vector{std::pair(a, b)};
    if (inside <= 0.0)
        return {{a, b}};
    const double in = (-uw - std::sqrt(inside)) / uu, out = (-uw + std::sqrt(inside)) / uu;
    std::vector<std::pair<Vec, Vec>> parts;
    if (in > 0.0)
        parts.push_back({a, a + u * std::min(in, 1.0)});
    if (out < 1.0)
        parts.push_back({a + u * std::max(out, 0.0), b});
    return parts;
}

class Search
{
public:
    Search(const std::vector<PipeBody>& bodies, double clearance)
        : m_bodies(bodies), m_clearance(clearance), m_worst(bodies.size())
    {
        double widest = 0.0;
        for (const PipeBody& body : bodies)
            widest = std::max(widest, units::inMetres(body.radius));
        m_cell = longest + 2.0 * widest + clearance;
        for (std::size_t i = 0; i < bodies.size(); ++i)
            cut(i);
        std::stable_sort(m_pieces.begin(), m_pieces.end(), [](const Piece& p, const Piece& q) {
            return std::tie(p.column, p.row, p.body) < std::tie(q.column, q.row, q.body);
        });
    }

    std::vector<PipeCrossing> run()
    {
        for (auto piece = m_pieces.begin(); piece != m_pieces.end(); ++piece) {
            for (auto other = piece + 1; other != m_pieces.end() && sameCell(*piece, *other); ++other)
                compare(*piece, *other);
            // Each pair of neighbouring cells once.
            compareWithRow(*piece, piece->column, piece->row + 1, piece->row + 1);
            compareWithRow(*piece, piece->column + 1, piece->row - 1, piece->row + 1);
        }
        std::map<std::pair<base::Id, base::Id>, PipeCrossing> pairs;
        for (const auto& worst : m_worst)
            if (worst)
                pairs.try_emplace({worst->first, worst->second}, *worst);
        std::vector<PipeCrossing> crossings;
        for (const auto& [pair, crossing] : pairs)
            crossings.push_back(crossing);
        return crossings;
    }

private:
    static bool sameCell(const Piece& p, const Piece& q) { return p.column == q.column && p.row == q.row; }
    double radius(std::size_t body) const { return units::inMetres(m_bodies[body].radius); }

    void cut(std::size_t body)
    {
        const auto& spots = m_bodies[body].spots;
        for (std::size_t i = 1; i < spots.size(); ++i) {
            const Vec a(spots[i - 1]), b(spots[i]);
            const auto parts = static_cast<int>(std::max(1.0, std::ceil((b - a).length() / longest)));
            for (int k = 0; k < parts; ++k) {
                const Vec from = a + (b - a) * (static_cast<double>(k) / parts);
                const Vec to = a + (b - a) * (static_cast<double>(k + 1) / parts);
                const Vec middle = (from + to) * 0.5;
                m_pieces.push_back({from, to, body, static_cast<std::int64_t>(std::floor(middle.x() / m_cell)),
                                    static_cast<std::int64_t>(std::floor(middle.y() / m_cell))});
            }
        }
    }

    void compareWithRow(const Piece& piece, std::int64_t column, std::int64_t from, std::int64_t to)
    {
        auto other = std::lower_bound(m_pieces.begin(), m_pieces.end(), std::pair(column, from),
                                      [](const Piece& p, const std::pair<std::int64_t, std::int64_t>& cell) {
                                          return std::pair(p.column, p.row) < cell;
                                      });
        for (; other != m_pieces.end() && other->column == column && other->row <= to; ++other)
            compare(piece, *other);
    }

    void compare(const Piece& p, const Piece& q)
    {
        if (p.body == q.body)
            return;
        const double near = radius(p.body) + radius(q.body) + m_clearance;
        const auto apart = [near](double a1, double a2, double b1, double b2) {
            return std::min(a1, a2) - std::max(b1, b2) >= near || std::min(b1, b2) - std::max(a1, a2) >= near;
        };
        if (apart(p.a.x(), p.b.x(), q.a.x(), q.b.x()) || apart(p.a.y(), p.b.y(), q.a.y(), q.b.y()) ||
            apart(p.a.z(), p.b.z(), q.a.z(), q.b.z()))
            return;
        const Piece &first = p.body < q.body ? p : q, &second = p.body < q.body ? q : p;
        if (const auto found = nearestApart(first, second, near); found && found->between < near - 1e-9)
            keep(first.body, second.body, *found);
    }

    // Nearest approach away from every joint that both meet.
    std::optional<Near> nearestApart(const Piece& p, const Piece& q, double near) const
    {
        std::vector<std::pair<Vec, Vec>> ps{{p.a, p.b}}, qs{{q.a, q.b}};
        for (const Vec& joint : sharedJoints(p.body, q.body))
            for (auto* parts : {&ps, &qs}) {
                std::vector<std::pair<Vec, Vec>> kept;
                for (const auto& [a, b] : *parts)
                    for (const auto& part : outside(a, b, joint, joinedWithin * near))
                        kept.push_back(part);
                *parts = std::move(kept);
            }
        std::optional<Near> best;
        for (const auto& [a, b] : ps)
            for (const auto& [c, d] : qs)
                if (const Near here = nearest(a, b, c, d); !best || here.between < best->between)
                    best = here;
        return best;
    }

    std::vector<Vec> sharedJoints(std::size_t p, std::size_t q) const
    {
        std::vector<Vec> joints;
        for (std::size_t side = 0; side < 2; ++side)
            for (const Joint& other : m_bodies[q].ends)
                if (m_bodies[p].ends[side].met.valid() && m_bodies[p].ends[side].met == other.met) {
                    const auto& spots = m_bodies[p].spots;
                    joints.emplace_back(side == 0 ? spots.front() : spots.back());
                }
        return joints;
    }

    void keep(std::size_t first, std::size_t second, const Near& found)
    {
        const units::Length between = units::metres(found.between);
        const units::Length needed = m_bodies[first].radius + m_bodies[second].radius;
        for (auto* worst : {&m_worst[first], &m_worst[second]})
            if (!*worst || needed - between > (*worst)->needed - (*worst)->between)
                *worst = PipeCrossing{m_bodies[first].run, m_bodies[second].run, between, needed, spotOf(found.at)};
    }

    const std::vector<PipeBody>& m_bodies;
    double m_clearance;
    double m_cell = 1.0;
    std::vector<Piece> m_pieces;
    std::vector<std::optional<PipeCrossing>> m_worst; // by body
};

} // namespace

std::vector<PipeCrossing> crossingsOf(const std::vector<PipeBody>& bodies, units::Length clearance)
{
    return Search(bodies, units::inMetres(clearance)).run();
}

} // namespace sumpwright::space
