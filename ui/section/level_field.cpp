#include "ui/section/level_field.hpp"

#include <QFocusEvent>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QVBoxLayout>

#include <algorithm>

#include "core/plan/edits/level.hpp"
#include "ui/document/document.hpp"
#include "ui/document/view_settings.hpp"
#include "ui/style/type.hpp"
#include "ui/text/level_names.hpp"
#include "ui/text/names.hpp"
#include "ui/text/refusals.hpp"

namespace sumpwright::ui::section
{

namespace
{
constexpr int off = 12;         // pixels beside the level
constexpr int leastWidth = 170; // pixels
} // namespace

LevelField::LevelField(document::Document& document, QWidget* parent)
    : QFrame(parent), m_document(document), m_caption(new QLabel(this)), m_field(new QLineEdit(this)),
      m_message(new QLabel(this))
{
    setAutoFillBackground(true);
    setFrameShape(StyledPanel);
    setAccessibleName(tr("Level, typed"));
    auto* rows = new QVBoxLayout(this);
    rows->setContentsMargins(style::step, style::halfStep, style::step, style::halfStep);
    rows->setSpacing(style::halfStep);
    for (QWidget* row : std::initializer_list<QWidget*>{m_caption, m_field, m_message})
        rows->addWidget(row);
    m_field->setMinimumHeight(style::leastTarget);
    m_field->installEventFilter(this);
    m_caption->setBuddy(m_field);
    m_message->setWordWrap(true);
    hide();
}

text::DisplaySettings LevelField::display() const
{
    return {m_document.view().unitSystem(), m_document.view().numberStyle()};
}

void LevelField::open(const plan::LevelRef& level, QPoint place)
{
    const auto now = plan::levelOf(m_document.committed(), level);
    if (!now)
        return;
    m_level = level;
    m_place = place;
    m_shown = display().entryText(*now);
    const QString name = text::heading(text::levelOfWhat(m_document.committed(), level));
    m_caption->setText(name);
    m_field->setAccessibleName(name);
    m_field->setText(m_shown);
    m_message->hide();
    layOut();
    show();
    raise();
    m_field->setFocus();
    m_field->selectAll();
}

void LevelField::layOut()
{
    const QRect room = parentWidget()->rect();
    const int width = std::max(leastWidth, m_caption->sizeHint().width() + 3 * style::step);
    setFixedWidth(std::min(m_message->isHidden() ? width : std::max(width, 2 * leastWidth), room.width()));
    adjustSize();
    move(std::clamp(m_place.x() + off, 0, std::max(0, room.right() - this->width())),
         std::clamp(m_place.y() + off, 0, std::max(0, room.bottom() - height())));
}

void LevelField::shut()
{
    const bool typing = m_field->hasFocus();
    hide();
    if (typing)
        parentWidget()->parentWidget()->setFocus();
}

void LevelField::leave()
{
    if (!isOpen())
        return;
    take();
    shut();
}

bool LevelField::take()
{
    const auto now = plan::levelOf(m_document.committed(), m_level);
    if (!now || m_field->text() == m_shown)
        return true;
    const auto refused = [this](const base::Refusal& refusal) {
        m_message->setText(text::sentenceOf(refusal, tr("Level")));
        m_message->show();
        layOut();
        m_field->selectAll();
        return false;
    };
    const auto level = display().read<units::Elevation>(m_field->text(), {}, {}, *now);
    if (!level)
        return refused(level.refusal());
    const plan::Edit edit = plan::setLevel(m_level, *level);
    if (const auto tried = edit.apply(m_document.committed()); !tried)
        return refused(tried.refusal());
    return m_document.commit(edit);
}

// What the field leaves over is not the drawing's.
void LevelField::keyPressEvent(QKeyEvent* event) { event->accept(); }

bool LevelField::eventFilter(QObject* watched, QEvent* event)
{
    if (event->type() == QEvent::KeyPress) {
        const int key = static_cast<QKeyEvent*>(event)->key();
        if (key == Qt::Key_Escape)
            shut();
        else if ((key == Qt::Key_Return || key == Qt::Key_Enter || key == Qt::Key_Tab || key == Qt::Key_Backtab) &&
                 take())
            shut();
        else
            return key == Qt::Key_Return || key == Qt::Key_Enter || key == Qt::Key_Tab || key == Qt::Key_Backtab;
        return true;
    }
    if (event->type() == QEvent::FocusOut) {
        const auto reason = static_cast<QFocusEvent*>(event)->reason();
        if (reason != Qt::PopupFocusReason && reason != Qt::ActiveWindowFocusReason)
            QMetaObject::invokeMethod(this, &LevelField::leave, Qt::QueuedConnection);
    }
    return QFrame::eventFilter(watched, event);
}

} // namespace sumpwright::ui::section
