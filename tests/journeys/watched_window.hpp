// WatchedWindow: a window on a plan file of its own, driven by mouse and keys only, and everything that is written on
// it: what a person reads and what assistive technology is told.
#pragma once

#include <gtest/gtest.h>

#include <functional>

#include <QStringList>
#include <QTemporaryDir>

#include "tests/journeys/hands.hpp"
#include "ui/canvas/plan_view.hpp"
#include "ui/window/main_window.hpp"
#include "ui/window/message_strip.hpp"
#include "ui/window/workplace.hpp"

namespace sumpwright::tests
{

QByteArray bytesOf(const QString& path);
void writeBytes(const QString& path, const QByteArray& bytes);

class WatchedWindow : public testing::Test
{
protected:
    WatchedWindow(); // empty, with the keyboard in the plan

    QString file(const char* name) const { return folder.filePath(QString::fromLatin1(name)); }
    // A copy of an example, opened.
    QString openExample(const char* name = "community_shed");
    void settle(); // until the numbers are those of the plan shown

    void press(Qt::Key key, Qt::KeyboardModifiers with = Qt::NoModifier);
    void paste(const QString& text); // by its key, where the keyboard is
    // On the plan, in metres; the wheel brings a place off the screen into view first.
    void mouseDown(double x, double y, Qt::KeyboardModifiers with = Qt::NoModifier);
    void rightPress(double x, double y); // the menu it may open is left by Esc
    void mouseTo(double x, double y);
    void mouseUp(double x, double y);
    void mouseDrag(double x0, double y0, double x1, double y1);
    void pushStrip(const QString& button); // by the mouse
    void openByKeys(const QString& path);  // the key of Open, its box, the path, Enter; Esc when it does not close
    // What a box of the program or of Qt asked or told meanwhile is kept in boxTexts and left by Esc.
    void leavingBoxes(const std::function<void()>& act);
    void saveAsByKeys(const QString& path);
    void dropFile(const QString& path); // dragged in from a file browser

    QStringList written(bool aloud = true) const; // every text on view; aloud: as told to assistive technology, too
    void expectSound(const std::string& after, bool aloud = true) const; // no NaN, no infinity in any of them
    QString strips() const { return window.strips().texts().join(u'\n'); }
    bool modified() const { return window.isWindowModified(); }

    QTemporaryDir folder;
    ui::window::Workplace work;
    ui::window::MainWindow window;
    KeyHands keys;
    QStringList boxTexts; // of message boxes that stood in the way

private:
    void inBox(Qt::Key key, Qt::KeyboardModifiers with, const QString& path);
    QPoint pixel(double x, double y) const;
    void bringIntoView(double x, double y);
};

} // namespace sumpwright::tests
