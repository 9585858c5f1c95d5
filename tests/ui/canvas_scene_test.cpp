// The scene equals the plan, changes only what changed, and is seen by assistive technology.
#include "tests/ui/canvas_stage.hpp"

#include <QAccessible>
#include <QApplication>
#include <QUndoStack>

#include <random>

#include "core/plan/edits/copy.hpp"
#include "core/plan/edits/delete.hpp"
#include "core/plan/edits/move.hpp"
#include "core/plan/edits/vessel.hpp"
#include "ui/canvas/element_item.hpp"
#include "ui/canvas/run_item.hpp"
#include "ui/canvas/scene_point.hpp"

namespace sumpwright::test
{

using namespace ui::canvas;

namespace
{
// What the drawing shows of each element, as text: kind, place, extent.
std::string pictureOf(const PlanScene& scene)
{
    std::string text;
    for (const auto* item : scene.elements()) {
        const QRectF extent = item->extent();
        char line[200];
        std::snprintf(line, sizeof line, "%llu %.3f %.3f %.3f %.3f %.3f\n",
                      static_cast<unsigned long long>(item->id().number), extent.x(), extent.y(), extent.width(),
                      extent.height(), item->rotation());
        text += line;
        if (const auto* run = dynamic_cast<const RunItem*>(item))
            for (const auto& stretch : run->stretches()) {
                std::snprintf(line, sizeof line, "  %.3f %.3f %d\n", stretch.from, stretch.to,
                              static_cast<int>(stretch.kind));
                text += line;
            }
    }
    return text;
}

std::string pictureOfFresh(const plan::Plan& plan, const PlanScene& like)
{
    PlanScene fresh(like.drawing().catalogue);
    fresh.setPixel(like.drawing().pixel);
    fresh.showPlan(plan);
    return pictureOf(fresh);
}

plan::Edit randomEdit(std::mt19937& random, const plan::Plan& plan)
{
    std::vector<base::Id> ids;
    const auto add = [&ids](const auto& table) {
        for (const auto& element : table)
            ids.push_back(element->id);
    };
    add(plan.vessels), add(plan.pumps), add(plan.runs), add(plan.fixtures), add(plan.notes), add(plan.dimensions);
    const auto pick = [&] { return ids[random() % ids.size()]; };
    const auto step = [&] { return (static_cast<int>(random() % 11) - 5) * 0.1; };
    switch (random() % 6) {
    case 0:
        return plan::deleteElements({pick()});
    case 1:
        return plan::duplicate({pick(), pick()}, at(0.4, step()));
    case 2:
        return plan::raiseElements({pick()}, units::metres(step()));
    case 3:
        return plan::turnElements({pick()}, at(3.0, 3.0), units::degrees(30.0 * step()));
    default:
        return plan::moveElements({pick(), pick()}, at(step(), step()));
    }
}
} // namespace

class Scene : public CanvasStage
{
};

TEST_F(Scene, HasOneItemAnElement)
{
    open(samplePlan());
    const auto& shown = plan();
    EXPECT_EQ(view.planScene().elements().size(), shown.vessels.size() + shown.pumps.size() + shown.runs.size() +
                                                      shown.tees.size() + shown.fixtures.size() + shown.notes.size() +
                                                      shown.dimensions.size());
    const auto* tank = view.planScene().item(idOf(shown, "T1"));
    ASSERT_NE(tank, nullptr);
    EXPECT_EQ(tank->extent(), QRectF(600.0, -5600.0, 2000.0, 2000.0)) << "2 m across, around 1.6, 4.6";
}

TEST_F(Scene, RenewsOnlyTheItemsWhoseElementsChanged)
{
    open(samplePlan());
    document.commit(plan::moveElements({idOf(plan(), "PP1")}, at(0.2, 0.0)));
    EXPECT_EQ(view.planScene().itemsRenewed(), 1);
    document.commit(plan::moveElements({idOf(plan(), "B1")}, at(0.1, 0.0)));
    EXPECT_EQ(view.planScene().itemsRenewed(), 3) << "the bed and the two runs that meet it";
}

TEST_F(Scene, EqualsThePlanAfterRandomEditsUndoneAndRedone)
{
    const int seeds = 12;
    int changed = 0;
    for (int seed = 1; seed <= seeds; ++seed) {
        std::mt19937 random(static_cast<unsigned>(seed));
        open(samplePlan());
        const std::string first = pictureOf(view.planScene());
        for (int i = 0; i < 25 && !plan().runs.empty(); ++i) {
            document.commit(randomEdit(random, plan()));
            ASSERT_EQ(pictureOf(view.planScene()), pictureOfFresh(plan(), view.planScene()))
                << "seed " << seed << ", edit " << i;
        }
        const std::string last = pictureOf(view.planScene());
        changed += first != last ? 1 : 0;
        while (document.undoStack().canUndo())
            document.undoStack().undo();
        EXPECT_EQ(pictureOf(view.planScene()), first) << "seed " << seed;
        while (document.undoStack().canRedo())
            document.undoStack().redo();
        EXPECT_EQ(pictureOf(view.planScene()), last) << "seed " << seed;
    }
    EXPECT_EQ(changed, seeds);
}

TEST_F(Scene, BreaksTheLowerRunAndMendsItWhenTheUpperOneGoes)
{
    open(samplePlan());
    const auto* trunk = dynamic_cast<const RunItem*>(view.planScene().item(idOf(plan(), "R13")));
    ASSERT_NE(trunk, nullptr);
    const auto crossed = trunk->surroundings().breaks.size();
    EXPECT_GE(crossed, 1U) << "the rising main crosses above the drain";
    document.commit(plan::deleteElements({idOf(plan(), "R1")}));
    trunk = dynamic_cast<const RunItem*>(view.planScene().item(idOf(plan(), "R13")));
    ASSERT_NE(trunk, nullptr);
    EXPECT_LT(trunk->surroundings().breaks.size(), crossed);
}

TEST_F(Scene, FindsWhatLiesAtAPlaceTopmostFirst)
{
    open(samplePlan());
    const auto found = view.planScene().at(toScene(at(2.1, 2.2)));
    ASSERT_GE(found.size(), 2U);
    EXPECT_EQ(found.back(), idOf(plan(), "S1")) << "the sump lies below its pump";
    EXPECT_NE(std::find(found.begin(), found.end(), idOf(plan(), "P1")), found.end());
}

TEST_F(Scene, MarqueeTakesTheEnclosedOrTheTouched)
{
    open(samplePlan());
    const QRectF box = QRectF(toScene(at(3.4, 0.6)), toScene(at(5.0, 2.9))).normalized();
    const auto enclosed = view.planScene().within(box, false);
    const auto touched = view.planScene().within(box, true);
    const auto bed = idOf(plan(), "B5");
    const auto trunk = idOf(plan(), "R18");
    const auto has = [](const auto& ids, base::Id id) { return std::find(ids.begin(), ids.end(), id) != ids.end(); };
    EXPECT_TRUE(has(enclosed, bed));
    EXPECT_FALSE(has(enclosed, trunk)) << "it goes on to the sump";
    EXPECT_TRUE(has(touched, bed));
    EXPECT_TRUE(has(touched, trunk));
}

TEST_F(Scene, ShowsEachElementToAssistiveTechnology)
{
    open(samplePlan());
    document.select({idOf(plan(), "B2")});
    auto* list = QAccessible::queryAccessibleInterface(&view);
    ASSERT_NE(list, nullptr);
    EXPECT_EQ(list->role(), QAccessible::List);
    EXPECT_EQ(list->childCount(), static_cast<int>(view.planScene().elements().size()));
    int selected = 0;
    for (int i = 0; i < list->childCount(); ++i) {
        auto* child = list->child(i);
        ASSERT_NE(child, nullptr);
        EXPECT_EQ(child->role(), QAccessible::ListItem);
        EXPECT_FALSE(child->text(QAccessible::Name).isEmpty());
        EXPECT_EQ(list->indexOfChild(child), i);
        EXPECT_EQ(child->parent()->object(), &view);
        if (child->state().selected) {
            ++selected;
            EXPECT_TRUE(child->text(QAccessible::Name).endsWith(QLatin1String("B2")))
                << child->text(QAccessible::Name).toStdString();
            EXPECT_TRUE(child->text(QAccessible::Description).contains(QLatin1String("7.8")))
                << child->text(QAccessible::Description).toStdString();
            EXPECT_FALSE(child->rect().isEmpty());
        }
    }
    EXPECT_EQ(selected, 1);
}

} // namespace sumpwright::test
