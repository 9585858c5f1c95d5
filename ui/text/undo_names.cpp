#include "ui/text/undo_names.hpp"

#include <algorithm>
#include <array>
#include <string_view>

#include <QCoreApplication>

#include "ui/text/subject.hpp"

namespace sumpwright::ui::text
{

namespace
{

struct Wording {
    std::string_view intent;
    const char* words; // %1: the subjects
};

constexpr const char* context = "UndoNames";

constexpr std::array wordings{
    Wording{"edit.add-port", QT_TRANSLATE_NOOP("UndoNames", "Add inlet or outlet to %1")},
    Wording{"edit.add-valve", QT_TRANSLATE_NOOP("UndoNames", "Add valve to %1")},
    Wording{"edit.align", QT_TRANSLATE_NOOP("UndoNames", "Align %1")},
    Wording{"edit.altitude", QT_TRANSLATE_NOOP("UndoNames", "Change altitude")},
    Wording{"edit.array", QT_TRANSLATE_NOOP("UndoNames", "Copy %1 in rows")},
    Wording{"edit.base-level", QT_TRANSLATE_NOOP("UndoNames", "Change base level of %1")},
    Wording{"edit.bend-fitting", QT_TRANSLATE_NOOP("UndoNames", "Change a bend of %1")},
    Wording{"edit.bend-loss", QT_TRANSLATE_NOOP("UndoNames", "Change a bend's K of %1")},
    Wording{"edit.choose-pipes", QT_TRANSLATE_NOOP("UndoNames", "Change pipe sizes of %1")},
    Wording{"edit.choose-pump", QT_TRANSLATE_NOOP("UndoNames", "Choose another pump for %1")},
    Wording{"edit.clear-height", QT_TRANSLATE_NOOP("UndoNames", "Change clear height")},
    Wording{"edit.clearances", QT_TRANSLATE_NOOP("UndoNames", "Change clearances")},
    Wording{"edit.client", QT_TRANSLATE_NOOP("UndoNames", "Change client")},
    Wording{"edit.coldest-water", QT_TRANSLATE_NOOP("UndoNames", "Change coldest water")},
    Wording{"edit.connect", QT_TRANSLATE_NOOP("UndoNames", "Connect %1")},
    Wording{"edit.currency", QT_TRANSLATE_NOOP("UndoNames", "Change currency")},
    Wording{"edit.delete", QT_TRANSLATE_NOOP("UndoNames", "Delete %1")},
    Wording{"edit.design-air", QT_TRANSLATE_NOOP("UndoNames", "Change design air temperature")},
    Wording{"edit.design-water", QT_TRANSLATE_NOOP("UndoNames", "Change design water temperature")},
    Wording{"edit.designer", QT_TRANSLATE_NOOP("UndoNames", "Change designer")},
    Wording{"edit.detach", QT_TRANSLATE_NOOP("UndoNames", "Detach %1")},
    Wording{"edit.dimension-ends", QT_TRANSLATE_NOOP("UndoNames", "Move an end of %1")},
    Wording{"edit.dimension-offset", QT_TRANSLATE_NOOP("UndoNames", "Move %1 off")},
    Wording{"edit.distribute", QT_TRANSLATE_NOOP("UndoNames", "Distribute %1")},
    Wording{"edit.drain-level", QT_TRANSLATE_NOOP("UndoNames", "Change siphon level of %1")},
    Wording{"edit.drain-point", QT_TRANSLATE_NOOP("UndoNames", "Change drain point")},
    Wording{"edit.draw-run", QT_TRANSLATE_NOOP("UndoNames", "Draw %1")},
    Wording{"edit.duplicate", QT_TRANSLATE_NOOP("UndoNames", "Duplicate %1")},
    Wording{"edit.end-loss", QT_TRANSLATE_NOOP("UndoNames", "Change K at an end of %1")},
    Wording{"edit.extra-fittings", QT_TRANSLATE_NOOP("UndoNames", "Change fittings of %1")},
    Wording{"edit.fall", QT_TRANSLATE_NOOP("UndoNames", "Change fall of %1")},
    Wording{"edit.fixture-ends", QT_TRANSLATE_NOOP("UndoNames", "Move an end of %1")},
    Wording{"edit.fixture-height", QT_TRANSLATE_NOOP("UndoNames", "Change height of %1")},
    Wording{"edit.fixture-kind", QT_TRANSLATE_NOOP("UndoNames", "Change kind of %1")},
    Wording{"edit.fixture-level", QT_TRANSLATE_NOOP("UndoNames", "Change level of %1")},
    Wording{"edit.fixture-size", QT_TRANSLATE_NOOP("UndoNames", "Change size of %1")},
    Wording{"edit.floor-fall", QT_TRANSLATE_NOOP("UndoNames", "Change fall of the floor")},
    Wording{"edit.floor-level", QT_TRANSLATE_NOOP("UndoNames", "Change level of the floor")},
    Wording{"edit.floor-thickness", QT_TRANSLATE_NOOP("UndoNames", "Change thickness of the slab")},
    Wording{"edit.floor-use", QT_TRANSLATE_NOOP("UndoNames", "Change the use compared with")},
    Wording{"edit.import-parts", QT_TRANSLATE_NOOP("UndoNames", "Import own parts")},
    Wording{"edit.insert-vertex", QT_TRANSLATE_NOOP("UndoNames", "Add vertex to %1")},
    Wording{"edit.invert", QT_TRANSLATE_NOOP("UndoNames", "Change invert of %1")},
    Wording{"edit.least-depth", QT_TRANSLATE_NOOP("UndoNames", "Change least depth of %1")},
    Wording{"edit.medium", QT_TRANSLATE_NOOP("UndoNames", "Change growing medium of %1")},
    Wording{"edit.move", QT_TRANSLATE_NOOP("UndoNames", "Move %1")},
    Wording{"edit.move-port", QT_TRANSLATE_NOOP("UndoNames", "Move inlet or outlet of %1")},
    Wording{"edit.move-underlay", QT_TRANSLATE_NOOP("UndoNames", "Move site sketch")},
    Wording{"edit.move-valve", QT_TRANSLATE_NOOP("UndoNames", "Move valve of %1")},
    Wording{"edit.move-vertex", QT_TRANSLATE_NOOP("UndoNames", "Move vertex of %1")},
    Wording{"edit.north", QT_TRANSLATE_NOOP("UndoNames", "Change direction of north")},
    Wording{"edit.note-text", QT_TRANSLATE_NOOP("UndoNames", "Change words of %1")},
    Wording{"edit.opening", QT_TRANSLATE_NOOP("UndoNames", "Change valve opening of %1")},
    Wording{"edit.outline", QT_TRANSLATE_NOOP("UndoNames", "Change floor outline")},
    Wording{"edit.own-part", QT_TRANSLATE_NOOP("UndoNames", "Change own parts")},
    Wording{"edit.pipe", QT_TRANSLATE_NOOP("UndoNames", "Change pipe of %1")},
    Wording{"edit.pipe-condition", QT_TRANSLATE_NOOP("UndoNames", "Change state of pipe walls")},
    Wording{"edit.place", QT_TRANSLATE_NOOP("UndoNames", "Place %1")},
    Wording{"edit.port-bore", QT_TRANSLATE_NOOP("UndoNames", "Change bore at %1")},
    Wording{"edit.port-kind", QT_TRANSLATE_NOOP("UndoNames", "Change kind of inlet or outlet of %1")},
    Wording{"edit.port-level", QT_TRANSLATE_NOOP("UndoNames", "Change level at %1")},
    Wording{"edit.power-price", QT_TRANSLATE_NOOP("UndoNames", "Change power price")},
    Wording{"edit.pump-curve", QT_TRANSLATE_NOOP("UndoNames", "Change curve of %1")},
    Wording{"edit.pump-arrangement", QT_TRANSLATE_NOOP("UndoNames", "Change number of units of %1")},
    Wording{"edit.pump-model", QT_TRANSLATE_NOOP("UndoNames", "Change model of %1")},
    Wording{"edit.pump-outlet", QT_TRANSLATE_NOOP("UndoNames", "Change outlet level of %1")},
    Wording{"edit.pump-running", QT_TRANSLATE_NOOP("UndoNames", "Start or stop %1")},
    Wording{"edit.pump-speed", QT_TRANSLATE_NOOP("UndoNames", "Change speed of %1")},
    Wording{"edit.raise", QT_TRANSLATE_NOOP("UndoNames", "Raise %1")},
    Wording{"edit.remove-own-part", QT_TRANSLATE_NOOP("UndoNames", "Remove own part")},
    Wording{"edit.remove-port", QT_TRANSLATE_NOOP("UndoNames", "Remove inlet or outlet of %1")},
    Wording{"edit.remove-underlay", QT_TRANSLATE_NOOP("UndoNames", "Remove site sketch")},
    Wording{"edit.remove-valve", QT_TRANSLATE_NOOP("UndoNames", "Remove valve of %1")},
    Wording{"edit.remove-vertex", QT_TRANSLATE_NOOP("UndoNames", "Remove vertex of %1")},
    Wording{"edit.rename", QT_TRANSLATE_NOOP("UndoNames", "Rename %1")},
    Wording{"edit.resize", QT_TRANSLATE_NOOP("UndoNames", "Resize %1")},
    Wording{"edit.reverse", QT_TRANSLATE_NOOP("UndoNames", "Reverse %1")},
    Wording{"edit.running-level", QT_TRANSLATE_NOOP("UndoNames", "Change water level of %1")},
    Wording{"edit.scale-underlay", QT_TRANSLATE_NOOP("UndoNames", "Scale site sketch")},
    Wording{"edit.service", QT_TRANSLATE_NOOP("UndoNames", "Change service of %1")},
    Wording{"edit.set-valves", QT_TRANSLATE_NOOP("UndoNames", "Set %1 for the target flows")},
    Wording{"edit.site-name", QT_TRANSLATE_NOOP("UndoNames", "Change name of the plan")},
    Wording{"edit.stand", QT_TRANSLATE_NOOP("UndoNames", "Change stand of %1")},
    Wording{"edit.stand-pump", QT_TRANSLATE_NOOP("UndoNames", "Stand %1 elsewhere")},
    Wording{"edit.tare", QT_TRANSLATE_NOOP("UndoNames", "Change empty mass of %1")},
    Wording{"edit.target-flow", QT_TRANSLATE_NOOP("UndoNames", "Change target flow of %1")},
    Wording{"edit.tee-level", QT_TRANSLATE_NOOP("UndoNames", "Change level of %1")},
    Wording{"edit.turn", QT_TRANSLATE_NOOP("UndoNames", "Turn %1")},
    Wording{"edit.turn-underlay", QT_TRANSLATE_NOOP("UndoNames", "Turn site sketch")},
    Wording{"edit.underlay", QT_TRANSLATE_NOOP("UndoNames", "Put site sketch under the plan")},
    Wording{"edit.underlay-opacity", QT_TRANSLATE_NOOP("UndoNames", "Change strength of site sketch")},
    Wording{"edit.valve-fitting", QT_TRANSLATE_NOOP("UndoNames", "Change valve of %1")},
    Wording{"edit.valve-loss", QT_TRANSLATE_NOOP("UndoNames", "Change a valve's K of %1")},
    Wording{"edit.screen", QT_TRANSLATE_NOOP("UndoNames", "Change screen of %1")},
    Wording{"edit.vent-level", QT_TRANSLATE_NOOP("UndoNames", "Change vent hole of %1")},
    Wording{"edit.vertex-invert", QT_TRANSLATE_NOOP("UndoNames", "Change invert of %1")},
    Wording{"edit.vertex-level", QT_TRANSLATE_NOOP("UndoNames", "Change a level of %1")},
    Wording{"edit.vessel-kind", QT_TRANSLATE_NOOP("UndoNames", "Change kind of %1")},
    Wording{"edit.wall-height", QT_TRANSLATE_NOOP("UndoNames", "Change wall height of %1")},
    Wording{"edit.wall-thickness", QT_TRANSLATE_NOOP("UndoNames", "Change wall thickness of %1")},
    Wording{"edit.warmest-water", QT_TRANSLATE_NOOP("UndoNames", "Change warmest water")},
};

const Wording* wordingOf(std::string_view intent)
{
    const auto at = std::find_if(wordings.begin(), wordings.end(), [&](const auto& w) { return w.intent == intent; });
    return at == wordings.end() ? nullptr : &*at;
}

// What the edit is about; for an element it makes, as the plan after it names it.
QString subjectWords(const plan::Edit& edit, const plan::Plan& before)
{
    if (!edit.subjects.empty())
        return subjects(before, edit.subjects);
    const base::Id made{before.nextId};
    const auto after = edit.apply(before);
    return after ? subject(*after, made) : subjects(before, {});
}

} // namespace

QString editName(const plan::Edit& edit, const plan::Plan& before)
{
    const Wording* wording = wordingOf(edit.intent);
    if (!wording)
        return QCoreApplication::translate(context, "Change %1").arg(subjects(before, edit.subjects));
    const QString words = QCoreApplication::translate(context, wording->words);
    return words.contains(QLatin1String("%1")) ? words.arg(subjectWords(edit, before)) : words;
}

bool knowsIntent(const std::string& intent) { return wordingOf(intent) != nullptr; }

} // namespace sumpwright::ui::text
