#include "core/plan/edits/fixture.hpp"

#include "core/plan/edits/draft.hpp"

namespace sumpwright::plan
{

namespace
{

bool hasTwoEnds(FixtureKind kind) { return kind == FixtureKind::wall || kind == FixtureKind::door; }

} // namespace

Edit setFixtureEnds(base::Id id, Point from, Point to)
{
    return changeEach<Fixture>("edit.fixture-ends", {id}, [from, to](Fixture& fixture) {
        fixture.from = from;
        fixture.to = hasTwoEnds(fixture.kind) ? to : from;
    });
}

Edit setFixtureKind(std::vector<base::Id> fixtures, FixtureKind kind)
{
    return changeEach<Fixture>("edit.fixture-kind", std::move(fixtures), [kind](Fixture& fixture) {
        if (!hasTwoEnds(kind))
            fixture.to = fixture.from;
        else if (!hasTwoEnds(fixture.kind))
            fixture.to = fixture.from + Point{units::metres(1.0), units::metres(0.0)};
        fixture.kind = kind;
    });
}

Edit setFixtureSize(std::vector<base::Id> fixtures, units::Length size)
{
    return setEach<Fixture>("edit.fixture-size", std::move(fixtures), &Fixture::size, size);
}

Edit setFixtureHeight(std::vector<base::Id> fixtures, units::Length height)
{
    return setEach<Fixture>("edit.fixture-height", std::move(fixtures), &Fixture::height, height);
}

Edit setFixtureLevel(std::vector<base::Id> fixtures, units::Elevation level)
{
    return setEach<Fixture>("edit.fixture-level", std::move(fixtures), &Fixture::level, level);
}

} // namespace sumpwright::plan
