// The status line tells the pointer's place in one unit with the same decimals everywhere.
#include <QLabel>
#include <QRegularExpression>

#include "core/plan/edits/floor.hpp"
#include "tests/support/edited_plan.hpp"
#include "tests/ui/window_fixture.hpp"
#include "ui/document/view_settings.hpp"
#include "ui/window/status_line.hpp"

namespace sumpwright::tests
{
namespace
{

class StatusPlace : public OpenWindow
{
protected:
    StatusPlace()
    {
        work.document.view().setNumberStyle(units::NumberStyle::point());
        EXPECT_TRUE(
            work.document.commit(plan::setOutline({test::at(0, 0), test::at(6, 0), test::at(6, 9), test::at(0, 9)})));
    }
    std::string shown(const char* name, double x, double y)
    {
        auto* line = window.findChild<ui::window::StatusLine*>();
        line->showPointer(test::at(x, y));
        for (const auto* label : line->findChildren<QLabel*>())
            if (label->accessibleName() == QString::fromLatin1(name))
                return label->text().toStdString();
        return "no such field";
    }
};

TEST_F(StatusPlace, IsInFeetAloneInUsUnits)
{
    work.document.view().setUnitSystem(units::UnitSystem::us);
    EXPECT_EQ(shown("Pointer, across", 0.1, 0.1), "X  0.33 ft");
    EXPECT_EQ(shown("Pointer, across", 3.048, 0.1), "X  10.00 ft");
    EXPECT_EQ(shown("Pointer, across", -30.48, 0.1), "X  \u2212100.00 ft");
    EXPECT_EQ(shown("Pointer, up the sheet", 1.0, -0.0001), "Y  0.00 ft");
    EXPECT_EQ(shown("Floor level at the pointer", 1.0, 1.0), "Floor  \u00b10.00 ft");
}

TEST_F(StatusPlace, IsInMetresAloneInMetricUnits)
{
    work.document.view().setUnitSystem(units::UnitSystem::metric);
    EXPECT_EQ(shown("Pointer, across", 0.02, 0.1), "X  0.020 m");
    EXPECT_EQ(shown("Pointer, up the sheet", 1.0, 12.5), "Y  12.500 m");
    EXPECT_EQ(shown("Floor level at the pointer", 1.0, 1.0), "Floor  \u00b10.000 m");
    work.document.view().setNumberStyle(units::NumberStyle::ofDesktop(",", "."));
    EXPECT_EQ(shown("Pointer, across", -1.25, 0.1), "X  \u22121,250 m");
}

} // namespace
} // namespace sumpwright::tests
