#include "ui/worksheets/worksheet_panel.hpp"

#include <QAccessible>
#include <QClipboard>
#include <QComboBox>
#include <QGuiApplication>
#include <QLabel>
#include <QPushButton>
#include <QSignalBlocker>
#include <QTextBrowser>
#include <QVBoxLayout>

#include "core/worksheets/inputs.hpp"
#include "ui/style/palette.hpp"
#include "ui/style/type.hpp"
#include "ui/text/refusals.hpp"
#include "ui/text/result_names.hpp"
#include "ui/text/units_on_screen.hpp"
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

// A line of html with the units of a screen. A thin space between groups of digits would be taken for one to break at.
QString shownHtml(const QString& words)
{
    return text::unitsOnScreen(words).toHtmlEscaped().replace(QChar(0x202f), QChar(QChar::Nbsp));
}

QString outputRow(const core::NamedValue& output, const units::NumberStyle& numbers, bool strong)
{
    const std::string currency = std::holds_alternative<units::Money>(output.value) ? output.unit : std::string();
    QString value = shownHtml(QString::fromStdString(core::shown(output.value, numbers, currency)));
    if (strong)
        value = QStringLiteral("<b>%1</b>").arg(value);
    if (output.estimate)
        value += QStringLiteral(" <i>") + WorksheetPanel::tr("estimate").toHtmlEscaped() + QStringLiteral("</i>");
    return QStringLiteral("<tr><td>%1</td><td>%2</td></tr>").arg(spaced(output.name).toHtmlEscaped(), value);
}

QString paragraph(const QString& head, const QStringList& lines)
{
    QString html = QStringLiteral("<p><b>%1</b>").arg(head.toHtmlEscaped());
    for (const QString& line : lines)
        html += QStringLiteral("<br>") + shownHtml(line);
    return html + QStringLiteral("</p>");
}

} // namespace

WorksheetPanel::WorksheetPanel(document::Document& document, std::function<text::DisplaySettings()> display,
                               QWidget* parent)
    : QWidget(parent), m_document(document), m_display(std::move(display)), m_question(new QComboBox(this)),
      m_formula(new QLabel(this)), m_origin(new QLabel(this)), m_formPlace(new QVBoxLayout),
      m_refusal(new QLabel(this)), m_answer(new QTextBrowser(this)), m_copy(new QPushButton(tr("&Copy as text"), this))
{
    for (const auto& worksheet : core::allWorksheets())
        m_question->addItem(QString::fromStdString(worksheet.question));
    m_question->setAccessibleName(tr("Question"));
    m_question->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    m_formula->setWordWrap(true);
    m_formula->setTextInteractionFlags(Qt::TextSelectableByMouse);
    m_origin->setWordWrap(true);
    m_refusal->setWordWrap(true);
    m_refusal->setObjectName(QStringLiteral("said"));
    m_answer->setAccessibleName(tr("Answer"));
    m_answer->setTabChangesFocus(true);
    m_answer->setFrameShape(QFrame::NoFrame);
    auto* rows = new QVBoxLayout(this);
    rows->setContentsMargins(style::step, style::step, style::step, style::step);
    m_refusal->setTextInteractionFlags(Qt::TextSelectableByMouse);
    rows->addWidget(m_question);
    rows->addWidget(m_formula);
    rows->addWidget(m_origin);
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
    const auto faultOf = [this, &worksheet](const core::InputText& input) {
        return core::faultOf(worksheet, input, *m_document.catalogue(), m_display().numbers);
    };
    m_form = new QuestionForm(worksheet, *m_document.catalogue(), faultOf, this);
    m_formPlace->addWidget(m_form);
    m_question->setToolTip(m_question->currentText()); // it may be too long for its box
    m_formula->setText(text::unitsOnScreen(QString::fromStdString(worksheet.formula)));
    showOrigin({});
    connect(m_form, &QuestionForm::edited, this, &WorksheetPanel::compute);
    connect(m_form, &QuestionForm::refused, this,
            [this](const QString& name, const base::Refusal& refusal) { refuse(name, refusal, true); });
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
        {
            const QSignalBlocker quiet(m_form);
            for (const auto& input : working.inputs) // written with the point
                m_form->set(QString::fromStdString(input.name),
                            QString::fromStdString(styled(*all[i].input(input.name), input.value)));
        }
        showOrigin(working);
        compute();
    }
}

// Where its numbers came from; a question asked by itself has none.
void WorksheetPanel::showOrigin(const std::optional<assessment::Working>& working)
{
    m_working = working;
    QString words = tr("Filled with the numbers of the plan. A change here does not touch the plan.");
    if (working && working->note == "network-as-one-pipe")
        words += u' ' + tr("The whole network is told as one pipe: sum k stands for all its branches and fittings.");
    m_origin->setText(words);
    m_origin->setVisible(working.has_value());
}

