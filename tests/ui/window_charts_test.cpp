// The charts of the real window: pictures and numbers by menu, read by pointer and keys.
#include <QClipboard>
#include <QFile>
#include <QFileDialog>
#include <QGraphicsTextItem>
#include <QImage>
#include <QLineEdit>

#include "tests/ui/window_fixture.hpp"
#include "ui/charts/chart_panel.hpp"
#include "ui/charts/readable_view.hpp"

namespace sumpwright::tests
{
namespace
{

using ui::charts::ChartPanel;

class ChartWindow : public OpenWindow
{
protected:
    ChartWindow()
    {
        EXPECT_TRUE(
            window.files().openPath(QStringLiteral(SUMPWRIGHT_SOURCE "/resources/examples/community_shed.sumpwright")));
        EXPECT_TRUE(QTest::qWaitFor([&] { return work.document.assessment() && !work.document.stale(); }, 20000));
        QTest::qWait(50);
    }

    ChartPanel& chart(const char* command_, const QString& question)
    {
        command(command_)->trigger();
        for (auto* each : window.findChildren<ChartPanel*>())
            if (each->question() == question)
                return *each;
        throw std::runtime_error("no such chart");
    }
    ChartPanel& head() { return chart("check.head", QStringLiteral("Where does the head go?")); }

    // Types the path into the next file dialog and saves.
    void saveNextAs(const QString& path)
    {
        QTimer::singleShot(0, qApp, [this, path] {
            auto* dialog = qobject_cast<QFileDialog*>(QApplication::activeModalWidget());
            ASSERT_TRUE(dialog) << "no file was asked for";
            title = dialog->windowTitle();
            auto* line = dialog->findChild<QLineEdit*>(QStringLiteral("fileNameEdit"));
            ASSERT_TRUE(line);
            line->setText(path);
            QTest::keyClick(line, Qt::Key_Return);
        });
    }

    QString title;
};

TEST_F(ChartWindow, PictureOfTheChartAtHandHoldsItsQuestionAndAnswer)
{
    ChartPanel& panel = head();
    saveNextAs(file("head")); // the ending is added
    command("chart.picture")->trigger();
    EXPECT_TRUE(title.contains(panel.question()));
    const QImage picture(file("head.png"));
    ASSERT_FALSE(picture.isNull());
    EXPECT_GT(picture.height(), 2 * panel.findChild<ui::charts::ReadableView*>()->height());

    saveNextAs(file("head.svg"));
    command("chart.picture")->trigger();
    QFile vector(file("head.svg"));
    ASSERT_TRUE(vector.open(QIODevice::ReadOnly));
    const QByteArray words = vector.readAll();
    EXPECT_TRUE(words.contains(panel.question().toUtf8()));
    EXPECT_TRUE(words.contains("Lift"));
}

TEST_F(ChartWindow, NumbersOfTheChartAtHandAreSavedWithTheirUnits)
{
    ChartPanel& panel = head();
    saveNextAs(file("head.csv"));
    command("chart.numbers")->trigger();
    QFile table(file("head.csv"));
    ASSERT_TRUE(table.open(QIODevice::ReadOnly));
    const QString text = QString::fromUtf8(table.readAll());
    EXPECT_EQ(text.toStdString(), panel.table().toCsv().toStdString());
    EXPECT_TRUE(text.contains(QStringLiteral("m")));
    EXPECT_GT(text.count(u'\n'), 3);

    command("chart.copy-numbers")->trigger();
    EXPECT_EQ(QApplication::clipboard()->text().toStdString(), text.toStdString());
    command("chart.copy-sentence")->trigger();
    EXPECT_EQ(QApplication::clipboard()->text().toStdString(), panel.sentence().toStdString());
    EXPECT_FALSE(panel.sentence().isEmpty());
}

TEST_F(ChartWindow, ArrowKeysReadEveryValueAndEscLetsGo)
{
    for (const auto& [id, question] :
         {std::pair{"check.water", "Where is the water?"}, std::pair{"check.head", "Where does the head go?"},
          std::pair{"check.duty", "What does the pump do?"}, std::pair{"check.floor", "What does the floor carry?"}}) {
        ChartPanel& panel = chart(id, QString::fromLatin1(question));
        QTest::qWait(20);
        ASSERT_GT(panel.readings().size(), 1u) << question;
        QWidget* focus = QApplication::focusWidget();
        ASSERT_TRUE(panel.isAncestorOf(focus)) << question;
        QStringList read;
        for (std::size_t i = 0; i < panel.readings().size(); ++i) {
            QTest::keyClick(focus, Qt::Key_Right);
            EXPECT_FALSE(panel.readOut().isEmpty()) << question;
            read << panel.readOut();
        }
        EXPECT_NE(read.first(), read.last()) << question;
        QTest::keyClick(focus, Qt::Key_Escape);
        EXPECT_TRUE(panel.readOut().isEmpty()) << question;
    }
}

// The window came up with an empty plan, of which the chart had nothing to say.
TEST_F(ChartWindow, AxesOfAPlanThatFollowsAnEmptyOneKeepTheirWords)
{
    ChartPanel& panel = head();
    QTest::qWait(50);
    QStringList words;
    for (const QGraphicsItem* item : panel.findChild<ui::charts::ReadableView*>()->scene()->items())
        if (const auto* text = dynamic_cast<const QGraphicsTextItem*>(item); text && text->isVisible())
            words << text->toPlainText();
    EXPECT_TRUE(words.contains(QStringLiteral("R3"))) << words.join(QStringLiteral(" | ")).toStdString();
    EXPECT_TRUE(words.contains(QStringLiteral("0.0"))) << words.join(QStringLiteral(" | ")).toStdString();
    EXPECT_FALSE(words.contains(QStringLiteral("...")));
}

TEST_F(ChartWindow, PointerReadsWhatItRestsOn)
{
    ChartPanel& panel = head();
    QTest::qWait(50);
    auto* view = panel.findChild<ui::charts::ReadableView*>();
    ASSERT_TRUE(view);
    QTest::mouseMove(view->viewport(), view->viewport()->rect().center());
    QTest::mouseMove(view->viewport(), QPoint(view->viewport()->width() / 3, view->viewport()->height() / 5));
    EXPECT_FALSE(panel.readOut().isEmpty());
}

TEST_F(ChartWindow, SpeaksUsUnitsOnceTheyAreAskedFor)
{
    ChartPanel& panel = head();
    EXPECT_TRUE(panel.sentence().contains(QStringLiteral(" m")));
    command("view.us")->trigger();
    QTest::qWait(50);
    EXPECT_TRUE(panel.sentence().contains(QStringLiteral(" ft"))) << panel.sentence().toStdString();
    EXPECT_TRUE(panel.table().toCsv().contains(QStringLiteral("ft")));
}

} // namespace
} // namespace sumpwright::tests
