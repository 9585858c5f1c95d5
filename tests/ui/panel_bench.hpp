// A document with a small whole system, and hands that type into its panels.
#pragma once

#include <gtest/gtest.h>

#include <QAbstractItemView>
#include <QComboBox>
#include <QLineEdit>
#include <QPushButton>
#include <QTest>
#include <QUndoStack>

#include "tests/support/edited_plan.hpp"
#include "ui/document/document.hpp"
#include "ui/document/view_settings.hpp"
#include "ui/properties/choice_field.hpp"
#include "ui/properties/entry_field.hpp"
#include "ui/properties/form.hpp"
#include "ui/properties/properties_panel.hpp"

namespace sumpwright::tests
{

class PanelBench : public testing::Test
{
protected:
    PanelBench()
    {
        document.view().setNumberStyle(units::NumberStyle::point());
        document.reset(system.plan);
        panel.resize(420, 900);
        panel.show();
        EXPECT_TRUE(QTest::qWaitForWindowExposed(&panel));
        panel.activateWindow();
        EXPECT_TRUE(QTest::qWaitForWindowActive(&panel));
    }

    const plan::Plan& now() const { return document.committed(); }
    const plan::Vessel& vesselNow(base::Id id) const { return *now().vessels.find(id); }
    int steps() { return document.undoStack().index(); }

    template <class Field, class Inner> Field* shownField(const char* name, Inner inner)
    {
        for (Field* each : panel.form()->findChildren<Field*>())
            if (inner(*each)->accessibleName() == QString::fromUtf8(name) && each->isVisible())
                return each;
        ADD_FAILURE() << "no entry named " << name;
        return nullptr;
    }
    // The entry of this name in the form shown.
    ui::properties::EntryField& entry(const char* name)
    {
        auto* found = shownField<ui::properties::EntryField>(name, [](auto& field) { return &field.line(); });
        base::ensure(found, "the entry asked for is shown");
        return *found;
    }
    QComboBox& choice(const char* name)
    {
        auto* found = shownField<ui::properties::ChoiceField>(name, [](auto& field) { return &field.box(); });
        base::ensure(found, "the choice asked for is shown");
        return found->box();
    }
    // By keyboard: the choice that starts with these words.
    void choose(const char* name, const QString& words)
    {
        QComboBox& box = choice(name);
        box.setFocus(Qt::TabFocusReason);
        QTest::keyClick(&box, Qt::Key_Space);
        QTest::keyClicks(box.view(), words);
        QTest::keyClick(box.view(), Qt::Key_Return);
    }

    std::string shown(const char* name) { return entry(name).line().text().toStdString(); }
    std::string refusal(const char* name) { return entry(name).refusalText().toStdString(); }
    // Types over the whole text, without handing it over.
    QLineEdit& typeInto(const char* name, const QString& text)
    {
        QLineEdit& line = entry(name).line();
        line.setFocus(Qt::TabFocusReason);
        line.selectAll();
        text.isEmpty() ? QTest::keyClick(&line, Qt::Key_Delete) : QTest::keyClicks(&line, text);
        return line;
    }
    void enter(const char* name, const QString& text) { QTest::keyClick(&typeInto(name, text), Qt::Key_Return); }

    // Until the results of the plan as it is now have arrived.
    std::shared_ptr<const assessment::Assessment> results()
    {
        EXPECT_TRUE(QTest::qWaitFor([this] { return document.assessment() && !document.stale(); }, 20000));
        return document.assessment();
    }

    test::SmallSystem system;
    ui::document::Document document;
    ui::properties::PropertiesPanel panel{document};
};

} // namespace sumpwright::tests
