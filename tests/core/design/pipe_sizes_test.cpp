#include <algorithm>
#include <cmath>

#include "core/design/pipe_sizes.hpp"
#include "core/design/size_groups.hpp"
#include "core/hydraulics/energy.hpp"
#include "core/hydraulics/fittings.hpp"
#include "core/plan/edits/run.hpp"
#include "tests/core/design/designing.hpp"

using namespace sumpwright;
using design::Kept;
using design::PipePart;
using test::RunningState;

namespace
{

design::PipeQuestion asking(Kept kept, bool byPart = true)
{
    design::PipeQuestion question;
    question.kept = kept;
    question.byPart = byPart;
    question.powerPrice = units::perKilowattHour(0.30);
    question.slowest = units::Velocity(); // no size is too large
    return question;
}

design::PipeSizing choosePipes(const plan::Plan& plan, const design::PipeQuestion& question,
                               const design::CataloguePointer& catalogue = test::builtIn())
{
    const auto outcome = design::choosePipes(plan, catalogue, question);
    EXPECT_TRUE(outcome.ok()) << (outcome.ok() ? "" : base::oneLine(outcome.refusal()));
    return outcome.ok() ? *outcome : design::PipeSizing();
}

std::string refusedFor(const plan::Plan& plan, const design::PipeQuestion& question)
{
    const auto outcome = design::choosePipes(plan, test::builtIn(), question);
    return outcome.ok() ? "" : outcome.refusal().id;
}

plan::Plan withPipes(plan::Plan plan, const design::PipeSizing& sizing, const std::vector<std::string>& pipes)
{
    for (std::size_t i = 0; i < sizing.groups.size(); ++i)
        plan = *plan::setRunPipe(sizing.groups[i].runs, pipes[i]).apply(plan);
    return plan;
}

// Calls `visit` with every combination of the sizes offered.
template <class Visit> void eachCombination(const design::PipeSizing& sizing, Visit&& visit)
{
    std::vector<std::size_t> at(sizing.groups.size(), 0);
    for (bool more = true; more;) {
        std::vector<std::string> pipes;
        for (std::size_t i = 0; i < at.size(); ++i)
            pipes.push_back(sizing.groups[i].offered[at[i]]);
        visit(pipes);
        more = false;
        for (std::size_t i = 0; i < at.size() && !more; ++i) {
            more = ++at[i] < sizing.groups[i].offered.size();
            if (!more)
                at[i] = 0;
        }
    }
}

double pipeCost(const plan::Plan& plan, const design::PipeSizing& sizing)
{
    double cost = 0.0;
    for (const auto& group : sizing.groups)
        for (const base::Id id : group.runs) {
            const plan::Run& run = *plan.runs.find(id);
            const double d = units::inMillimetres((*test::builtIn()->pipe(run.pipeId))->outsideDiameter);
            cost += units::inMetres(plan::lengthOf(run)) * (0.40 + 0.035 * std::pow(d, 1.25));
        }
    return cost;
}

// Four beds on a header, told run by run: riser, three pieces of header, four branches.
struct Manifold : test::ManifoldM2 {
    std::vector<base::Id> header;
    Manifold()
    {
        for (const auto& run : drawn.plan.runs)
            if (run->id != riser && run->service == plan::Service::pressure &&
                std::find(bedBranches.begin(), bedBranches.end(), run->id) == bedBranches.end())
                header.push_back(run->id);
    }
};

} // namespace

