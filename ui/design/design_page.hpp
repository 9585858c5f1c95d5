// DesignPage: what the questions of the design help have in common: a form, a button that works it out, the reason in
// a sentence, tables, and one button that applies the proposal as a single undo step.
//
// It is worked out when the page first comes into view, when it is asked again and after it was applied; when the plan
// changes otherwise the answer stays, is marked as one of an earlier plan and can no longer be applied.
#pragma once

#include <functional>
#include <optional>

#include <QWidget>

#include "core/assessment/working.hpp"
#include "core/base/outcome.hpp"
#include "core/plan/edits/edit.hpp"
#include "ui/design/asker.hpp"
#include "ui/design/entry_line.hpp"
#include "ui/document/document.hpp"
#include "ui/text/display.hpp"

QT_BEGIN_NAMESPACE
class QComboBox;
class QFormLayout;
class QLabel;
class QPushButton;
class QVBoxLayout;
QT_END_NAMESPACE

namespace sumpwright::ui::design
{

using DisplayNow = std::function<text::DisplaySettings()>;

class DesignPage : public QWidget
{
    Q_OBJECT

public:
    DesignPage(document::Document& document, DisplayNow display, const QString& applyText, QWidget* parent = nullptr);

    void ask();
    void apply();
    bool working() const { return m_asker.busy(); }
    bool current() const; // the answer is one of the plan on view
    QString sentence() const;
    QStringList remarks() const { return m_remarks; }
    QString said() const; // what was refused or is under way; empty: nothing

Q_SIGNALS:
    void workingWanted(const sumpwright::assessment::Working& working);

protected:
    // The question put to the thread: a copy of the plan goes with it. What it returns shows the answer.
    virtual Asker::Job job() = 0;
    virtual void clearAnswer() = 0;
    virtual std::optional<plan::Edit> proposal() const = 0;
    virtual std::optional<assessment::Working> shownWorking() const = 0; // of the row at hand
    virtual void redisplay() {}                                          // units or number marks changed

    void tell(const QString& sentence, const QStringList& remarks);
    void refuse(const base::Refusal& refusal);
    void rowChanged() { refreshState(); }    // another row is at hand
    void tellFault(const QString& sentence); // of an entry

    QFormLayout& form() { return *m_form; }
    QVBoxLayout& answer() { return *m_answer; }
    QWidget* label(const QString& words, QWidget* field);
    EntryLine* addLine(const QString& name, const QString& whenEmpty, EntryLine::Accept accept);
    QComboBox* addChoice(const QString& name, const QStringList& choices);
    template <class Kind>
    EntryLine* addQuantity(const QString& name, const QString& whenEmpty, std::optional<Kind>& into)
    {
        return addLine(name, whenEmpty, [this, &into](const QString& typed) -> std::optional<base::Refusal> {
            if (typed.isEmpty()) {
                into.reset();
                return std::nullopt;
            }
            const auto read = display().template read<Kind>(typed, {}, document().committed().site->currency);
            if (!read)
                return read.refusal();
            into = *read;
            return std::nullopt;
        });
    }
    EntryLine* addRatio(const QString& name, const QString& whenEmpty, std::optional<double>& into);

    document::Document& document() { return m_document; }
    const document::Document& document() const { return m_document; }
    text::DisplaySettings display() const { return m_display(); }

    void showEvent(QShowEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    void refreshState();
    void say(const QString& words, bool fault);
    void recolour();

    document::Document& m_document;
    DisplayNow m_display;
    Asker m_asker;
    QFormLayout* m_form;
    QPushButton* m_ask;
    QPushButton* m_apply;
    QPushButton* m_working;
    QLabel* m_said;
    QLabel* m_sentence;
    QVBoxLayout* m_answer;
    QLabel* m_notes;
    QStringList m_remarks;
    bool m_fault = false;
    bool m_asked = false;
    bool m_answered = false;
    quint64 m_revision = 0; // of the plan that was asked about
};

} // namespace sumpwright::ui::design
