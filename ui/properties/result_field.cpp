#include "ui/properties/result_field.hpp"

#include <algorithm>

#include <QHBoxLayout>
#include <QPushButton>

#include "ui/properties/quiet_label.hpp"
#include "ui/style/type.hpp"
#include "ui/text/display.hpp"

namespace sumpwright::ui::properties
{

ResultField::ResultField(const QString& name, Text text, Working working, QWidget* parent)
    : QWidget(parent), m_text(std::move(text)), m_working(std::move(working)),
      m_value(new QuietLabel(QuietLabel::Tone::plain, this))
{
    m_value->setAccessibleName(name);
    m_value->setAlignment(Qt::AlignLeft | Qt::AlignTop);
    auto* line = new QHBoxLayout(this);
    line->setContentsMargins(0, 0, 0, 0);
    line->setSpacing(style::step);
    line->addWidget(m_value, 1);
    if (!m_working)
        return;
    m_button = new QPushButton(tr("Working"), this);
    m_button->setFlat(true);
    m_button->setMinimumHeight(style::leastTarget);
    // level with the word in the button
    m_value->setContentsMargins(0, std::max(0, (style::leastTarget - fontMetrics().height()) / 2), 0, 0);
    setFullName(name);
    m_button->setToolTip(tr("Opens the worksheet behind this value, filled with its numbers"));
    QSizePolicy place = m_button->sizePolicy();
    place.setRetainSizeWhenHidden(true);
    m_button->setSizePolicy(place);
    m_button->setVisible(false);
    line->addWidget(m_button, 0, Qt::AlignTop);
    connect(m_button, &QPushButton::clicked, this, [this] {
        if (m_ready)
            Q_EMIT workingWanted(*m_ready);
    });
}

void ResultField::setFullName(const QString& name)
{
    m_value->setAccessibleName(name);
    if (m_button)
        m_button->setAccessibleName(tr("Show working: %1").arg(name));
}

void ResultField::show(const assessment::Assessment* results, bool stale)
{
    const QString words = results ? m_text(*results) : QString();
    const QString marked = words.isEmpty() ? QString() : tr("%1 (stale)").arg(words);
    m_ready = results && m_working && !words.isEmpty() ? m_working(*results) : std::nullopt;
    m_value->setTone(words.isEmpty() ? QuietLabel::Tone::quiet
                     : stale         ? QuietLabel::Tone::stale
                                     : QuietLabel::Tone::plain);
    m_value->setRoomFor(text::unbroken(marked));
    m_value->setText(words.isEmpty() ? text::absentText() : text::unbroken(stale ? marked : words));
    if (m_button)
        m_button->setVisible(m_ready.has_value());
}

void ResultField::holdHeight(bool hold) { m_value->holdHeight(hold); }

QString ResultField::shownText() const { return text::breakable(m_value->text()); }

} // namespace sumpwright::ui::properties