TEST(ChoosePipes, WithTheFlowKeptIsTheBestOfEveryCombination)
{
    const Manifold m;
    const auto sizing = choosePipes(m.drawn.plan, asking(Kept::flow));
    ASSERT_EQ(sizing.groups.size(), 3U);
    EXPECT_EQ(sizing.groups[0].part, PipePart::riser);
    EXPECT_TRUE(sizing.exact);
    const auto before = test::assess(m.drawn.plan);
    const auto flowIn = [&](base::Id run) {
        return assessment::find(before.flow->runs, run)->flow[RunningState::least]->flow;
    };
    const auto& duty = *assessment::find(before.pumps->pumps, m.pump)->duty[RunningState::least];
    const double sump = units::inMetres(
        assessment::find(before.water->vessels, m.sump)->water[assessment::WaterState::runningLeast]->level);
    double best = 1e9;
    std::size_t count = 0;
    eachCombination(sizing, [&](const std::vector<std::string>& pipes) {
        ++count;
        const plan::Plan plan = withPipes(m.drawn.plan, sizing, pipes);
        const auto results = test::assess(plan);
        const auto loss = [&](base::Id id) { // by this test's own sum along each bed's way
            const auto& run = *assessment::find(results.flow->runs, id);
            const units::Velocity v = hydraulics::meanVelocity(flowIn(id), run.bore);
            return units::inMetresHead(
                hydraulics::frictionLoss({run.bore, run.length, run.roughness}, flowIn(id), *results.site->viscosity) +
                hydraulics::fittingLoss(run.sumK, v));
        };
        double needed = 0.0, way = loss(m.riser);
        for (std::size_t bed = 0; bed < 4; ++bed) {
            needed = std::max(needed, 1.0 - sump + way + loss(m.bedBranches[bed]));
            if (bed < 3)
                way += loss(m.header[bed]);
        }
        const double watts =
            9.80665 * units::inSi(*results.site->density) * units::inSi(duty.flow) * needed / duty.power->wireToWater;
        best = std::min(best, pipeCost(plan, sizing) + watts / 1000.0 * 87600.0 * 0.30);
    });
    EXPECT_EQ(count, sizing.tried);
    EXPECT_GT(count, 100U);
    EXPECT_NEAR(units::inCurrency(sizing.best.total()), best, 1e-6 * best);
}

TEST(ChoosePipes, WithThePumpKeptIsTheBestThatBringsNoLessThanToday)
{
    const Manifold m;
    auto question = asking(Kept::pump);
    question.byPart = false;
    question.fastest = units::metresPerSecond(2.0);
    const auto before = test::assess(m.drawn.plan);
    const auto dutyOf = [&m](const assessment::Assessment& results) {
        return *assessment::find(results.pumps->pumps, m.pump)->duty[RunningState::least];
    };
    const auto sizing = choosePipes(m.drawn.plan, question);
    ASSERT_EQ(sizing.groups.size(), 1U);
    double best = 1e9;
    eachCombination(sizing, [&](const std::vector<std::string>& pipes) {
        const plan::Plan plan = withPipes(m.drawn.plan, sizing, pipes);
        const auto results = test::assess(plan);
        double fastest = 0.0;
        for (const auto& run : results.flow->runs)
            if (run.service == plan::Service::pressure)
                fastest = std::max(fastest, units::inMetresPerSecond(run.flow[RunningState::least]->losses->velocity));
        if (dutyOf(results).flow < dutyOf(before).flow || fastest > 2.0)
            return;
        const double kilowattHours = units::inKilowattHours(dutyOf(results).power->energyPerYear) * 10.0;
        best = std::min(best, pipeCost(plan, sizing) + kilowattHours * 0.30);
    });
    EXPECT_NEAR(units::inCurrency(sizing.best.total()), best, 1e-6 * best);
    const auto after = test::assess(test::applied(m.drawn.plan, sizing.edit));
    EXPECT_EQ(dutyOf(after).flow, sizing.best.flow); // the flow gained is the network's own
    EXPECT_GE(sizing.best.flow, sizing.now.flow);
}

TEST(ChoosePipes, KeepsToTheVelocityLimitAndTheStandard)
{
    const Manifold m;
    for (const double limit : {0.5, 0.8, 1.5}) {
        auto question = asking(Kept::flow);
        question.fastest = units::metresPerSecond(limit);
        const auto sizing = choosePipes(m.drawn.plan, question);
        EXPECT_LE(units::inMetresPerSecond(sizing.best.fastest), limit);
        for (const std::string& pipe : sizing.best.pipes)
            EXPECT_EQ((*test::builtIn()->pipe(pipe))->standard, "DIN 8062 series 5");
    }
}

// 0.6 to 1.5 m/s in pressure pipes: common practice, no source.
TEST(ChoosePipes, OffersNoPipeSoLargeThatTheWaterCreeps)
{
    const Manifold m;
    design::PipeQuestion question;
    question.powerPrice = units::perKilowattHour(0.30);
    const auto sizing = choosePipes(m.drawn.plan, question);
    for (const auto& group : sizing.groups) {
        double flow = 0.0;
        for (const base::Id run : group.runs)
            flow = std::max(flow, test::flowOf(m.drawn.plan, run));
        for (std::size_t i = 0; i < group.offered.size(); ++i) {
            const auto bore = (*test::builtIn()->pipe(group.offered[i]))->bore;
            const auto velocity = hydraulics::meanVelocity(units::litresPerHour(flow), bore);
            EXPECT_LE(velocity, question.fastest);
            if (i > 0) {
                EXPECT_GE(velocity, question.slowest);
            }
        }
    }
    question.slowest = units::metresPerSecond(1.5);
    EXPECT_EQ(refusedFor(m.drawn.plan, question), "design.velocity-over-limit");
}

