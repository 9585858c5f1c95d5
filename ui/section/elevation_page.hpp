// ElevationPage: the front elevation. What stands nearer hides what stands behind; what is chosen lies on top.
#pragma once

#include "core/report/elevation.hpp"
#include "ui/section/page.hpp"

namespace sumpwright::ui::section
{

class ElevationPage final : public Page
{
public:
    void show(const Shown& shown) override;
    void paint(QPainter& painter, const Sheet& sheet, const Pens& pens) const override;
    void letter(const Sheet& sheet, const Pens& pens, canvas::Clutter& clutter,
                std::vector<canvas::LabelWish>& wishes) const override;
    const std::vector<LevelHandle>& handles() const override { return m_handles; }
    std::vector<Target> targets(const Sheet& sheet) const override;
    const std::vector<LevelMark>& marks() const override { return m_marks; }
    QRectF extent() const override;
    QString empty() const override;
    QString told() const override;

private:
    // Vessels that cover each other line for line: the nearest speaks for all.
    struct Group {
        std::size_t front = 0;
        std::vector<std::string> tags;
        std::optional<units::Elevation> low, high; // of the water
    };
    void collectHandles();
    void collectMarks();
    void group();
    void paintElement(QPainter& painter, const Sheet& sheet, const Pens& pens, base::Id id) const;
    void paintBuilding(QPainter& painter, const Sheet& sheet, const Pens& pens) const;
    void keepToItsOwn(const Sheet& sheet, const report::VesselProfile& vessel, canvas::LabelWish& wish) const;
    bool hidden(const report::VesselProfile& vessel) const;

    plan::Plan m_plan;
    report::FrontElevation m_elevation;
    std::unordered_map<base::Id, std::size_t> m_vesselAt, m_runAt;
    std::vector<Group> m_groups;
    std::vector<LevelHandle> m_handles;
    std::vector<LevelMark> m_marks;
};

} // namespace sumpwright::ui::section
