// A whole window on a state folder of its own, exposed and with the keyboard in the plan.
#pragma once

#include <gtest/gtest.h>

#include <QApplication>
#include <QMessageBox>
#include <QPushButton>
#include <QTemporaryDir>
#include <QTest>
#include <QTimer>

#include "core/plan/edits/place.hpp"
#include "ui/canvas/plan_view.hpp"
#include "ui/window/commands.hpp"
#include "ui/window/file_commands.hpp"
#include "ui/window/main_window.hpp"
#include "ui/window/message_strip.hpp"
#include "ui/window/workplace.hpp"

namespace sumpwright::tests
{

class OpenWindow : public testing::Test
{
protected:
    OpenWindow() : work(state()), window(work)
    {
        window.show();
        EXPECT_TRUE(QTest::qWaitForWindowExposed(&window));
        window.activateWindow();
        EXPECT_TRUE(QTest::qWaitForWindowActive(&window));
    }

    QString state() const { return folder.filePath(QStringLiteral("state")); }
    QString file(const char* name) const { return folder.filePath(QString::fromLatin1(name)); }
    QAction* command(const char* id) const { return window.commands().find(id); }

    base::Id place(plan::VesselKind kind, double x)
    {
        plan::VesselWish wish;
        wish.kind = kind;
        wish.centre = {units::metres(x), units::metres(2.0)};
        const base::Id made{work.document.committed().nextId};
        EXPECT_TRUE(work.document.commit(plan::placeVessel(wish)));
        return made;
    }
    base::Id placeTank(double x = 1.0) { return place(plan::VesselKind::fishTank, x); }

    // A saved plan with one tank, not open anywhere.
    QString savedPlan(const char* name = "shed.sumpwright")
    {
        ui::document::Document document;
        ui::document::Session session(document, state());
        plan::VesselWish wish;
        wish.centre = {units::metres(1.0), units::metres(2.0)};
        EXPECT_TRUE(document.commit(plan::placeVessel(wish)));
        EXPECT_FALSE(session.saveAs(file(name)));
        session.close();
        return file(name);
    }

    // Presses the button of the next message box whose text starts so.
    void answerNextBox(const QString& button)
    {
        QTimer::singleShot(0, qApp, [this, button] {
            auto* box = qobject_cast<QMessageBox*>(QApplication::activeModalWidget());
            ASSERT_TRUE(box) << "no question was asked";
            ++boxesAnswered;
            for (QAbstractButton* each : box->buttons())
                if (each->text().remove(u'&') == button)
                    return each->click();
            ADD_FAILURE() << "no button " << button.toStdString();
            box->reject();
        });
    }
    QPushButton* stripButton(const QString& text) const
    {
        for (QPushButton* button : window.strips().findChildren<QPushButton*>())
            if (button->text() == text && button->isVisible())
                return button;
        return nullptr;
    }

    QTemporaryDir folder;
    int boxesAnswered = 0;
    ui::window::Workplace work;
    ui::window::MainWindow window;
};

} // namespace sumpwright::tests
