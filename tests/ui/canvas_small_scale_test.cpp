// Small drawings, 1:100 and beyond: signs and notes shrink with what is drawn, so that a plan zoomed out stays a clean
// drawing; at the scales one works at they keep their size on the sheet.
#include "tests/ui/canvas_stage.hpp"

#include "core/plan/edits/place.hpp"
#include "ui/canvas/element_item.hpp"
#include "ui/canvas/note_item.hpp"
#include "ui/canvas/run_item.hpp"

namespace sumpwright::test
{

using namespace ui::canvas;

namespace
{
constexpr double sheetPixels = 96.0 / 25.4; // an inch is 96 pixels

class SmallScale : public CanvasStage
{
protected:
    void SetUp() override
    {
        CanvasStage::SetUp();
        open(applied(samplePlan(), plan::placeNote(at(1.0, 4.6), "Keep this door free: the tank goes out that way")));
    }
    // Of an element at 1:denominator, in pixels.
    QSizeF onSheet(base::Id id, double denominator)
    {
        view.zoomToScale(denominator);
        const auto* item = view.planScene().item(id);
        EXPECT_TRUE(item);
        return item ? item->extent().size() * view.zoom() : QSizeF();
    }
    double millimetres(base::Id id, double denominator)
    {
        return onSheet(id, denominator).width() * denominator / sheetPixels;
    }
};
} // namespace

TEST_F(SmallScale, SignsKeepTheirSizeOnTheSheetWhereOneWorks)
{
    const base::Id pump = idOf(plan(), "P1");
    EXPECT_NEAR(onSheet(pump, 50.0).width(), onSheet(pump, 40.0).width(), 0.01);
}

TEST_F(SmallScale, SignsCoverNoMoreOfThePlanTheSmallerItIsDrawn)
{
    const base::Id pump = idOf(plan(), "P1");
    const base::Id tee = (*plan().tees.begin())->id;
    for (const auto id : {pump, tee}) {
        EXPECT_NEAR(millimetres(id, 120.0), millimetres(id, 80.0), 1.0);
        EXPECT_LT(onSheet(id, 200.0).width(), 0.45 * onSheet(id, 50.0).width());
        EXPECT_GT(onSheet(id, 500.0).width(), 2.0) << "still to be seen";
    }
}

TEST_F(SmallScale, AValveShrinksToo)
{
    view.zoomToScale(50.0);
    for (const auto& run : plan().runs) {
        if (run->valves.empty())
            continue;
        const auto& item = dynamic_cast<const RunItem&>(*view.planScene().item(run->id));
        const double at50 = item.fittingSize() * view.zoom();
        view.zoomToScale(120.0);
        EXPECT_LT(item.fittingSize() * view.zoom(), 0.6 * at50);
        return;
    }
    FAIL() << "the sample has a valve";
}

TEST_F(SmallScale, ANoteShrinksAndThenGivesWayToASignThatStillTellsItsWords)
{
    const base::Id note = (*std::prev(plan().notes.end()))->id;
    EXPECT_NEAR(millimetres(note, 85.0), millimetres(note, 70.0), 5.0);
    const auto& item = dynamic_cast<const NoteItem&>(*view.planScene().item(note));
    EXPECT_TRUE(item.worded());
    EXPECT_LT(onSheet(note, 120.0).width(), 10.0);
    EXPECT_FALSE(item.worded());
    EXPECT_TRUE(item.description().contains(QStringLiteral("the tank goes out that way")));
    view.zoomToScale(50.0);
    EXPECT_TRUE(item.worded());
}

} // namespace sumpwright::test
