#include "ui/worksheets/worksheet_panel.hpp"

#include <QClipboard>
#include <QComboBox>
#include <QGuiApplication>
#include <QLabel>
#include <QPushButton>
#include <QSignalBlocker>
#include <QTextBrowser>
#include <QVBoxLayout>

#include "ui/style/type.hpp"
#include "ui/text/refusals.hpp"
#include "ui/text/result_names.hpp"
#include "ui/worksheets/question_form.hpp"

namespace sumpwright::ui::worksheets
{

namespace
{

namespace core = sumpwright::worksheets;

QString spaced(const std::string& name)
{
    QString words = QString::fromStdString(name);
    return words.replace(u'_', u' ');
}

QString noteText(const core::Worksheet& worksheet, const std::string& id)
{
    for (const auto& note : worksheet.notes)
        if (note.id == id)
            return QString::fromStdString(note.text);
    return QString::fromStdString(id);
}

} // namespace

WorksheetPanel::WorksheetPanel(document::Document& document, std::function<text::DisplaySettings()> display,
                               QWidget* parent)
    : QWidget(parent), m_document(document), m_display(std::move(display)), m_question(new QComboBox(this)),
      m_formula(new QLabel(this)), m_formPlace(new QVBoxLayout), m_refusal(new QLabel(this)),
      m_answer(new QTextBrowser(this)), m_copy(new QPushButton(tr("&Copy as text"), this))
{
    for (const auto& worksheet : core::allWorksheets())
        m_question->addItem(QString::fromStdString(worksheet.question));
    m_question->setAccessibleName(tr("Question"));
    m_question->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    m_formula->setWordWrap(true);
    m_formula->setTextInteractionFlags(Qt::TextSelectableByMouse);
    m_refusal->setWordWrap(true);
    m_answer->setAccessibleName(tr("Answer"));
    m_answer->setTabChangesFocus(true);
    m_answer->setFrameShape(QFrame::NoFrame);
    auto* rows = new QVBoxLayout(this);
    rows->setContentsMargins(style::step, style::step, style::step, style::step);
    rows->addWidget(m_question);
    rows->addWidget(m_formula);
    rows->addLayout(m_formPlace);
    rows->addWidget(m_refusal);
    rows->addWidget(m_answer, 1);
    rows->addWidget(m_copy, 0, Qt::AlignLeft);
    connect(m_question, &QComboBox::currentIndexChanged, this, &WorksheetPanel::choose);
    connect(m_copy, &QPushButton::clicked, this, [this] { QGuiApplication::clipboard()->setText(answerText()); });
    choose(0);
}

void WorksheetPanel::choose(int index)
{
    if (index < 0)
        return;
    const auto& worksheet = core::allWorksheets()[static_cast<std::size_t>(index)];
    delete m_form;
    m_form = new QuestionForm(worksheet, *m_document.catalogue(), this);
    m_formPlace->addWidget(m_form);
    m_formula->setText(QString::fromStdString(worksheet.formula));
    connect(m_form, &QuestionForm::edited, this, &WorksheetPanel::compute);
    compute();
}

void WorksheetPanel::open(const assessment::Working& working)
{
    const auto& all = core::allWorksheets();
    for (std::size_t i = 0; i < all.size(); ++i) {
        if (all[i].id != working.worksheet)
            continue;
        {
            const QSignalBlocker quiet(m_question);
            m_question->setCurrentIndex(static_cast<int>(i));
        }
        choose(static_cast<int>(i));
        const QString mark = QString::fromStdString(m_display().numbers.decimalMark);
        {
            const QSignalBlocker quiet(m_form);
            for (const auto& input : working.inputs)
                m_form->set(QString::fromStdString(input.name),
                            QString::fromStdString(input.value).replace(u'.', mark)); // written with the point
        }
        compute();
    }
}

void WorksheetPanel::compute()
{
    const auto& worksheet = core::allWorksheets()[static_cast<std::size_t>(m_question->currentIndex())];
    const auto texts = m_form->texts();
    const auto answer = core::answer(worksheet, texts, *m_document.catalogue(), m_display().numbers);
    if (answer.ok()) {
        m_form->markRefused({});
        m_refusal->clear();
        m_refusal->hide();
        showAnswer(*answer);
        m_copy->setEnabled(true);
        return;
    }
    m_form->markRefused(QString::fromStdString(answer.refusal().place));
    m_refusal->setText(text::sentenceOf(answer.refusal(), spaced(answer.refusal().place)));
    m_refusal->show();
    m_answer->clear();
    m_copy->setEnabled(false);
}

void WorksheetPanel::showAnswer(const core::Answer& answer)
{
    const auto& worksheet = core::allWorksheets()[static_cast<std::size_t>(m_question->currentIndex())];
    QString html;
    const auto shown = m_display();
    html += QStringLiteral("<table cellspacing='0' cellpadding='3'>");
    for (const auto& output : answer.outputs) {
        QString value = QString::fromStdString(core::shown(output.value, shown.numbers)).toHtmlEscaped();
        if (output.estimate)
            value += QStringLiteral(" <i>") + tr("estimate").toHtmlEscaped() + QStringLiteral("</i>");
        html +=
            QStringLiteral("<tr><td>%1</td><td><b>%2</b></td></tr>").arg(spaced(output.name).toHtmlEscaped(), value);
    }
    html += QStringLiteral("</table><p><b>%1</b><br>").arg(tr("Working").toHtmlEscaped());
    for (const auto& line : answer.working)
        html += QString::fromStdString(line).toHtmlEscaped() + QStringLiteral("<br>");
    html += QStringLiteral("</p>");
    for (const auto& note : answer.notes)
        html += QStringLiteral("<p>%1</p>").arg(noteText(worksheet, note).toHtmlEscaped());
    html += QStringLiteral("<p><b>%1</b>").arg(tr("Sources").toHtmlEscaped());
    for (const auto& source : answer.sources)
        html += QStringLiteral("<br>") + text::sourceTitle(*m_document.catalogue(), source).toHtmlEscaped();
    html += QStringLiteral("</p>");
    m_answer->setHtml(html);
}

QString WorksheetPanel::answerText() const
{
    QString text = m_question->currentText() + u'\n' + m_formula->text() + u'\n';
    for (const auto& input : m_form->texts())
        text += QString::fromStdString(input.name) + QStringLiteral(" = ") + QString::fromStdString(input.text) + u'\n';
    return text + m_answer->toPlainText();
}

} // namespace sumpwright::ui::worksheets
