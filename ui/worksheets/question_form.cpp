#include "ui/worksheets/question_form.hpp"

#include <QComboBox>
#include <QFormLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QRegularExpression>

#include "ui/style/palette.hpp"
#include "ui/style/type.hpp"
#include "ui/text/units_on_screen.hpp"

namespace sumpwright::ui::worksheets
{

namespace
{

using sumpwright::worksheets::InputSort;
using sumpwright::worksheets::InputSpec;

// Two fixed lines do not fit a name of any length: the label wraps.
QString labelOf(const InputSpec& input)
{
    QString words = QString::fromStdString(input.name);
    return words.replace(u'_', u' ');
}

constexpr int longestText = 400'000; // a list of every pipe of a large plan

// "= bore" reads "as bore".
QString defaultText(const InputSpec& input)
{
    const QString text = QString::fromStdString(input.ifAbsent);
    return text.startsWith(u'=') ? QuestionForm::tr("as %1").arg(text.mid(1).replace(u'_', u' '))
                                 : text::unitsOnScreen(text);
}

// "48.00430341299933 L" to "48.0043 L": six digits are more than anybody reads. Whatever its decimal mark is.
QString shortened(QString text)
{
    static const QRegularExpression number(QStringLiteral("(\\d+)[.,](\\d+)(?![\\d.,e])"));
    constexpr int digits = 6;
    for (auto match = number.match(text); match.hasMatch();) {
        const QString whole = match.captured(1);
        const int zeros = whole == QLatin1String("0")
                              ? static_cast<int>(match.captured(2).indexOf(QRegularExpression(QStringLiteral("[1-9]"))))
                              : -static_cast<int>(whole.size());
        const int decimals = std::max(0, digits + zeros);
        qsizetype end = match.capturedEnd();
        if (match.captured(2).size() > decimals && decimals > 0) {
            const double value = (whole + u'.' + match.captured(2)).toDouble();
            QString rounded = QString::number(value, 'f', decimals);
            while (rounded.endsWith(u'0'))
                rounded.chop(1);
            if (rounded.endsWith(u'.'))
                rounded.chop(1);
            rounded.replace(u'.', text[match.capturedEnd(1)]);
            text.replace(match.capturedStart(), match.capturedLength(), rounded);
            end = match.capturedStart() + rounded.size();
        }
        match = number.match(text, end);
    }
    return text;
}

QStringList idsOf(const InputSpec& input, const catalogue::Catalogue& tables)
{
    QStringList ids;
    if (input.sort == InputSort::Choice) {
        for (const auto& choice : input.choices)
            ids << QString::fromStdString(choice);
        return ids;
    }
    const std::string table = input.choices.empty() ? std::string() : input.choices.front();
    if (table == "pumps")
        for (const auto& row : tables.pumps())
            ids << QString::fromStdString(row.id);
    if (table == "fittings")
        for (const auto& row : tables.fittings())
            ids << QString::fromStdString(row.id);
    if (table == "media")
        for (const auto& row : tables.media())
            ids << QString::fromStdString(row.id);
    return ids;
}

} // namespace

QuestionForm::QuestionForm(const sumpwright::worksheets::Worksheet& worksheet, const catalogue::Catalogue& tables,
                           FaultOf faultOf, QWidget* parent)
    : QWidget(parent), m_faultOf(std::move(faultOf))
{
    auto* rows = new QFormLayout(this);
    rows->setContentsMargins(0, 0, 0, 0);
    rows->setSpacing(style::halfStep);
    for (const InputSpec& input : worksheet.inputs) {
        if (input.sort == InputSort::Choice || input.sort == InputSort::CatalogueId)
            addChoice(input, tables);
        else
            addLine(input);
    }
}

void QuestionForm::addField(const InputSpec& input, QWidget* field)
{
    auto* label = new QLabel(labelOf(input), this);
    label->setBuddy(field);
    field->setAccessibleName(labelOf(input));
    field->setToolTip(text::unitsOnScreen(QString::fromStdString(input.meaning)));
    static_cast<QFormLayout*>(layout())->addRow(label, field);
}

void QuestionForm::addLine(const InputSpec& input)
{
    auto* line = new QLineEdit(this);
    line->setMaxLength(longestText);
    line->setMinimumHeight(style::leastTarget);
    if (!input.ifAbsent.empty())
        line->setPlaceholderText(defaultText(input));
    else if (!input.required)
        line->setPlaceholderText(tr("may stay empty"));
    line->installEventFilter(this);
    connect(line, &QLineEdit::textEdited, this, [this, line] { typed(line); });
    connect(line, &QLineEdit::returnPressed, this, [this, line] { handOver(line); });
    addField(input, line);
    m_fields.push_back({QString::fromStdString(input.name), line, nullptr, {}, {}, {}});
}

void QuestionForm::addChoice(const InputSpec& input, const catalogue::Catalogue& tables)
{
    auto* choice = new QComboBox(this);
    if (!input.required)
        choice->addItem(tr("none"), QString());
    for (const QString& id : idsOf(input, tables))
        choice->addItem(id, id);
    if (const int at = choice->findData(QString::fromStdString(input.ifAbsent)); at >= 0)
        choice->setCurrentIndex(at);
    connect(choice, &QComboBox::currentIndexChanged, this, &QuestionForm::edited);
    addField(input, choice);
    m_fields.push_back({QString::fromStdString(input.name), nullptr, choice, {}, {}, {}});
}

std::vector<sumpwright::worksheets::InputText> QuestionForm::texts() const
{
    std::vector<sumpwright::worksheets::InputText> texts;
    for (const Field& field : m_fields) {
        const QString text = field.line ? field.counts : field.choice->currentData().toString();
        if (!text.isEmpty())
            texts.push_back({field.name.toStdString(), text.toStdString()});
    }
    return texts;
}

void QuestionForm::set(const QString& name, const QString& text)
{
    for (Field& field : m_fields) {
        if (field.name != name)
            continue;
        if (field.line) {
            field.counts = field.settled = text::unitsOnScreen(text);
            field.shown = shortened(field.settled);
            field.line->setText(field.shown);
            field.line->setCursorPosition(0); // of a text too long for the field its start is shown
        } else if (const int at = field.choice->findData(text); at >= 0) {
            field.choice->setCurrentIndex(at);
        }
    }
}

void QuestionForm::markRefused(const QString& name, const QString& why)
{
    const QColor fault = style::themeOf(*this).fault;
    for (const Field& field : m_fields) {
        if (!field.line)
            continue;
        QPalette colours = palette();
        if (field.name == name)
            colours.setColor(QPalette::Text, fault);
        field.line->setPalette(colours);
        field.line->setAccessibleDescription(field.name == name ? why : QString());
    }
}

QuestionForm::Field* QuestionForm::fieldOf(const QObject* line)
{
    for (Field& field : m_fields)
        if (field.line && field.line == line)
            return &field;
    return nullptr;
}

// An empty field is no mistake: it is not filled in yet.
std::optional<base::Refusal> QuestionForm::faultIn(const Field& field) const
{
    const QString text = field.line->text().trimmed();
    return text.isEmpty() ? std::nullopt : m_faultOf({field.name.toStdString(), text.toStdString()});
}

bool QuestionForm::changed(const Field& field)
{
    return field.line->text().trimmed() != field.shown || field.counts != field.settled;
}

void QuestionForm::typed(const QObject* line)
{
    Field& field = *fieldOf(line);
    field.counts = faultIn(field) ? field.settled : field.line->text().trimmed();
    Q_EMIT edited();
}

void QuestionForm::handOver(const QObject* line)
{
    Field& field = *fieldOf(line);
    if (!changed(field))
        return;
    const auto refusal = faultIn(field);
    if (!refusal)
        field.settled = field.shown = field.line->text().trimmed();
    field.counts = field.settled;
    Q_EMIT edited();
    if (refusal)
        Q_EMIT refused(field.name, *refusal);
}

bool QuestionForm::giveBack(const QObject* line)
{
    Field& field = *fieldOf(line);
    if (!changed(field))
        return false;
    field.counts = field.settled;
    field.line->setText(field.shown);
    field.line->selectAll();
    Q_EMIT edited();
    return true;
}

bool QuestionForm::eventFilter(QObject* watched, QEvent* event)
{
    if (!fieldOf(watched))
        return QWidget::eventFilter(watched, event);
    if (event->type() == QEvent::FocusOut) {
        const auto reason = static_cast<QFocusEvent*>(event)->reason();
        if (reason != Qt::PopupFocusReason && reason != Qt::ActiveWindowFocusReason)
            handOver(watched);
    } else if (event->type() == QEvent::ShortcutOverride) {
        const Field* field = fieldOf(watched);
        if (static_cast<QKeyEvent*>(event)->key() == Qt::Key_Escape && changed(*field)) {
            event->accept(); // Esc belongs to the field while it holds something to give back
            return true;
        }
    } else if (event->type() == QEvent::KeyPress && static_cast<QKeyEvent*>(event)->key() == Qt::Key_Escape) {
        if (giveBack(watched))
            return true;
    }
    return QWidget::eventFilter(watched, event);
}

} // namespace sumpwright::ui::worksheets
