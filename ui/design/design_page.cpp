#include "ui/design/design_page.hpp"

#include <QAccessible>
#include <QComboBox>
#include <QEvent>
#include <QFormLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

#include "ui/document/view_settings.hpp"
#include "ui/style/palette.hpp"
#include "ui/style/type.hpp"
#include "ui/text/refusals.hpp"

namespace sumpwright::ui::design
{

DesignPage::DesignPage(document::Document& document, DisplayNow display, const QString& applyText, QWidget* parent)
    : QWidget(parent), m_document(document), m_display(std::move(display)), m_form(new QFormLayout),
      m_ask(new QPushButton(tr("&Work it out"), this)), m_apply(new QPushButton(applyText, this)),
      m_working(new QPushButton(tr("Wo&rking"), this)), m_said(new QLabel(this)), m_sentence(new QLabel(this)),
      m_answer(new QVBoxLayout), m_notes(new QLabel(this))
{
    m_form->setSpacing(style::halfStep);
    m_form->setFieldGrowthPolicy(QFormLayout::AllNonFixedFieldsGrow);
    m_answer->setSpacing(style::step);
    m_said->setObjectName(QStringLiteral("said"));
    for (QLabel* words : {m_said, m_sentence, m_notes}) {
        words->setWordWrap(true);
        words->setTextInteractionFlags(Qt::TextSelectableByMouse);
        words->hide();
    }
    m_apply->setAccessibleName(QString(applyText).remove(u'&'));
    m_working->setFlat(true);
    m_working->setAccessibleName(tr("Show working"));
    m_working->setToolTip(tr("Opens the worksheet behind the row at hand"));
    m_apply->setToolTip(tr("Changes the plan as proposed, in one step that can be undone"));
    auto* buttons = new QHBoxLayout;
    buttons->setSpacing(style::step);
    buttons->addWidget(m_ask);
    buttons->addWidget(m_apply);
    buttons->addWidget(m_working);
    buttons->addStretch(1);
    auto* rows = new QVBoxLayout(this);
    rows->setContentsMargins(style::step, style::step, style::step, style::step);
    rows->setSpacing(style::step);
    rows->addLayout(m_form);
    rows->addLayout(buttons);
    rows->addWidget(m_said);
    rows->addWidget(m_sentence);
    rows->addLayout(m_answer);
    rows->addWidget(m_notes);
    rows->addStretch(1);
    connect(m_ask, &QPushButton::clicked, this, [this] { m_asker.busy() ? m_asker.stop() : ask(); });
    connect(m_apply, &QPushButton::clicked, this, &DesignPage::apply);
    connect(m_working, &QPushButton::clicked, this, [this] {
        if (const auto wanted = shownWorking())
            Q_EMIT workingWanted(*wanted);
    });
    connect(&m_asker, &Asker::busyChanged, this, &DesignPage::refreshState);
    connect(&m_asker, &Asker::faultMet, this, [this](const QString& what) {
        clearAnswer();
        tell({}, {});
        say(tr("The program met a fault of its own: %1. The plan is as it was.").arg(what), true);
    });
    connect(&m_document, &document::Document::planChanged, this, &DesignPage::refreshState);
    connect(&m_document, &document::Document::readOnlyChanged, this, &DesignPage::refreshState);
    connect(&m_document.view(), &document::ViewSettings::changed, this, [this] { redisplay(); });
    refreshState();
}

bool DesignPage::current() const { return m_answered && m_revision == m_document.revision(); }
QString DesignPage::sentence() const { return text::breakable(m_sentence->text()); }
QString DesignPage::said() const { return m_said->text(); }

QWidget* DesignPage::label(const QString& words, QWidget* field)
{
    auto* label = new QLabel(words, this);
    label->setBuddy(field);
    return label;
}

EntryLine* DesignPage::addLine(const QString& name, const QString& whenEmpty, EntryLine::Accept accept)
{
    auto* line = new EntryLine(name, whenEmpty, std::move(accept), this);
    m_form->addRow(label(name, line), line);
    connect(line, &EntryLine::accepted, this, &DesignPage::ask);
    connect(line, &EntryLine::refused, this, [this](const QString& sentence) { say(sentence, !sentence.isEmpty()); });
    return line;
}

EntryLine* DesignPage::addRatio(const QString& name, const QString& whenEmpty, std::optional<double>& into)
{
    return addLine(name, whenEmpty, [this, &into](const QString& typed) -> std::optional<base::Refusal> {
        if (typed.isEmpty()) {
            into.reset();
            return std::nullopt;
        }
        const auto read = display().readRatio(typed);
        if (!read)
            return read.refusal();
        into = *read;
        return std::nullopt;
    });
}

QComboBox* DesignPage::addChoice(const QString& name, const QStringList& choices)
{
    auto* box = new QComboBox(this);
    box->addItems(choices);
    box->setAccessibleName(name);
    box->setMinimumHeight(style::leastTarget);
    m_form->addRow(label(name, box), box);
    connect(box, &QComboBox::activated, this, &DesignPage::ask);
    return box;
}

void DesignPage::ask()
{
    m_asked = true;
    m_revision = m_document.revision();
    say({}, false);
    m_asker.ask(job());
}

void DesignPage::apply()
{
    const auto edit = proposal();
    if (!edit || !current() || m_document.readOnly() || m_document.previewing())
        return;
    const QString reason = sentence();
    if (!m_document.commit(*edit))
        return;
    m_document.say(reason);
    ask();
}

void DesignPage::tell(const QString& sentence, const QStringList& remarks)
{
    m_answered = !sentence.isEmpty();
    m_remarks = remarks;
    m_sentence->setText(text::unbroken(sentence));
    m_sentence->setVisible(m_answered);
    m_notes->setText(text::unbroken(remarks.join(QStringLiteral("\n"))));
    m_notes->setVisible(!remarks.isEmpty());
    m_sentence->setAccessibleName(tr("Proposal"));
    if (m_answered) {
        QAccessibleEvent told(m_sentence, QAccessible::Alert);
        QAccessible::updateAccessibility(&told);
    }
    refreshState();
}

void DesignPage::refuse(const base::Refusal& refusal)
{
    clearAnswer();
    tell({}, {});
    say(text::sentenceOf(refusal, {}), true);
}

void DesignPage::tellFault(const QString& sentence) { say(sentence, true); }

void DesignPage::say(const QString& words, bool fault)
{
    m_fault = fault;
    m_said->setText(words);
    m_said->setVisible(!words.isEmpty());
    recolour();
    if (!fault)
        return;
    QAccessibleEvent told(m_said, QAccessible::Alert);
    QAccessible::updateAccessibility(&told);
}

void DesignPage::refreshState()
{
    const bool busy = m_asker.busy();
    m_ask->setText(busy ? tr("&Stop") : tr("&Work it out"));
    m_ask->setAccessibleName(m_ask->text().remove(u'&'));
    m_apply->setEnabled(!busy && current() && !m_document.readOnly() && !m_document.previewing() &&
                        proposal().has_value());
    m_working->setEnabled(!busy && current() && shownWorking().has_value());
    if (busy)
        say(tr("Working it out…"), false);
    else if (m_answered && !current())
        say(tr("The plan has changed since: work it out again."), false);
    else if (!m_fault)
        say({}, false);
    recolour();
}

void DesignPage::recolour()
{
    const style::Theme& theme = style::themeOf(*this);
    const auto paint = [this](QLabel* label, const QColor& colour) {
        if (label->palette().color(QPalette::WindowText) == colour)
            return;
        QPalette colours = palette();
        colours.setColor(QPalette::WindowText, colour);
        label->setPalette(colours);
    };
    paint(m_said, m_fault ? theme.fault : theme.quiet);
    paint(m_sentence, current() ? theme.ink : theme.stale);
    paint(m_notes, theme.quiet);
}

void DesignPage::showEvent(QShowEvent* event)
{
    QWidget::showEvent(event);
    if (!m_asked)
        ask();
}

void DesignPage::changeEvent(QEvent* event)
{
    if (event->type() == QEvent::PaletteChange)
        recolour();
    QWidget::changeEvent(event);
}

} // namespace sumpwright::ui::design
