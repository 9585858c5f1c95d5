// The parts in the window: found, read with their source, own ones made by keys, kept while used, imported and
// exported.
#include <gtest/gtest.h>

#include <QComboBox>
#include <QFile>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QTest>
#include <QTreeView>
#include <QUndoStack>

#include "core/plan/edits/own_parts.hpp"
#include "core/plan/edits/run.hpp"
#include "tests/support/edited_plan.hpp"
#include "tests/support/scratch_folder.hpp"
#include "ui/document/document.hpp"
#include "ui/parts/import_preview.hpp"
#include "ui/parts/parts_panel.hpp"
#include "ui/properties/choice_field.hpp"
#include "ui/properties/entry_field.hpp"

namespace sumpwright::tests
{
namespace
{

using ui::parts::PartsPanel;

class PartsBench : public testing::Test
{
protected:
    PartsBench()
    {
        document.reset(system.plan);
        panel.resize(420, 900);
        panel.show();
        EXPECT_TRUE(QTest::qWaitForWindowExposed(&panel));
        panel.activateWindow();
        EXPECT_TRUE(QTest::qWaitForWindowActive(&panel));
    }
    QTreeView& list() const { return *panel.findChild<QTreeView*>(); }
    int rows() const { return list().model()->rowCount(); }
    QString cell(int row, int column) const { return list().model()->index(row, column).data().toString(); }
    QString details() const
    {
        for (auto* label : panel.findChildren<QLabel*>())
            if (label->accessibleName() == QStringLiteral("About the part"))
                return label->text();
        return {};
    }
    QLineEdit& line(const char* name) const
    {
        QTest::qWait(1); // rows put into a form that is shown appear with the next turn
        for (auto* each : panel.findChildren<QLineEdit*>())
            if (each->accessibleName() == QString::fromUtf8(name) && each->isVisible())
                return *each;
        throw std::runtime_error(name);
    }
    void type(const char* name, const QString& text)
    {
        QLineEdit& field = line(name);
        field.setFocus(Qt::TabFocusReason);
        field.selectAll();
        text.isEmpty() ? QTest::keyClick(&field, Qt::Key_Delete) : QTest::keyClicks(&field, text);
        QTest::keyClick(&field, Qt::Key_Return);
    }
    std::string refusal(const char* name) const
    {
        for (auto* each : panel.findChildren<ui::properties::EntryField*>())
            if (each->line().accessibleName() == QString::fromUtf8(name) && each->isVisible())
                return each->refusalText().toStdString();
        return {};
    }
    QPushButton& button(const char* words) const
    {
        for (auto* each : panel.findChildren<QPushButton*>())
            if (each->text().remove(u'&') == QString::fromUtf8(words))
                return *each;
        throw std::runtime_error(words);
    }
    void press(const char* words) { QTest::keyClick(&button(words), Qt::Key_Space); }
    const plan::OwnParts& own() const { return *document.committed().ownParts; }
    QString written(const char* name, const QByteArray& bytes)
    {
        const QString path = QString::fromStdString((folder / name).string());
        QFile file(path);
        EXPECT_TRUE(file.open(QIODevice::WriteOnly));
        file.write(bytes);
        return path;
    }

