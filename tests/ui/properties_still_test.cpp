// The form keeps still: rows stay where they are whatever results come, are missing or grow stale.
#include "tests/ui/panel_bench.hpp"
#include "ui/properties/result_field.hpp"

namespace sumpwright::tests
{
namespace
{

using ui::properties::ResultField;

class StillForm : public PanelBench
{
protected:
    // Where every row begins, from the top of the form.
    std::vector<int> tops()
    {
        QTest::qWait(1); // layouts settle
        std::vector<int> all;
        for (auto* field : panel.form()->findChildren<QWidget*>())
            if (field->isVisible() &&
                (qobject_cast<ResultField*>(field) || qobject_cast<ui::properties::EntryField*>(field)))
                all.push_back(field->mapTo(panel.form(), QPoint()).y());
        EXPECT_GT(all.size(), 5u);
        return all;
    }
};

TEST_F(StillForm, HasTheSameRowsBeforeResultsAndAfter)
{
    for (const base::Id id : {system.sump, system.bedA, system.pump, system.main, system.tankDrain}) {
        ui::document::Document fresh;
        fresh.reset(system.plan);
        ui::properties::PropertiesPanel other(fresh);
        fresh.select({id});
        other.show();
        const auto shownRows = [&other] {
            std::vector<const ResultField*> rows;
            for (const auto* field : other.form()->findChildren<ResultField*>())
                if (field->isVisible())
                    rows.push_back(field);
            return rows;
        };
        ASSERT_FALSE(fresh.assessment());
        const auto before = shownRows();
        ASSERT_FALSE(before.empty());
        for (const auto* row : before)
            EXPECT_EQ(row->shownText(), QStringLiteral("\u2013"));
        ASSERT_TRUE(QTest::qWaitFor([&] { return fresh.assessment() && !fresh.stale(); }, 20000));
        const auto after = shownRows();
        for (const auto* row : before)
            EXPECT_NE(std::find(after.begin(), after.end(), row), after.end()) << id.number;
    }
}

TEST_F(StillForm, ShowsADashWhereTheResultIsGoneAndKeepsTheRow)
{
    document.select({system.pump});
    results();
    const auto rows = tops().size();
    document.commit(plan::setRunningLevel({system.sump}, std::nullopt));
    results();
    EXPECT_EQ(tops().size(), rows);
    document.undoStack().undo();
    results();
    EXPECT_EQ(tops().size(), rows);
}

TEST_F(StillForm, KeepsEveryRowInPlaceWhenResultsGrowStale)
{
    int changes = 0;
    for (const base::Id id : {system.sump, system.bedA, system.tank, system.pump, system.main}) {
        document.select({id});
        results();
        for (const int width : {340, 380, 420, 470, 530}) {
            panel.resize(width, 900);
            const auto before = tops();
            document.commit(plan::setPumpSpeed({system.pump}, 0.8 + 0.01 * ++changes));
            ASSERT_TRUE(document.stale());
            panel.form()->refreshResults();
            EXPECT_EQ(tops(), before) << width;
            results();
        }
    }
}

// Down is allowed once, where a number needs a further line; up again it never goes while the gesture lasts.
TEST_F(StillForm, NeverMovesRowsUpWhileAGestureLasts)
{
    panel.resize(360, 900);
    document.select({system.sump});
    results();
    auto last = tops();
    for (int step = 0; step < 40; ++step) {
        const double depth = 0.5 + 0.05 * (step % 20);
        ASSERT_FALSE(document.preview(plan::setWallHeight({system.sump}, units::metres(depth))));
        results();
        const auto now = tops();
        ASSERT_EQ(now.size(), last.size()) << step;
        for (std::size_t row = 0; row < now.size(); ++row)
            EXPECT_GE(now[row], last[row]) << "row " << row << " at step " << step;
        last = now;
    }
    document.dropPreview();
}

} // namespace
} // namespace sumpwright::tests