TEST(ChoosePipes, TellsNeighboursThatAreDearerAndATradeOffWithoutABetterChoice)
{
    const Manifold m;
    const auto sizing = choosePipes(m.drawn.plan, asking(Kept::flow));
    EXPECT_GE(sizing.neighbours.size(), 3U);
    for (const auto& neighbour : sizing.neighbours)
        EXPECT_GE(neighbour.total(), sizing.best.total());
    ASSERT_GE(sizing.tradeOff.size(), 5U);
    bool chosen = false;
    for (std::size_t i = 0; i < sizing.tradeOff.size(); ++i) {
        chosen = chosen || sizing.tradeOff[i].pipes == sizing.best.pipes;
        if (i > 0) {
            EXPECT_GT(sizing.tradeOff[i].pipeCost, sizing.tradeOff[i - 1].pipeCost);
            EXPECT_LT(sizing.tradeOff[i].energyCost, sizing.tradeOff[i - 1].energyCost);
        }
    }
    EXPECT_TRUE(chosen);
}

TEST(ChoosePipes, SizesLargerForLongerYearsAndDearerPower)
{
    const Manifold m;
    const auto boreAt = [&m](double years, double price) {
        auto question = asking(Kept::flow, false);
        question.period = units::hours(8760.0 * years);
        question.powerPrice = units::perKilowattHour(price);
        question.fastest = design::velocityLimit;
        return units::inMetres((*test::builtIn()->pipe(choosePipes(m.drawn.plan, question).best.pipes[0]))->bore);
    };
    EXPECT_LT(boreAt(0.2, 0.05), boreAt(10, 0.30));
    EXPECT_LE(boreAt(10, 0.30), boreAt(40, 0.60));
}

TEST(ChoosePipes, TakesThePricesThatAreTyped)
{
    const Manifold m;
    auto question = asking(Kept::flow);
    const auto assumed = choosePipes(m.drawn.plan, question);
    EXPECT_FALSE(assumed.assumed.empty());
    // The cheapest of all is now the largest pipe: nothing speaks for another.
    for (const auto* pipe : design::sizesLike(*test::builtIn(), "pvcu-pn16-32"))
        question.prices.push_back({pipe->id, units::money(pipe->id == "pvcu-pn16-63" ? 0.1 : 50.0)});
    const auto typed = choosePipes(m.drawn.plan, question);
    EXPECT_TRUE(typed.assumed.empty());
    for (const std::string& pipe : typed.best.pipes)
        EXPECT_EQ(pipe, "pvcu-pn16-63");
}

// At the least total cost a price a metre that rises with the power b of the bore and a friction loss that falls with
// its power 4.84 balance: b times the cost of pipe is 4.84 times the cost of friction. Source: Genereaux 1937, the
// exponent for turbulent flow, from memory; Colebrook's smooth pipe has an exponent near it.
TEST(ChoosePipes, BalancesPipeAgainstFrictionAsThePublishedRuleDoes)
{
    catalogue::Tables tables;
    tables.sources = test::builtIn()->sources();
    tables.fittings = test::builtIn()->fittings();
    tables.roughness = test::builtIn()->roughness();
    tables.pumps = test::builtIn()->pumps();
    auto question = asking(Kept::flow);
    question.wireToWater = 0.25;
    constexpr double power = 1.25;
    for (int i = 0; i < 300; ++i) { // bores 0.5 % apart
        catalogue::Pipe pipe = **test::builtIn()->pipe("pvcu-pn16-50");
        pipe.id = "fine-" + std::to_string(i);
        pipe.bore = units::millimetres(20.0 * std::pow(1.005, i));
        tables.pipes.push_back(pipe);
        question.prices.push_back({pipe.id, units::money(0.04 * std::pow(units::inMillimetres(pipe.bore), power))});
    }
    test::DrawnPlan drawn;
    const base::Id sump = drawn.sump({0, 0, 0}, 2, 1, 0.6, 0.4);
    const base::Id pump = drawn.pump(sump, "G8000", 0.2);
    const base::Id tank = drawn.vessel(plan::VesselKind::fishTank, {200, 0, 0}, 2, 2, 1);
    drawn.drain(tank, sump, {200.5, 0, 0.8}, 0.1, {0.5, 0.2, 0.45}, "fine-200");
    const base::Id inlet = drawn.port(tank, plan::PortKind::inlet, {199.5, 0, 1.0});
    drawn.run(plan::Service::pressure, "fine-120", plan::PumpEnd{pump}, plan::PortEnd{tank, inlet, 0.0},
              {{0, 0, 0.2}, {199.5, 0, 1.0}});
    const auto fine = std::make_shared<const catalogue::Catalogue>(tables);
    const auto sizing = choosePipes(drawn.plan, question, fine);
    const double lift = 1.0 - 0.4; // mouth over the sump; the sump hardly moves
    const double friction = units::inMetresHead(sizing.best.head) - lift;
    const double frictionCost =
        units::inCurrency(sizing.best.energyCost) * friction / units::inMetresHead(sizing.best.head);
    EXPECT_NEAR(power * units::inCurrency(sizing.best.pipeCost) / frictionCost, 4.84, 0.15);
}

