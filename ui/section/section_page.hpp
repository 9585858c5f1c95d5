// SectionPage: the water's way unrolled, with its levels, falls, free-board and the grade line.
#pragma once

#include "core/report/grade_line.hpp"
#include "ui/section/page.hpp"

namespace sumpwright::ui::section
{

class SectionPage final : public Page
{
public:
    // Which way; nothing: the usual one of the first pump that has one.
    void choose(std::optional<report::WayChoice> choice) { m_choice = choice; }
    const std::optional<report::WayChoice>& choice() const { return m_choice; }
    const std::optional<report::SectionPath>& path() const { return m_path; }

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
    void collectHandles();
    void addVesselHandles(const report::SectionVessel& vessel);
    void collectMarks();

    plan::Plan m_plan;
    std::optional<report::WayChoice> m_choice;
    std::optional<report::SectionPath> m_path;
    std::vector<report::GradeStretch> m_grade;
    std::vector<LevelHandle> m_handles;
    std::vector<LevelMark> m_marks;
};

} // namespace sumpwright::ui::section
