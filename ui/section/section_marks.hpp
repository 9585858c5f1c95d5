// What is marked on a section beside vessels and pipes: falls and what they want, the grade line, free-board, the
// highest point; and all its letters.
#pragma once

#include "core/report/grade_line.hpp"
#include "ui/section/page.hpp"

namespace sumpwright::ui::section
{

QPolygonF lineOf(const Sheet& sheet, const report::SectionRun& run);

// "1:48", "little fall 1:240, needs 14 mm more", "rises 120 mm, needs 144 mm more fall"
QString fallWords(const report::Fall& fall, const canvas::Figures& figures);

void paintFalls(QPainter& painter, const Sheet& sheet, const Pens& pens, const report::SectionPath& path);
void paintGrade(QPainter& painter, const Sheet& sheet, const Pens& pens,
                const std::vector<report::GradeStretch>& grade);
void paintFreeBoards(QPainter& painter, const Sheet& sheet, const Pens& pens, const report::SectionPath& path);
void paintHighest(QPainter& painter, const Sheet& sheet, const Pens& pens, const report::SectionPath& path);

void letterSection(const Sheet& sheet, const Pens& pens, const plan::Plan& plan, const report::SectionPath& path,
                   const std::vector<report::GradeStretch>& grade, const std::vector<LevelHandle>& handles,
                   canvas::Clutter& clutter, std::vector<canvas::LabelWish>& wishes);

} // namespace sumpwright::ui::section
