#include "ui/document/document.hpp"

#include <algorithm>
#include <chrono>

#include <QTimer>
#include <QUndoStack>

#include "core/assessment/own_catalogue.hpp"
#include "ui/document/engine_bridge.hpp"
#include "ui/document/plan_command.hpp"
#include "ui/document/view_settings.hpp"

namespace sumpwright::ui::document
{

namespace
{

constexpr std::chrono::milliseconds burstPause{1000};
// Results usually arrive within a frame or two; only what takes longer is announced as stale, so nothing flickers.
constexpr std::chrono::milliseconds staleAfter{120};

base::Refusal readOnlyRefusal()
{
    return {"document.read-only", "", "this plan is open for reading only", "save it under another name to change it"};
}

} // namespace

Document::Document(QObject* parent)
    : QObject(parent), m_undo(std::make_unique<QUndoStack>()), m_burstEnd(std::make_unique<QTimer>()),
      m_view(std::make_unique<ViewSettings>()), m_builtIn(catalogue::Catalogue::builtIn()), m_catalogue(m_builtIn),
      m_staleNotice(std::make_unique<QTimer>())
{
    m_burstEnd->setSingleShot(true);
    m_burstEnd->setInterval(burstPause);
    connect(m_burstEnd.get(), &QTimer::timeout, this, &Document::endBurst);
    m_staleNotice->setSingleShot(true);
    m_staleNotice->setInterval(staleAfter);
    connect(m_staleNotice.get(), &QTimer::timeout, this, &Document::assessmentChanged);
    m_engine = std::make_unique<EngineBridge>(*this, m_builtIn);
    m_engine->submit(shown(), m_revision);
}

Document::~Document() { m_undo->disconnect(this); }

void Document::reset(plan::Plan plan)
{
    const plan::Plan before = shown();
    endBurst();
    m_undo->clear();
    m_preview.reset();
    m_committed = std::move(plan);
    select({});
    highlight({});
    announceChange(before);
}

bool Document::commit(const plan::Edit& edit, const QString& burst)
{
    auto outcome = m_readOnly ? base::Outcome<plan::Plan>(readOnlyRefusal()) : edit.apply(m_committed);
    if (!outcome) {
        dropPreview();
        const base::Refusal& refusal = outcome.refusal();
        Q_EMIT refused(QString::fromStdString(refusal.place), QString::fromStdString(refusal.what),
                       QString::fromStdString(refusal.accepts));
        return false;
    }
    if (*outcome == m_committed) {
        dropPreview();
        return true;
    }
    if (burst.isEmpty() || burst != m_burst)
        ++m_burstNumber;
    const QString key = burst.isEmpty() ? QString() : QStringLiteral("%1#%2").arg(burst).arg(m_burstNumber);
    const QString name = m_namer ? m_namer(edit, m_committed) : QString::fromStdString(edit.intent);
    m_undo->push(new PlanCommand(*this, m_committed, std::move(outcome).value(), name, key));
    m_burst = burst;
    m_burstEnd->start();
    return true;
}

std::optional<base::Refusal> Document::preview(const plan::Edit& edit)
{
    if (m_readOnly)
        return readOnlyRefusal();
    auto outcome = edit.apply(m_committed);
    if (!outcome)
        return outcome.refusal();
    plan::Plan before = shown();
    m_preview = std::move(outcome).value();
    announceChange(std::move(before));
    return std::nullopt;
}

void Document::dropPreview()
{
    if (!m_preview)
        return;
    plan::Plan before = std::move(*m_preview);
    m_preview.reset();
    announceChange(std::move(before));
}

void Document::showCommitted(plan::Plan plan)
{
    plan::Plan before = shown();
    m_preview.reset();
    m_committed = std::move(plan);
    announceChange(std::move(before));
}

void Document::announceChange(plan::Plan before)
{
    m_previous = std::move(before);
    ++m_revision;
    if (shown().ownParts != m_previous.ownParts)
        m_catalogue = assessment::withOwnParts(m_builtIn, *shown().ownParts);
    const auto gone = [this](base::Id id) { return !plan::kindOf(shown(), id); };
    const bool pruned = std::erase_if(m_selection, gone) > 0;
    if (m_highlighted.valid() && gone(m_highlighted))
        highlight({});
    m_engine->submit(shown(), m_revision);
    Q_EMIT planChanged();
    if (pruned)
        Q_EMIT selectionChanged();
    if (!m_staleNotice->isActive())
        m_staleNotice->start();
}

void Document::receive(std::shared_ptr<const assessment::Assessment> assessment, quint64 revision)
{
    if (revision < m_assessedRevision)
        return;
    m_assessment = std::move(assessment);
    m_assessedRevision = revision;
    if (!stale())
        m_staleNotice->stop();
    Q_EMIT assessmentChanged();
}

void Document::setReadOnly(bool readOnly)
{
    if (m_readOnly == readOnly)
        return;
    dropPreview();
    m_readOnly = readOnly;
    Q_EMIT readOnlyChanged();
}

bool Document::isSelected(base::Id id) const
{
    return std::find(m_selection.begin(), m_selection.end(), id) != m_selection.end();
}

void Document::select(std::vector<base::Id> ids)
{
    std::erase_if(ids, [this](base::Id id) { return !plan::kindOf(shown(), id); });
    if (ids == m_selection)
        return;
    endBurst();
    m_selection = std::move(ids);
    Q_EMIT selectionChanged();
}

void Document::highlight(base::Id id)
{
    if (m_highlighted == id)
        return;
    m_highlighted = id;
    Q_EMIT highlightChanged();
}

void Document::goTo(std::vector<base::Id> ids)
{
    select(ids);
    Q_EMIT goToRequested(m_selection);
}

void Document::say(const QString& message) { Q_EMIT said(message); }

void Document::endBurst()
{
    m_burst.clear();
    m_burstEnd->stop();
}

} // namespace sumpwright::ui::document