// A text written with the point, in the number style of the desktop. Names of choices and in lists stay as they are.
std::string WorksheetPanel::styled(const core::InputSpec& spec, const std::string& text) const
{
    const auto style = m_display().numbers;
    switch (spec.sort) {
    case core::InputSort::Choice:
    case core::InputSort::CatalogueId:
        return text;
    case core::InputSort::List:
    case core::InputSort::LoadList:
        return core::listInStyle(text, style);
    case core::InputSort::Quantity:
    case core::InputSort::Ratio:
    case core::InputSort::Curve:
        break;
    }
    return QString::fromStdString(text).replace(u'.', QString::fromStdString(style.decimalMark)).toStdString();
}

void WorksheetPanel::compute()
{
    const auto& worksheet = core::allWorksheets()[static_cast<std::size_t>(m_question->currentIndex())];
    const auto texts = m_form->texts();
    const auto answer = core::answer(worksheet, texts, *m_document.catalogue(), m_display().numbers);
    m_copy->setEnabled(answer.ok());
    m_given = answer.ok() ? std::optional(*answer) : std::nullopt;
    if (answer.ok()) {
        say(Tone::silent, {});
        showAnswer(*answer);
        return;
    }
    m_answer->clear();
    QStringList missing;
    for (const auto& name : core::missingInputs(worksheet, texts))
        missing << spaced(name);
    if (!missing.isEmpty())
        say(Tone::quiet, tr("Still needed: %1.").arg(missing.join(QStringLiteral(", "))));
    else if (answer.refusal().id == "worksheets.missing-input")
        say(Tone::quiet, tr("Still needed: %1 (%2).", "input, why")
                             .arg(spaced(answer.refusal().place), text::wordsOf(answer.refusal()).what));
    else if (answer.refusal().id == "worksheets.needs-one")
        say(Tone::quiet, tr("Still needed: %1.").arg(text::wordsOf(answer.refusal()).mend));
    else
        refuse(QString::fromStdString(answer.refusal().place).section(u',', 0, 0), answer.refusal(), false);
}

// `stays`: the value before is still the one that counts.
void WorksheetPanel::refuse(const QString& name, const base::Refusal& refusal, bool stays)
{
    base::Refusal told = refusal;
    if (told.place.rfind(name.toStdString(), 0) == 0)
        told.place = spaced(told.place).toStdString();
    QString words = text::sentenceOf(told, spaced(name.toStdString()));
    if (stays)
        words += u' ' + keptText(name);
    say(Tone::fault, words);
    m_form->markRefused(name, words);
}

// What still counts for a field whose text was refused.
QString WorksheetPanel::keptText(const QString& name) const
{
    for (const auto& input : m_form->texts())
        if (input.name == name.toStdString())
            return input.text.size() > 60 ? tr("It stays as it was.")
                                          : tr("It stays %1.").arg(QString::fromStdString(input.text));
    const auto& worksheet = core::allWorksheets()[static_cast<std::size_t>(m_question->currentIndex())];
    const core::InputSpec* spec = worksheet.input(name.toStdString());
    if (spec && !spec->ifAbsent.empty() && spec->ifAbsent.front() != '=')
        return tr("It stays %1.").arg(text::unitsOnScreen(QString::fromStdString(spec->ifAbsent)));
    return tr("It stays empty.");
}

void WorksheetPanel::recolour()
{
    const style::Theme& theme = style::themeOf(*this);
    QPalette colours = palette();
    colours.setColor(QPalette::WindowText, m_tone == Tone::fault ? theme.fault : theme.quiet);
    m_refusal->setPalette(colours);
    colours.setColor(QPalette::WindowText, theme.quiet);
    m_origin->setPalette(colours);
}

void WorksheetPanel::changeEvent(QEvent* event)
{
    if (event->type() == QEvent::PaletteChange && m_form)
        recolour();
    QWidget::changeEvent(event);
}

void WorksheetPanel::say(Tone tone, const QString& words)
{
    m_tone = tone;
    recolour();
    m_refusal->setText(words);
    m_refusal->setVisible(tone != Tone::silent);
    m_form->markRefused({});
    if (tone != Tone::fault)
        return;
    QAccessibleEvent told(m_refusal, QAccessible::Alert);
    QAccessible::updateAccessibility(&told);
}

// The result of the plan it was opened from is strong; of a question asked by itself all are.
void WorksheetPanel::showAnswer(const core::Answer& answer)
{
    const auto& worksheet = core::allWorksheets()[static_cast<std::size_t>(m_question->currentIndex())];
    const auto numbers = m_display().numbers;
    QString html = QStringLiteral("<table cellspacing='0' cellpadding='3'>");
    for (const auto& output : answer.outputs)
        html += outputRow(output, numbers, !m_working || m_working->output == output.name);
    html += QStringLiteral("</table>");
    QStringList working, sources;
    for (const auto& line : answer.working)
        working << QString::fromStdString(line);
    for (const auto& source : answer.sources)
        sources << text::sourceTitle(*m_document.catalogue(), source);
    html += paragraph(tr("Working"), working);
    for (const auto& note : answer.notes)
        html += QStringLiteral("<p>%1</p>").arg(shownHtml(noteText(worksheet, note)));
    html += paragraph(tr("Sources"), sources);
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
