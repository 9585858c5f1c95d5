// The form of a pipe run: K and its override, inverts, falls, ends, valves.
#include "tests/ui/panel_bench.hpp"

namespace sumpwright::tests
{
namespace
{

class RunProperties : public PanelBench
{
protected:
    const plan::Run& run(base::Id id) const { return *now().runs.find(id); }
    double kOfFirstBend()
    {
        for (const auto& loss : assessment::find(results()->flow->runs, system.main)->fittings)
            if (loss.role == assessment::FittingRole::bend)
                return loss.k;
        ADD_FAILURE() << "no bend";
        return 0.0;
    }
    // The entry of the first bend's K.
    QString firstBendName()
    {
        for (auto* field : panel.form()->findChildren<ui::properties::EntryField*>())
            if (field->line().accessibleName().startsWith(QStringLiteral("K of Bend")))
                return field->line().accessibleName();
        return {};
    }
    QPushButton* button(const QString& start)
    {
        for (auto* each : panel.form()->findChildren<QPushButton*>())
            if (each->accessibleName().startsWith(start) && each->isVisible())
                return each;
        return nullptr;
    }
};

TEST_F(RunProperties, ShowEveryKAndTakeAnOverrideAndGiveItBack)
{
    document.select({system.main});
    const double fromCatalogue = kOfFirstBend();
    const QByteArray name = firstBendName().toUtf8();
    ASSERT_FALSE(name.isEmpty());
    EXPECT_EQ(shown(name), "");
    EXPECT_NEAR(entry(name).line().placeholderText().toDouble(), fromCatalogue, 0.01 * fromCatalogue);
    EXPECT_FALSE(button(QStringLiteral("Back to the catalogue")));

    enter(name, QStringLiteral("1.7"));
    EXPECT_DOUBLE_EQ(kOfFirstBend(), 1.7);
    EXPECT_EQ(shown(name), "1.7");
    bool told = false;
    for (auto* field : panel.form()->findChildren<ui::properties::ResultField*>())
        told = told || field->shownText().contains(QStringLiteral("entered by hand"));
    EXPECT_TRUE(told);

    ASSERT_TRUE(button(QStringLiteral("Back to the catalogue")));
    QTest::keyClick(button(QStringLiteral("Back to the catalogue")), Qt::Key_Space);
    EXPECT_DOUBLE_EQ(kOfFirstBend(), fromCatalogue);
    EXPECT_EQ(shown(name), "");
    enter(name, QStringLiteral("-1"));
    EXPECT_FALSE(refusal(name).empty());
}

TEST_F(RunProperties, GravityRunsShowAndTakeTheInvert)
{
    document.select({system.drainB}); // its far end is open
    const auto& pipe = **document.catalogue()->pipe(run(system.drainB).pipeId);
    const std::size_t last = run(system.drainB).vertices.size() - 1;
    const QByteArray name = QStringLiteral("Vertex %1, invert").arg(last + 1).toUtf8();
    const double centre = units::inMetres(run(system.drainB).vertices[last].level);
    EXPECT_NEAR(QString::fromStdString(shown(name)).remove(u'+').remove(QStringLiteral(" m")).toDouble(),
                centre - units::inMetres(pipe.bore) / 2.0, 6e-4);
    const int before = steps();
    enter(name, QStringLiteral("0.480 m"));
    EXPECT_EQ(refusal(name), "");
    EXPECT_NEAR(units::inMetres(run(system.drainB).vertices[last].level), 0.48 + units::inMetres(pipe.bore) / 2.0,
                1e-6);
    EXPECT_EQ(steps(), before + 1);
}

TEST_F(RunProperties, PressureRunsHaveNoInvert)
{
    document.select({system.main});
    for (auto* field : panel.form()->findChildren<ui::properties::EntryField*>())
        EXPECT_FALSE(field->line().accessibleName().endsWith(QStringLiteral("invert")));
}

TEST_F(RunProperties, AValvesOpeningIsEnteredInPerCent)
{
    document.select({system.toBed});
    enter("Open, valve V1", QStringLiteral("60"));
    ASSERT_EQ(run(system.toBed).valves.size(), 1u);
    EXPECT_DOUBLE_EQ(run(system.toBed).valves[0].opening, 0.6);
    enter("Open, valve V1", QStringLiteral("45 %"));
    EXPECT_DOUBLE_EQ(run(system.toBed).valves[0].opening, 0.45);
    enter("Open, valve V1", QStringLiteral("140"));
    EXPECT_DOUBLE_EQ(run(system.toBed).valves[0].opening, 0.45);
    EXPECT_FALSE(refusal("Open, valve V1").empty());
}

TEST_F(RunProperties, AnEndIsConnectedFromAList)
{
    document.select({system.drainB});
    EXPECT_TRUE(std::holds_alternative<plan::OpenEnd>(run(system.drainB).to));
    QComboBox& to = choice("To");
    EXPECT_EQ(to.currentText().toStdString(), "Open end");
    // A port that a run already meets is not offered.
    const auto& taken = std::get<plan::PortEnd>(run(system.drainA).to);
    EXPECT_EQ(to.findData(QStringLiteral("port/%1/%2").arg(taken.vessel.number).arg(taken.port.number)), -1);
    document.commit(
        plan::addPort(system.sump, plan::PortKind::inlet, test::at(-0.3, 0.2), units::elevationMetres(0.5)));
    const auto fresh = vesselNow(system.sump).ports.back();
    choose("To", QStringLiteral("Sump S1, inlet ") + QString::fromStdString(fresh.tag));
    const auto* end = std::get_if<plan::PortEnd>(&run(system.drainB).to);
    ASSERT_TRUE(end);
    EXPECT_EQ(end->port, fresh.id);
}

TEST_F(RunProperties, PipeOfSeveralRunsChangesInOneStep)
{
    document.select({system.main, system.toBed});
    const int before = steps();
    const auto& pipes = document.catalogue()->pipes();
    const auto wanted = std::find_if(pipes.begin(), pipes.end(), [](const auto& p) { return p.id == "pvcu-pn16-40"; });
    ASSERT_NE(wanted, pipes.end());
    choose("Pipe", QString::fromStdString(wanted->name));
    EXPECT_EQ(run(system.main).pipeId, "pvcu-pn16-40");
    EXPECT_EQ(run(system.toBed).pipeId, "pvcu-pn16-40");
    EXPECT_EQ(steps(), before + 1);
}

} // namespace
} // namespace sumpwright::tests
