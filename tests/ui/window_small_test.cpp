// The window on a small screen: everything inside it, and the plan whole in what room is left.
#include "tests/ui/window_fixture.hpp"
#include "ui/canvas/plan_scene.hpp"

namespace sumpwright::tests
{
namespace
{

// A screen of 1920 x 1080 with everything drawn twice as large, less the frame of the window.
constexpr QSize smallRoom(944, 492);

TEST_F(OpenWindow, FitsASmallScreenWithThePlanWholeInIt)
{
    window.resize(smallRoom);
    QTest::qWait(50);
    EXPECT_LE(window.minimumSizeHint().width(), smallRoom.width());
    EXPECT_LE(window.minimumSizeHint().height(), smallRoom.height());
    EXPECT_EQ(window.size(), smallRoom);

    ASSERT_TRUE(
        window.files().openPath(QStringLiteral(SUMPWRIGHT_SOURCE "/resources/examples/community_shed.sumpwright")));
    ASSERT_TRUE(QTest::qWaitFor([&] { return work.document.assessment() && !work.document.stale(); }, 20000));
    QTest::qWait(100); // the signs come with the results, and take room from the plan
    auto& view = window.planView();
    const QRect seen = view.mapFromScene(view.planScene().content()).boundingRect();
    EXPECT_TRUE(view.viewport()->rect().contains(seen))
        << seen.x() << ", " << seen.y() << ", " << seen.width() << " x " << seen.height();
    EXPECT_GT(std::max(seen.width() * 2, seen.height() * 4), view.viewport()->width() / 2) << "needlessly small";
}

} // namespace
} // namespace sumpwright::tests
