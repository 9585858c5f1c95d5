#include "core/hydraulics/sloping_drain.hpp"

#include "core/worksheets/answer_draft.hpp"
#include "core/worksheets/common_inputs.hpp"
#include "core/worksheets/each.hpp"

namespace sumpwright::worksheets
{
namespace
{

using base::Outcome;
using base::Refusal;
using hydraulics::SelfCleansing;

const Note fullerThanDesign{"drain-high",
                            "It runs more than 0.7 full: little room for a surge, and air travels badly."};
const Note surcharged{"drain-surcharged", "Above 0.93 of the bore the pipe fills and empties in gushes."};
const Note settling{"drain-settles", "Below 0.3 m/s fish solids settle: lay it steeper, or smaller, or flush it."};
const Note doubtful{"drain-doubtful", "Between 0.3 and 0.5 m/s fish solids may settle."};
const Note longPipe{"drain-long",
                    "Holds for a long, straight pipe: near its ends, bends and entries the depth differs."};

std::string wordOf(SelfCleansing cleansing)
{
    switch (cleansing) {
    case SelfCleansing::Settles:
        return "settles";
    case SelfCleansing::Doubtful:
        return "doubtful";
    case SelfCleansing::Cleans:
        return "cleans";
    }
    return "doubtful";
}

struct Drain {
    units::Length bore;
    units::Slope fall;
    double manningN;
    units::Flow flow;
    units::Length depth;
};

// By flow or by fill, one of the two.
Outcome<Drain> drainOf(const Inputs& inputs)
{
    Drain drain{inputs.get<units::Length>("bore"), inputs.get<units::Slope>("fall"), inputs.ratio("manning_n"),
                units::Flow(), units::Length()};
    if (inputs.has("flow") == inputs.has("fill"))
        return Refusal{inputs.has("flow") ? "worksheets.one-of" : "worksheets.needs-one", "flow",
                       "a drain is asked by its flow or by how full it runs", "either flow or fill"};
    if (inputs.has("fill")) {
        drain.depth = inputs.ratio("fill") * drain.bore;
        drain.flow = hydraulics::normalFlow(drain.bore, drain.depth, drain.fall, drain.manningN);
        return drain;
    }
    drain.flow = inputs.get<units::Flow>("flow");
    const auto depth = hydraulics::normalDepth(drain.bore, drain.flow, drain.fall, drain.manningN);
    if (!depth)
        return Refusal{"worksheets.drain-overfull", "flow", "the drain cannot carry this flow with a free surface",
                       "at most " +
                           shown(Value(hydraulics::fullFlow(drain.bore, drain.fall, drain.manningN)), inputs.style())};
    drain.depth = *depth;
    return drain;
}

void addNotes(AnswerDraft& draft, double fill, SelfCleansing cleansing)
{
    switch (hydraulics::drainFillAt(fill)) {
    case hydraulics::DrainFill::Designed:
    case hydraulics::DrainFill::Ample:
        break;
    case hydraulics::DrainFill::High:
        draft.note(fullerThanDesign.id);
        break;
    case hydraulics::DrainFill::Surcharged:
        draft.note(surcharged.id);
        break;
    }
    switch (cleansing) {
    case SelfCleansing::Settles:
        draft.note(settling.id);
        break;
    case SelfCleansing::Doubtful:
        draft.note(doubtful.id);
        break;
    case SelfCleansing::Cleans:
        break;
    }
    draft.note(longPipe.id);
}

Outcome<Answer> compute(const Inputs& inputs)
{
    const Outcome<Drain> read = drainOf(inputs);
    if (!read)
        return read.refusal();
    const Drain& drain = *read;
    const double fill = drain.depth / drain.bore;
    const units::Velocity velocity = hydraulics::drainVelocity(drain.flow, drain.bore, drain.depth);
    const units::Flow full = hydraulics::fullFlow(drain.bore, drain.fall, drain.manningN);
    const units::Slope needed = hydraulics::fallNeeded(drain.bore, drain.flow, hydraulics::designFill, drain.manningN);
    const SelfCleansing cleansing = hydraulics::selfCleansingAt(velocity);

    AnswerDraft draft(inputs);
    draft.put("velocity", velocity);
    draft.put("flow", drain.flow);
    draft.put("fill", fill);
    draft.put("depth", drain.depth);
    draft.put("full_flow", full);
    draft.put("fall_for_half_full", needed);
    draft.put("self_cleansing", wordOf(cleansing));
    draft.work("full bore: Q = π/4 D² (D/4)^(2/3) √S / n = ", full, " with D = ", drain.bore, ", S = ", drain.fall,
               ", n = ", drain.manningN);
    draft.work("Q = A R^(2/3) √S / n = ", drain.flow, " at y = ", drain.depth, ", y/D = ", fill);
    draft.work("v = Q / A = ", velocity, ": ", wordOf(cleansing));
    draft.work("half full the same flow needs a fall of ", needed);
    addNotes(draft, fill, cleansing);
    return draft.take();
}

std::vector<InputSpec> inputsOfSlopingDrain()
{
    InputSpec manning = quantityInput("manning_n", "roughness after Manning: 0.009 smooth plastic, 0.011 fouled",
                                      units::KindId::ratio, "0.005", "0.05");
    manning.sort = InputSort::Ratio;
    manning.ifAbsent = "0.009";
    InputSpec fill =
        quantityInput("fill", "depth over bore; leave out when the flow is given", units::KindId::ratio, "0", "1");
    fill.sort = InputSort::Ratio;
    InputSpec flow = flowInput();
    flow.meaning = "flow through the drain; leave out when the fill is given";
    return {boreInput(),
            moreThan(quantityInput("fall", "fall along the pipe, down in the direction of flow", units::KindId::slope,
                                   "0 %", "100 %")),
            manning, optionally(flow), optionally(moreThan(fill))};
}

} // namespace

Worksheet slopingDrain()
{
    Worksheet sheet;
    sheet.id = "sloping-drain";
    sheet.question = "How much does a sloping drain carry, and how full does it run?";
    sheet.formula = "Q = A R^(2/3) √S / n; by flow solved for the smallest depth y";
    sheet.inputs = inputsOfSlopingDrain();
    sheet.outputs = {{"velocity", "mean velocity of the water", "m/s"},
                     {"flow", "flow through the drain", "m3/s"},
                     {"fill", "depth over bore", "1"},
                     {"depth", "depth of the water over the invert", "m"},
                     {"full_flow", "flow of the full bore", "m3/s"},
                     {"fall_for_half_full", "fall that would carry this flow half full", "1"},
                     {"self_cleansing", "settles, doubtful or cleans", "1"}};
    sheet.sources = {"chow-1959", "nspc-2009", "drain-defaults"};
    sheet.notes = {fullerThanDesign, surcharged, settling, doubtful, longPipe};
    sheet.compute = compute;
    return sheet;
}

} // namespace sumpwright::worksheets