TEST(ChoosePipes, SaysWhenItDidNotTryEveryCombination)
{
    Manifold m;
    // Every branch of another size has a group of its own.
    const char* sizes[] = {"pvcu-pn16-25", "pvcu-pn16-32", "pvcu-pn16-40", "pvcu-pn16-50"};
    for (std::size_t i = 0; i < 4; ++i)
        m.drawn.changeRun(m.bedBranches[i], [&](plan::Run& run) { run.pipeId = sizes[i]; });
    const auto sizing = choosePipes(m.drawn.plan, asking(Kept::flow));
    EXPECT_EQ(sizing.groups.size(), 6U);
    EXPECT_FALSE(sizing.exact);
    EXPECT_LT(sizing.tried, 5000U);
    EXPECT_LE(sizing.best.total(), sizing.now.total());
    for (const auto& neighbour : sizing.neighbours) // no single step is better
        EXPECT_GE(neighbour.total(), sizing.best.total());
}

TEST(ChoosePipes, SaysWhatIsMissingBeforeItCanBegin)
{
    const Manifold m;
    auto question = asking(Kept::flow);
    EXPECT_EQ(refusedFor(test::DrawnPlan().plan, question), "design.no-pump");
    question.powerPrice.reset();
    EXPECT_EQ(refusedFor(m.drawn.plan, question), "design.no-power-price");
    question = asking(Kept::flow);
    question.period = units::hours(0.0);
    EXPECT_EQ(refusedFor(m.drawn.plan, question), "design.period-out-of-range");
    question = asking(Kept::flow);
    question.fastest = units::metresPerSecond(2.5);
    EXPECT_EQ(refusedFor(m.drawn.plan, question), "design.velocity-over-limit");
    question.fastest = units::metresPerSecond(0.01);
    EXPECT_EQ(refusedFor(m.drawn.plan, question), "design.no-size");
    question = asking(Kept::flow);
    question.wireToWater = 1.2;
    EXPECT_EQ(refusedFor(m.drawn.plan, question), "design.efficiency-missing");
    question = asking(Kept::flow);
    question.prices = {{"pvcu-pn16-32", units::money(-1)}};
    EXPECT_EQ(refusedFor(m.drawn.plan, question), "design.price-out-of-range");
    question = asking(Kept::flow);
    question.powerPrice = units::perKilowattHour(-0.1);
    EXPECT_EQ(refusedFor(m.drawn.plan, question), "design.power-price-out-of-range");
    Manifold two;
    two.drawn.pump(two.sump, "G1000", -0.1);
    EXPECT_EQ(refusedFor(two.drawn.plan, asking(Kept::flow)), "design.several-pumps");
    Manifold unpowered;
    unpowered.drawn.changePump(unpowered.pump, [](plan::Pump& pump) {
        pump.modelId.clear();
        pump.ownCurve = {{units::litresPerHour(0), units::metresHead(3.2)},
                         {units::litresPerHour(4500), units::metresHead(0)}};
    });
    EXPECT_EQ(refusedFor(unpowered.drawn.plan, asking(Kept::pump)), "design.pump-power-missing");
    EXPECT_EQ(refusedFor(unpowered.drawn.plan, asking(Kept::flow)), "design.efficiency-missing");
    Manifold weak;
    weak.drawn.changePump(weak.pump, [](plan::Pump& pump) { pump.speed = 0.3; });
    EXPECT_EQ(refusedFor(weak.drawn.plan, asking(Kept::flow)), "design.no-flow");
}
