// Letters: the wishes for what is written beside vessels, pipes and levels on a sheet, in pixels.
#pragma once

#include "ui/section/page.hpp"

namespace sumpwright::ui::section
{

// Tells several labels of one element apart.
namespace part
{
constexpr int tag = 0;
constexpr int water = 1;
constexpr int freeBoard = 2;
constexpr int level = 10;   // and on: the levels of an element, one each
constexpr int fall = 100;   // and on: the falls of a run
constexpr int invert = 200; // and on: their ends
constexpr int note = 300;   // and on
} // namespace part

canvas::LabelText words(const QString& text);
canvas::LabelText strong(const QString& text);
canvas::LabelText levelText(const QString& text, bool stale); // with a level triangle before it

// Around a place: above, below, right and left of it, first come first best; `off` pixels away.
void around(canvas::LabelWish& wish, QPointF place, double off, bool sidesFirst = false);

// The tag of a vessel above its rim, or inside near the top; `tag` may stand for several behind one another.
void letterVessel(const Sheet& sheet, const Pens& pens, const report::VesselProfile& vessel, const QString& tag,
                  const QString& water, std::vector<canvas::LabelWish>& wishes);
// Of a chosen vessel all its levels, one under the other beside it; of other chosen elements each where it lies; of
// what is not chosen bare and where there is room.
void letterLevels(const Sheet& sheet, const Pens& pens, const plan::Plan& plan, const std::vector<LevelHandle>& handles,
                  bool everywhere, std::vector<canvas::LabelWish>& wishes);

// The water level, or both where several vessels behind one another differ.
QString waterText(const Pens& pens, std::optional<units::Elevation> low, std::optional<units::Elevation> high);

// Outlines and water lines letters keep off.
void addClutter(const Sheet& sheet, const report::VesselProfile& vessel, canvas::Clutter& clutter);
void addClutter(const QPolygonF& line, double half, canvas::Clutter& clutter);

} // namespace sumpwright::ui::section
