#include "ui/window/arrange_commands.hpp"

#include <QUndoStack>

#include "core/plan/edits/arrange.hpp"
#include "core/plan/edits/copy.hpp"
#include "core/plan/edits/delete.hpp"
#include "core/plan/edits/move.hpp"
#include "core/plan/edits/run.hpp"
#include "ui/document/document.hpp"
#include "ui/window/commands.hpp"

namespace sumpwright::ui::window
{

namespace
{

using document::Document;

struct Need {
    const char* id;
    std::size_t least; // elements selected
};

constexpr Need needs[] = {
    {"edit.duplicate", 1},         {"edit.delete", 1},       {"edit.select-none", 1},     {"arrange.turn-left", 1},
    {"arrange.turn-right", 1},     {"arrange.raise", 1},     {"arrange.lower", 1},        {"arrange.align-left", 2},
    {"arrange.align-right", 2},    {"arrange.align-top", 2}, {"arrange.align-bottom", 2}, {"arrange.align-middle-x", 2},
    {"arrange.align-middle-y", 2}, {"arrange.spread-x", 3},  {"arrange.spread-y", 3},     {"arrange.reverse", 1},
};

template <class Element> void collect(const plan::Table<Element>& table, std::vector<base::Id>& ids)
{
    for (const auto& element : table)
        ids.push_back(element->id);
}

std::vector<base::Id> everything(const plan::Plan& plan)
{
    std::vector<base::Id> ids;
    collect(plan.fixtures, ids);
    collect(plan.vessels, ids);
    collect(plan.pumps, ids);
    collect(plan.tees, ids);
    collect(plan.runs, ids);
    collect(plan.notes, ids);
    collect(plan.dimensions, ids);
    return ids;
}

QString tagsOf(const plan::Plan& plan, const std::vector<base::Id>& ids)
{
    QStringList tags;
    for (const base::Id id : ids)
        tags << QString::fromStdString(plan::tagOf(plan, id));
    return tags.join(QStringLiteral(", "));
}

void duplicateSelection(Document& document)
{
    const plan::Plan before = document.committed();
    const auto chosen = document.selection();
    const plan::Point by{units::metres(0.3), units::metres(-0.3)};
    if (!document.commit(plan::duplicate(chosen, by)))
        return;
    std::vector<base::Id> copies;
    for (const base::Id id : everything(document.committed()))
        if (id.number >= before.nextId)
            copies.push_back(id);
    document.select(std::move(copies));
    if (const auto left = plan::runsLeftBehind(before, chosen); !left.empty())
        document.say(
            Commands::tr("Not copied: %1. An end leads to something that was not selected.").arg(tagsOf(before, left)));
}

void deleteSelection(Document& document)
{
    const auto chosen = document.selection();
    const auto detached = plan::detachedBy(document.committed(), chosen);
    if (!document.commit(plan::deleteElements(chosen)))
        return;
    if (!detached.empty()) {
        document.say(Commands::tr("Now open at one end: %1. Undo brings everything back.")
                         .arg(tagsOf(document.committed(), detached)));
    }
}

void turnSelection(Document& document, double degrees)
{
    const auto& chosen = document.selection();
    if (chosen.empty())
        return;
    plan::Box all = plan::boxOf(document.committed(), chosen.front());
    for (const base::Id id : chosen) {
        const plan::Box box = plan::boxOf(document.committed(), id);
        all.low = {std::min(all.low.x, box.low.x), std::min(all.low.y, box.low.y)};
        all.high = {std::max(all.high.x, box.high.x), std::max(all.high.y, box.high.y)};
    }
    const plan::Point middle{(all.low.x + all.high.x) / 2.0, (all.low.y + all.high.y) / 2.0};
    document.commit(plan::turnElements(chosen, middle, units::degrees(degrees)));
}

std::vector<base::Id> selectedRuns(const Document& document)
{
    std::vector<base::Id> runs;
    for (const base::Id id : document.selection())
        if (document.committed().runs.find(id))
            runs.push_back(id);
    return runs;
}

} // namespace

void addEditCommands(Commands& commands, Document& document)
{
    const auto change = [&](const CommandSpec& spec, std::function<void()> run) {
        commands.add(spec, std::move(run));
        commands.markChanging(spec.id);
    };
    change({"edit.duplicate",
            Menu::edit,
            Commands::tr("D&uplicate"),
            Commands::tr("Copies what is selected, with tags of its own."),
            "Ctrl+D",
            {},
            Scope::window,
            false,
            true},
           [&document] { duplicateSelection(document); });
    change({"edit.delete",
            Menu::edit,
            Commands::tr("&Delete"),
            Commands::tr("Removes what is selected; pipe ends become open."),
            "Del",
            {},
            Scope::planView},
           [&document] { deleteSelection(document); });
    commands.add({"edit.select-all",
                  Menu::edit,
                  Commands::tr("Select &all"),
                  Commands::tr("Selects everything drawn."),
                  "Ctrl+A",
                  {},
                  Scope::planView,
                  false,
                  true},
                 [&document] { document.select(everything(document.shown())); });
    commands.add({"edit.select-none", Menu::edit, Commands::tr("Select &nothing"),
                  Commands::tr("Clears the selection."), "Ctrl+Shift+A"},
                 [&document] { document.select({}); });
}

void addArrangeCommands(Commands& commands, Document& document)
{
    const auto change = [&](const char* id, const QString& text, const QString& tip, const char* key, bool newGroup,
                            std::function<void()> run) {
        commands.add({id, Menu::arrange, text, tip, key, {}, Scope::window, false, newGroup}, std::move(run));
        commands.markChanging(id);
    };
    const auto align = [&document](plan::Alignment alignment) {
        return [&document, alignment] { document.commit(plan::align(document.selection(), alignment)); };
    };
    change("arrange.turn-left", Commands::tr("Turn a quarter to the &left"),
           Commands::tr("Turns what is selected by 90 degrees, counter-clockwise."), "Ctrl+Shift+R", false,
           [&document] { turnSelection(document, 90.0); });
    change("arrange.turn-right", Commands::tr("Turn a quarter to the &right"),
           Commands::tr("Turns what is selected by 90 degrees, clockwise."), "Ctrl+R", false,
           [&document] { turnSelection(document, -90.0); });
    change("arrange.raise", Commands::tr("R&aise by 10 mm"), Commands::tr("Raises the levels of what is selected."),
           "Ctrl+PgUp", true, [&document] {
               document.commit(plan::raiseElements(document.selection(), units::millimetres(10.0)),
                               QStringLiteral("raise"));
           });
    change("arrange.lower", Commands::tr("Lo&wer by 10 mm"), Commands::tr("Lowers the levels of what is selected."),
           "Ctrl+PgDown", false, [&document] {
               document.commit(plan::raiseElements(document.selection(), units::millimetres(-10.0)),
                               QStringLiteral("raise"));
           });
    change("arrange.align-left", Commands::tr("Left &edges in line"),
           Commands::tr("Moves the selected to the leftmost edge."), "Ctrl+E, Left", true,
           align(plan::Alignment::left));
    change("arrange.align-right", Commands::tr("Right e&dges in line"),
           Commands::tr("Moves the selected to the rightmost edge."), "Ctrl+E, Right", false,
           align(plan::Alignment::right));
    change("arrange.align-top", Commands::tr("&Top edges in line"),
           Commands::tr("Moves the selected to the topmost edge."), "Ctrl+E, Up", false, align(plan::Alignment::top));
    change("arrange.align-bottom", Commands::tr("&Bottom edges in line"),
           Commands::tr("Moves the selected to the lowest edge on the sheet."), "Ctrl+E, Down", false,
           align(plan::Alignment::bottom));
    change("arrange.align-middle-x", Commands::tr("&Middles in one column"),
           Commands::tr("Brings the middles of the selected above each other."), "Ctrl+E, C", false,
           align(plan::Alignment::centreX));
    change("arrange.align-middle-y", Commands::tr("Middles in one r&ow"),
           Commands::tr("Brings the middles of the selected beside each other."), "Ctrl+E, R", false,
           align(plan::Alignment::centreY));
    change("arrange.spread-x", Commands::tr("Equal &gaps across"),
           Commands::tr("Spaces three or more evenly from left to right."), "Ctrl+E, G", true,
           [&document] { document.commit(plan::distribute(document.selection(), plan::Axis::x)); });
    change("arrange.spread-y", Commands::tr("Equal gaps &up the sheet"),
           Commands::tr("Spaces three or more evenly from bottom to top."), "Ctrl+E, U", false,
           [&document] { document.commit(plan::distribute(document.selection(), plan::Axis::y)); });
    change("arrange.reverse", Commands::tr("Lead the water the other wa&y"),
           Commands::tr("Swaps the two ends of the selected pipe runs."), "Ctrl+E, W", true, [&document] {
               if (const auto runs = selectedRuns(document); !runs.empty())
                   document.commit(plan::reverseRuns(runs));
               else
                   document.say(Commands::tr("Select a pipe run first."));
           });
}

void followSelection(Commands& commands, Document& document)
{
    const std::size_t count = document.selection().size();
    for (const Need& need : needs) {
        commands.find(need.id)->setEnabled(count >= need.least &&
                                           !(document.readOnly() && commands.changesPlan(need.id)));
    }
}

} // namespace sumpwright::ui::window
