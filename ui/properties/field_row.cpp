#include "ui/properties/field_row.hpp"

#include <QHBoxLayout>
#include <QLabel>
#include <QVBoxLayout>

#include "ui/properties/quiet_label.hpp"
#include "ui/properties/refusal_line.hpp"
#include "ui/style/type.hpp"

namespace sumpwright::ui::properties
{

namespace
{
int labelWidth(const QWidget& widget) { return widget.fontMetrics().horizontalAdvance(QStringLiteral("000")); }

QHBoxLayout* plainLine()
{
    auto* line = new QHBoxLayout;
    line->setContentsMargins(0, 0, 0, 0);
    line->setSpacing(style::halfStep);
    return line;
}

// As wide in every line, whichever words the button carries.
int endWidth(const QWidget& widget)
{
    return widget.fontMetrics().horizontalAdvance(FieldRow::tr("Remove")) + 4 * style::step;
}
} // namespace

FieldRow::FieldRow(Chosen about, const QString& name, QWidget* parent)
    : Section(std::move(about), {}, parent), m_line(plainLine()), m_refusal(new RefusalLine(this))
{
    setAccessibleName(name);
    auto* column = static_cast<QVBoxLayout*>(layout());
    column->insertLayout(0, m_line);
    column->insertWidget(1, m_refusal);
}

void FieldRow::addLabel(const QString& words)
{
    auto* label = new QuietLabel(QuietLabel::Tone::quiet, this);
    label->setText(words);
    label->setWordWrap(false);
    label->setMinimumWidth(labelWidth(*this));
    m_line->addWidget(label);
}

void FieldRow::addCaption(const QString& words, const QString& widest)
{
    auto* label = new QuietLabel(QuietLabel::Tone::quiet, this);
    label->setText(words);
    label->setWordWrap(false);
    label->setMinimumWidth(fontMetrics().horizontalAdvance(widest));
    m_line->addWidget(label);
}

void FieldRow::addField(EntryField* field)
{
    field->refuseInto(*m_refusal);
    m_line->addWidget(field, 1);
}

void FieldRow::addGap() { m_line->addStretch(1); }

void FieldRow::nextLine()
{
    m_line = plainLine();
    static_cast<QVBoxLayout*>(layout())->insertLayout(m_lines++, m_line);
}

void FieldRow::addEnd(QWidget* widget)
{
    widget->setMinimumWidth(endWidth(*this));
    m_line->addWidget(widget);
}

QWidget* fieldHeads(const QStringList& captions, bool withEnd, QWidget* parent)
{
    auto* heads = new QWidget(parent);
    auto* line = plainLine();
    heads->setLayout(line);
    line->addSpacing(labelWidth(*heads) + style::halfStep);
    for (const auto& caption : captions) {
        auto* label = new QuietLabel(QuietLabel::Tone::quiet, heads);
        label->setText(caption);
        line->addWidget(label, 1);
    }
    if (withEnd)
        line->addSpacing(endWidth(*heads) + style::halfStep);
    return heads;
}

} // namespace sumpwright::ui::properties
