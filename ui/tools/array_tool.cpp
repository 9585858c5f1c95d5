#include "ui/tools/array_tool.hpp"

#include <QKeyEvent>
#include <QLineEdit>

#include <algorithm>

#include "core/plan/edits/arrange.hpp"
#include "core/plan/edits/copy.hpp"
#include "core/units/parse.hpp"
#include "ui/canvas/canvas_settings.hpp"
#include "ui/canvas/element_item.hpp"
#include "ui/canvas/plan_scene.hpp"
#include "ui/canvas/plan_view.hpp"
#include "ui/text/refusals.hpp"
#include "ui/text/subject.hpp"
#include "ui/tools/tool_strip.hpp"

namespace sumpwright::ui::tools
{

namespace
{
constexpr auto usualGap = units::millimetres(600.0); // common practice, no source: room to walk between

// So that the copies stand free of each other, on the grid.
units::Length usualStep(units::Length low, units::Length high, units::Length grid)
{
    return std::max(grid, toStep(high - low + usualGap, grid));
}
} // namespace

ArrayTool::ArrayTool(canvas::PlanView& view) : Tool(view), m_strip(new ToolStrip(view))
{
    m_columns =
        m_strip->addField(tr("&Columns"), [this](const QString& text) { return countEntered(text, m_wish.columns); });
    m_rows = m_strip->addField(tr("&Rows"), [this](const QString& text) { return countEntered(text, m_wish.rows); });
    m_across = m_strip->addField(
        tr("&Across"), [this](const QString& text) { return stepEntered(text, m_wish.across, tr("Across")); });
    m_up = m_strip->addField(tr("&Up"), [this](const QString& text) { return stepEntered(text, m_wish.up, tr("Up")); });
}

void ArrayTool::begin()
{
    m_elements = document().selection();
    if (m_elements.empty() || !mayEdit()) {
        if (m_elements.empty())
            document().say(tr("Select what is to be copied first."));
        // Only when the toolbox has told everybody that this tool is the active one.
        QMetaObject::invokeMethod(this, &Tool::finished, Qt::QueuedConnection);
        return;
    }
    plan::Box all = plan::boxOf(plan(), m_elements.front());
    for (const auto id : m_elements) {
        const auto box = plan::boxOf(plan(), id);
        all.low = {std::min(all.low.x, box.low.x), std::min(all.low.y, box.low.y)};
        all.high = {std::max(all.high.x, box.high.x), std::max(all.high.y, box.high.y)};
    }
    const auto grid = view().settings().gridStep();
    m_wish = {2, 1, usualStep(all.low.x, all.high.x, grid), usualStep(all.low.y, all.high.y, grid)};
    writeFields();
    m_strip->placeAndShow();
    m_columns->setFocus();
    m_columns->selectAll();
    document().preview(edit());
}

void ArrayTool::end()
{
    giveBack();
    m_strip->hide();
}

QString ArrayTool::hint() const
{
    return tr("Type how many columns and rows and the steps between them; Enter in the plan or a click copies, "
              "Esc gives back.");
}

plan::Edit ArrayTool::edit() const
{
    const auto none = units::metres(0.0);
    return plan::arrayCopy(m_elements, m_wish.columns, m_wish.rows, {m_wish.across, none}, {none, m_wish.up});
}

QString ArrayTool::countEntered(const QString& text, int& count)
{
    bool whole = false;
    const int typed = text.trimmed().toInt(&whole);
    if (!whole || typed < 1)
        return tr("A whole number from 1 is needed.");
    const Wish former = m_wish;
    count = typed;
    return show(former);
}

QString ArrayTool::stepEntered(const QString& text, units::Length& step, const QString& name)
{
    const auto figures = view().figures();
    units::Reading reading;
    reading.bareUnit = figures.system == units::UnitSystem::us ? "ft" : "m";
    reading.typed = figures.system;
    const auto typed = units::parse<units::Length>(text.toStdString(), figures.numbers, reading);
    if (!typed)
        return text::sentenceOf(typed.refusal(), name);
    const Wish former = m_wish;
    step = *typed;
    return show(former);
}

QString ArrayTool::show(const Wish& former)
{
    if (m_wish.columns == 1 && m_wish.rows == 1) {
        document().dropPreview(); // one is no copy yet; the other number may follow
    } else if (const auto refusal = document().preview(edit())) {
        m_wish = former;
        return text::sentenceOf(*refusal, tr("Copies"));
    }
    writeFields();
    return {};
}

void ArrayTool::writeFields()
{
    m_columns->setText(QString::number(m_wish.columns));
    m_rows->setText(QString::number(m_wish.rows));
    m_across->setText(view().figures().text(m_wish.across));
    m_up->setText(view().figures().text(m_wish.up));
}

bool ArrayTool::key(QKeyEvent& event)
{
    if (event.key() == Qt::Key_Escape) {
        Q_EMIT finished();
        return true;
    }
    if (event.key() != Qt::Key_Return && event.key() != Qt::Key_Enter)
        return false;
    take();
    return true;
}

void ArrayTool::press(const canvas::CanvasPointer&) { take(); }

void ArrayTool::take()
{
    if (m_elements.empty())
        return;
    const auto chosen = m_elements;
    const auto left = plan::runsLeftBehind(plan(), chosen);
    const QString names = left.empty() ? QString() : text::subjects(plan(), left);
    const auto nextId = plan().nextId;
    if (!document().commit(edit()))
        return; // refused and said: the fields stay, to be mended
    std::vector<base::Id> all = chosen;
    for (const auto* item : view().planScene().elements())
        if (item->id().number >= nextId)
            all.push_back(item->id());
    m_elements.clear();
    document().select(std::move(all));
    if (!left.empty())
        document().say(tr("Not copied: %1. An end leads to something that was not selected.").arg(names));
    Q_EMIT finished();
}

void ArrayTool::giveBack()
{
    m_elements.clear();
    document().dropPreview();
}

} // namespace sumpwright::ui::tools
