// Document: the current plan, the gesture in progress, the undo stack, the selection and the newest results.
//
// The only place in the window that holds the plan. A tool previews an edit while the gesture lasts and commits it
// once: one gesture is one undo step. Nothing else on screen keeps a truth of its own.
#pragma once

#include <functional>
#include <memory>
#include <optional>
#include <vector>

#include <QObject>
#include <QString>

#include "core/assessment/assessment.hpp"
#include "core/base/outcome.hpp"
#include "core/catalogue/catalogue.hpp"
#include "core/plan/edits/edit.hpp"
#include "core/plan/plan.hpp"

QT_BEGIN_NAMESPACE
class QTimer;
class QUndoStack;
QT_END_NAMESPACE

namespace sumpwright::ui::document
{

class EngineBridge;
class ViewSettings;

// Makes the words of an undo step ("Move grow bed B2") from an edit and the plan before it.
using EditNamer = std::function<QString(const plan::Edit& edit, const plan::Plan& before)>;

class Document : public QObject
{
    Q_OBJECT

public:
    explicit Document(QObject* parent = nullptr);
    ~Document() override;

    const plan::Plan& committed() const { return m_committed; }
    const plan::Plan& shown() const { return m_preview ? *m_preview : m_committed; } // preview while a gesture lasts
    const plan::Plan& previouslyShown() const { return m_previous; }                 // what planChanged compares with
    quint64 revision() const { return m_revision; } // rises with every change of shown()
    // The built-in tables with the own parts of shown(); changes with planChanged().
    std::shared_ptr<const catalogue::Catalogue> catalogue() const { return m_catalogue; }

    // Replaces everything (open, new, revert): undo starts empty, selection is cleared.
    void reset(plan::Plan plan);

    // Applies and pushes one undo step. Refused: nothing changes, refused() is emitted, false is returned. An edit
    // that changes nothing leaves no step. Commits that follow each other within a second with the same burst key
    // ("nudge") make one step; a change of selection, an undo or another edit ends the burst.
    bool commit(const plan::Edit& edit, const QString& burst = {});
    // Shows apply(committed, edit) without an undo step. Refused: the last good preview stays; the refusal returns.
    std::optional<base::Refusal> preview(const plan::Edit& edit);
    bool previewing() const { return m_preview.has_value(); }
    void dropPreview();

    QUndoStack& undoStack() { return *m_undo; }
    void nameEditsBy(EditNamer namer) { m_namer = std::move(namer); }
    bool readOnly() const { return m_readOnly; }
    void setReadOnly(bool readOnly);

    const std::vector<base::Id>& selection() const { return m_selection; }
    bool isSelected(base::Id id) const;
    void select(std::vector<base::Id> ids);                // ids that do not exist are left out
    base::Id highlighted() const { return m_highlighted; } // pointed at in a chart or list; lights up in plan
    void highlight(base::Id id);                           // Id{}: nothing
    void goTo(std::vector<base::Id> ids);                  // selects and asks the plan view to show them
    void say(const QString& message);                      // a quiet line in the status bar

    ViewSettings& view() { return *m_view; }
    const ViewSettings& view() const { return *m_view; }

    // The newest results; null before the first. Stale: computed from an older revision than shown.
    std::shared_ptr<const assessment::Assessment> assessment() const { return m_assessment; }
    bool stale() const { return m_assessedRevision != m_revision; }

Q_SIGNALS:
    void planChanged(); // shown() changed; compare element pointers with previouslyShown()
    void selectionChanged();
    void highlightChanged();
    void goToRequested(const std::vector<sumpwright::base::Id>& ids);
    void said(const QString& message);
    void assessmentChanged(); // new results, or staleness changed
    void refused(const QString& where, const QString& what, const QString& mend);
    void readOnlyChanged();

private:
    friend class EngineBridge;
    friend class PlanCommand;
    void showCommitted(plan::Plan plan);    // also drops the preview
    void announceChange(plan::Plan before); // after m_committed or m_preview changed
    void receive(std::shared_ptr<const assessment::Assessment> assessment, quint64 revision);
    void endBurst();

    plan::Plan m_committed;
    std::optional<plan::Plan> m_preview;
    plan::Plan m_previous;
    quint64 m_revision = 0;
    std::unique_ptr<QUndoStack> m_undo;
    EditNamer m_namer;
    QString m_burst; // key of the burst going on; empty: none
    int m_burstNumber = 0;
    std::unique_ptr<QTimer> m_burstEnd;
    std::vector<base::Id> m_selection;
    base::Id m_highlighted;
    bool m_readOnly = false;
    std::unique_ptr<ViewSettings> m_view;
    std::shared_ptr<const catalogue::Catalogue> m_builtIn;
    std::shared_ptr<const catalogue::Catalogue> m_catalogue;
    std::shared_ptr<const assessment::Assessment> m_assessment;
    quint64 m_assessedRevision = 0;
    std::unique_ptr<QTimer> m_staleNotice;
    std::unique_ptr<EngineBridge> m_engine;
};

} // namespace sumpwright::ui::document
