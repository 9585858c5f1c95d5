// WorksheetPanel: the trade's single questions: choose one, fill in, and read the answer, its working, its source and
// its cautions. Opened from a result it holds the plan's own numbers; changing one there never touches the plan.
#pragma once

#include <functional>
#include <optional>

#include <QWidget>

#include "core/assessment/working.hpp"
#include "core/worksheets/worksheet.hpp"
#include "ui/document/document.hpp"
#include "ui/text/display.hpp"

QT_BEGIN_NAMESPACE
class QComboBox;
class QLabel;
class QPushButton;
class QTextBrowser;
class QVBoxLayout;
QT_END_NAMESPACE

namespace sumpwright::ui::worksheets
{

class QuestionForm;

class WorksheetPanel : public QWidget
{
    Q_OBJECT

public:
    WorksheetPanel(document::Document& document, std::function<text::DisplaySettings()> display,
                   QWidget* parent = nullptr);

    void open(const assessment::Working& working); // the worksheet of a result, with its numbers
    QString answerText() const;                    // as copied
    const std::optional<sumpwright::worksheets::Answer>& answer() const
    {
        return m_given;
    } // none: it still needs something

protected:
    void changeEvent(QEvent* event) override;

private:
    enum class Tone { silent, quiet, fault };

    void choose(int index);
    void compute();
    void refuse(const QString& name, const base::Refusal& refusal, bool stays);
    void say(Tone tone, const QString& words); // under the form
    void recolour();
    void showOrigin(const std::optional<assessment::Working>& working);
    QString keptText(const QString& name) const;
    std::string styled(const sumpwright::worksheets::InputSpec& spec, const std::string& text) const;
    void showAnswer(const sumpwright::worksheets::Answer& answer);

    document::Document& m_document;
    std::function<text::DisplaySettings()> m_display;
    QComboBox* m_question;
    QLabel* m_formula;
    QLabel* m_origin; // that its numbers are the plan's
    QVBoxLayout* m_formPlace;
    QuestionForm* m_form = nullptr;
    QLabel* m_refusal; // or what is still needed
    Tone m_tone = Tone::silent;
    std::optional<sumpwright::worksheets::Answer> m_given;
    std::optional<assessment::Working> m_working; // of the result it was opened from
    QTextBrowser* m_answer;
    QPushButton* m_copy;
};

} // namespace sumpwright::ui::worksheets
