// The worksheets behind the figures of the proposals give those figures.
#include "core/design/proposal_working.hpp"
#include "core/hydraulics/fittings.hpp"
#include "core/worksheets/worksheet.hpp"
#include "tests/core/design/designing.hpp"

using namespace sumpwright;
using test::ValvedM1;

namespace
{

double answered(const assessment::Working& working)
{
    std::vector<worksheets::InputText> texts;
    for (const auto& input : working.inputs)
        texts.push_back({input.name, input.value});
    const auto answer = worksheets::answer(**worksheets::findWorksheet(working.worksheet), texts, *test::builtIn());
    EXPECT_TRUE(answer.ok()) << (answer.ok() ? "" : base::oneLine(answer.refusal()));
    const auto* output = answer.ok() ? answer->output(working.output) : nullptr;
    EXPECT_TRUE(output);
    return output ? worksheets::numberOf(output->value) : -1.0;
}

} // namespace

TEST(ProposalWorking, OfAValveIsItsLossAtTheOpeningProposed)
{
    const ValvedM1 m({450, 300, 500, 400});
    const auto setting = setValves(m.drawn);
    ASSERT_EQ(setting.valves.size(), 4U);
    for (const auto& valve : setting.valves) {
        const auto working = design::workingOf(valve, m.drawn.plan, *test::builtIn());
        ASSERT_TRUE(working);
        const double open = hydraulics::defaultCoefficient(hydraulics::FittingKind::BallValve);
        const double burned = units::inMetresHead(valve.burned);
        EXPECT_NEAR(answered(*working), burned * (1.0 + open / valve.added), 1e-9);
    }
}

TEST(ProposalWorking, OfAPumpAndOfPipesIsTheirPower)
{
    ValvedM1 m;
    m.drawn.changeSite([](plan::Site& site) { site.powerPrice = units::perKilowattHour(0.30); });
    const auto ranking = design::choosePump(m.drawn.plan, test::builtIn(), {{}, units::litresPerHour(2500), false});
    ASSERT_TRUE(ranking);
    for (const auto& choice : ranking->choices) {
        const auto working = design::workingOf(choice, *m.drawn.plan.site);
        if (working) {
            EXPECT_NEAR(answered(*working), units::inWatts(*choice.power), 1e-6);
        } else {
            EXPECT_EQ(choice.flow, units::Flow());
        }
    }
    const auto sizing = design::choosePipes(m.drawn.plan, test::builtIn());
    ASSERT_TRUE(sizing);
    const auto density = *test::assess(m.drawn.plan).site->density;
    const auto working = design::workingOf(sizing->best, {}, *m.drawn.plan.site, density);
    ASSERT_TRUE(working);
    EXPECT_NEAR(answered(*working), units::inWatts(sizing->best.power), 1e-6);
    EXPECT_FALSE(design::workingOf(sizing->best, {}, *m.drawn.plan.site, {}));
}
