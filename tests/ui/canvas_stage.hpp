// CanvasStage: a document, a plan view and its tools on screen, driven by mouse and keys as a person would.
#pragma once

#include <QTest>

#include <gtest/gtest.h>

#include "tests/ui/canvas_sample.hpp"
#include "ui/canvas/canvas_settings.hpp"
#include "ui/canvas/plan_scene.hpp"
#include "ui/canvas/plan_view.hpp"
#include "ui/document/document.hpp"
#include "ui/tools/toolbox.hpp"

namespace sumpwright::test
{

class CanvasStage : public testing::Test
{
protected:
    CanvasStage();
    void SetUp() override;

    void open(const plan::Plan& plan); // and shows 12 x 9 m around the origin's quarter
    QPoint pixelOf(double x, double y) const;
    void hover(double x, double y, Qt::KeyboardModifiers modifiers = {});
    void click(double x, double y, Qt::KeyboardModifiers modifiers = {});
    void doubleClick(double x, double y);
    // Press, several moves, release. `modifiers` are held from the first move on.
    void drag(plan::Point from, plan::Point to, Qt::KeyboardModifiers modifiers = {});
    void press(double x, double y, Qt::KeyboardModifiers modifiers = {});
    void moveTo(double x, double y, Qt::KeyboardModifiers modifiers = {}); // button held
    void release(double x, double y, Qt::KeyboardModifiers modifiers = {});
    void key(Qt::Key key, Qt::KeyboardModifiers modifiers = {});
    void type(const char* text);
    int steps(); // undo steps taken so far

    const plan::Plan& plan() const { return document.committed(); }
    const plan::Vessel& vessel(const char* tag) const { return *plan().vessels.find(idOf(plan(), tag)); }
    const plan::Run& run(const char* tag) const { return *plan().runs.find(idOf(plan(), tag)); }
    std::string said; // the last quiet line

    ui::document::Document document;
    ui::canvas::CanvasSettings settings;
    ui::canvas::PlanView view;
    ui::tools::Toolbox toolbox;
};

// Lengths to 0.01 mm.
testing::AssertionResult isAt(plan::Point place, double x, double y);

} // namespace sumpwright::test