    test::ScratchFolder folder;
    test::SmallSystem system;
    ui::document::Document document;
    QString kept = QString::fromStdString((folder / "data/parts.json").string());
    PartsPanel panel{document,
                     [] {
                         return ui::text::DisplaySettings{units::UnitSystem::metric, units::NumberStyle::point()};
                     },
                     kept};
};

} // namespace

TEST_F(PartsBench, ListsEveryRowWithItsSourceAndRange)
{
    const auto tables = document.catalogue();
    EXPECT_EQ(rows(), static_cast<int>(tables->pipes().size() + tables->fittings().size() + tables->pumps().size()));
    for (int row = 0; row < rows(); ++row) {
        list().setCurrentIndex(list().model()->index(row, 0));
        EXPECT_TRUE(details().contains(QStringLiteral("Source: "))) << cell(row, 0).toStdString();
        EXPECT_TRUE(details().contains(QStringLiteral("Holds for: "))) << cell(row, 0).toStdString();
        EXPECT_FALSE(cell(row, 1).isEmpty()) << cell(row, 0).toStdString();
        EXPECT_FALSE(cell(row, 2).isEmpty()) << cell(row, 0).toStdString();
    }
}

TEST_F(PartsBench, FindsRowsByWordsAndKind)
{
    QTest::keyClicks(&line("Search parts"), QStringLiteral("butterfly"));
    ASSERT_EQ(rows(), 1);
    EXPECT_EQ(cell(0, 0), QStringLiteral("Butterfly valve"));
    line("Search parts").clear();
    QTest::keyClicks(&line("Search parts"), QStringLiteral("as/nzs pn12 dn50"));
    ASSERT_EQ(rows(), 1);
    line("Search parts").clear();
    panel.findChild<QComboBox*>()->setCurrentIndex(4);
    EXPECT_EQ(rows(), static_cast<int>(document.catalogue()->pumps().size()));
    QTest::keyClicks(&line("Search parts"), QStringLiteral("no such thing"));
    EXPECT_EQ(rows(), 0);
    EXPECT_TRUE(details().contains(QStringLiteral("No part")));
}

TEST_F(PartsBench, AnOwnPipeIsMadeByKeysAndEachEntryIsOneStep)
{
    press("New pipe");
    ASSERT_EQ(own().pipes.size(), 1u);
    const int steps = document.undoStack().index();
    type("Name", QStringLiteral("Green hose"));
    type("Bore", QStringLiteral("25.4"));
    EXPECT_EQ(document.undoStack().index(), steps + 2);
    EXPECT_EQ(own().pipes[0].name, "Green hose");
    EXPECT_NEAR(units::inMillimetres(own().pipes[0].bore), 25.4, 1e-9);
    EXPECT_EQ(cell(0, 0), QStringLiteral("Green hose (own)"));
    EXPECT_TRUE(document.catalogue()->pipe(own().pipes[0].id).ok());
    type("Bore", QStringLiteral("40"));
    EXPECT_NE(refusal("Bore").find("does not fit"), std::string::npos) << refusal("Bore");
    type("Bore", QStringLiteral("3 kg"));
    EXPECT_NE(refusal("Bore").find("mass"), std::string::npos) << refusal("Bore");
    EXPECT_NEAR(units::inMillimetres(own().pipes[0].bore), 25.4, 1e-9);
    while (document.undoStack().canUndo())
        document.undoStack().undo();
    EXPECT_TRUE(own().empty());
    EXPECT_EQ(document.catalogue(), catalogue::Catalogue::builtIn());
}

TEST_F(PartsBench, AnOwnValveHasKOrKv)
{
    press("New fitting");
    ASSERT_EQ(own().fittings.size(), 1u);
    type("Kv, flow at 1 bar", QStringLiteral("6300 L/h"));
    EXPECT_FALSE(own().fittings[0].k);
    ASSERT_TRUE(own().fittings[0].flowFactor);
    type("K, fully open", QStringLiteral("0.8"));
    EXPECT_FALSE(own().fittings[0].flowFactor);
    EXPECT_EQ(own().fittings[0].k, 0.8);
    type("K, fully open", QString());
    EXPECT_NE(refusal("K, fully open").find("neither K nor Kv"), std::string::npos) << refusal("K, fully open");
}

TEST_F(PartsBench, AnOwnPumpIsTheTwoNumbersOfItsBoxOrPoints)
{
    press("New pump");
    ASSERT_EQ(own().pumps.size(), 1u);
    EXPECT_TRUE(own().pumps[0].twoNumbers);
    type("Head at no flow", QStringLiteral("3.2 m"));
    type("Flow at no head", QStringLiteral("4500 L/h"));
    EXPECT_NEAR(units::inLitresPerHour(own().pumps[0].curve[1].flow), 4500.0, 1e-9);
    for (auto* field : panel.findChildren<ui::properties::ChoiceField*>())
        if (field->isVisible()) {
            field->box().setCurrentIndex(0);
            Q_EMIT field->box().activated(0);
            break;
        }
    EXPECT_FALSE(own().pumps[0].twoNumbers);
    type("Points of the curve", QStringLiteral("0 L/h: 3 m; 1000 L/h: 2.5 m; 3000 L/h: 0 m"));
    ASSERT_EQ(own().pumps[0].curve.size(), 3u);
    type("Points of the curve", QStringLiteral("0 L/h: 3 m; 1000 L/h: 3.5 m"));
    EXPECT_FALSE(refusal("Points of the curve").empty());
    EXPECT_EQ(own().pumps[0].curve.size(), 3u);
}

TEST_F(PartsBench, AUsedPartStaysAndThePanelSaysWhere)
{
    press("New pipe");
    const std::string id = own().pipes[0].id;
    ASSERT_TRUE(document.commit(plan::setRunPipe({system.toBed}, id)));
    press("Remove");
    ASSERT_EQ(own().pipes.size(), 1u);
    EXPECT_TRUE(panel.said().contains(QString::fromStdString(system.runOf(system.toBed).tag)))
        << panel.said().toStdString();
    document.undoStack().undo();
    press("Remove");
    EXPECT_TRUE(own().empty());
}

TEST_F(PartsBench, ATableIsShownBeforeItComesInAndIsOneStep)
{
    const QString path = written("parts.csv", "kind;name;outside_diameter (mm);bore (mm);k\n"
                                              "pipe;Hose A;32;25,4;\n"
                                              "pipe;Hose B;32;40;\n"
                                              "fitting;Joint;;;0,3\n");
    const int steps = document.undoStack().index();
    panel.importFrom(path);
    EXPECT_TRUE(own().empty());
    EXPECT_TRUE(panel.preview().summary().contains(QStringLiteral("2 of 3")))
        << panel.preview().summary().toStdString();
    EXPECT_TRUE(panel.preview().lines().contains(QStringLiteral("line 3, bore")))
        << panel.preview().lines().toStdString();
    EXPECT_TRUE(panel.preview().isVisible());
    press("Bring them in");
    EXPECT_EQ(own().size(), 2u);
    EXPECT_EQ(document.undoStack().index(), steps + 1);
    EXPECT_EQ(rows(), 2); // the list shows the own ones
    EXPECT_FALSE(panel.preview().isVisible());
    document.undoStack().undo();
    EXPECT_TRUE(own().empty());
}

TEST_F(PartsBench, ATableThatIsLeftChangesNothing)
{
    panel.importFrom(written("parts.csv", "kind,name,k\nfitting,Joint,0.3\n"));
    press("Leave it");
    EXPECT_TRUE(own().empty());
    EXPECT_FALSE(panel.preview().isVisible());
}

TEST_F(PartsBench, AFileThatIsNoTableIsRefusedWithTheCure)
{
    panel.importFrom(written("parts.csv", QByteArray("\xFF\xFEk\0i\0", 6)));
    EXPECT_TRUE(panel.preview().summary().contains(QStringLiteral("CSV UTF-8")))
        << panel.preview().summary().toStdString();
    EXPECT_FALSE(button("Bring them in").isVisible());
    panel.importFrom(QStringLiteral("/no/such/file.csv"));
    EXPECT_TRUE(panel.preview().summary().contains(QStringLiteral("not read")));
    EXPECT_TRUE(own().empty());
}

TEST_F(PartsBench, KeptPartsAreCopiedIntoAnotherPlan)
{
    press("Take kept ones");
    EXPECT_TRUE(panel.said().contains(QStringLiteral("no parts"))) << panel.said().toStdString();
    press("New pipe");
    type("Name", QStringLiteral("Green hose"));
    press("Keep for other plans");
    EXPECT_TRUE(panel.said().contains(kept)) << panel.said().toStdString();
    document.reset(system.plan);
    EXPECT_FALSE(button("Keep for other plans").isEnabled());
    press("Take kept ones");
    EXPECT_TRUE(own().empty());
    press("Bring them in");
    ASSERT_EQ(own().pipes.size(), 1u);
    EXPECT_EQ(own().pipes[0].name, "Green hose");
    QFile spoilt(kept);
    ASSERT_TRUE(spoilt.open(QIODevice::WriteOnly));
    spoilt.write("{");
    spoilt.close();
    press("Keep for other plans");
    EXPECT_FALSE(panel.said().isEmpty());
    EXPECT_EQ(QFile(kept).size(), 1); // nothing is written over what cannot be read
}

TEST_F(PartsBench, OwnPartsGoOutToATableAndComeBackTheSame)
{
    press("New pipe");
    press("New pump");
    press("New fitting");
    const plan::OwnParts before = own();
    const QString path = QString::fromStdString((folder / "out.csv").string());
    ASSERT_TRUE(panel.exportTo(path));
    document.reset(system.plan);
    ASSERT_TRUE(own().empty());
    panel.importFrom(path);
    press("Bring them in");
    EXPECT_TRUE(own() == before);
    EXPECT_FALSE(panel.exportTo(QStringLiteral("/no/such/folder/out.csv")));
    EXPECT_FALSE(panel.said().isEmpty());
}

} // namespace sumpwright::tests
