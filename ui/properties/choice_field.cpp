#include "ui/properties/choice_field.hpp"

#include <QComboBox>
#include <QEvent>
#include <QVBoxLayout>

#include "ui/properties/refusal_line.hpp"
#include "ui/style/type.hpp"

namespace sumpwright::ui::properties
{

ChoiceField::ChoiceField(const QString& name, std::vector<Choice> choices, Accept accept, QWidget* parent)
    : QWidget(parent), m_box(new QComboBox(this)), m_refusal(new RefusalLine(this)), m_accept(std::move(accept))
{
    m_box->setAccessibleName(name);
    m_box->setMinimumHeight(style::leastTarget);
    m_box->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    m_box->setMinimumContentsLength(8);
    m_box->setFocusPolicy(Qt::StrongFocus);
    m_box->installEventFilter(this);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(2);
    column->addWidget(m_box);
    column->addWidget(m_refusal);
    setChoices(std::move(choices));
    connect(m_box, &QComboBox::activated, this, &ChoiceField::handOver);
}

void ChoiceField::setChoices(std::vector<Choice> choices)
{
    if (choices == m_choices && m_box->count() > 0)
        return;
    m_choices = std::move(choices);
    m_box->clear();
    for (const auto& choice : m_choices) {
        m_box->addItem(choice.words, QString::fromStdString(choice.key));
        if (!choice.tip.isEmpty())
            m_box->setItemData(m_box->count() - 1, choice.tip, Qt::ToolTipRole);
    }
    showKey();
}

void ChoiceField::setShown(const std::string& key)
{
    m_mixed = false;
    m_key = key;
    showKey();
}

void ChoiceField::setMixed()
{
    m_mixed = true;
    m_key.clear();
    showKey();
}

void ChoiceField::setReadOnly(bool readOnly) { m_box->setEnabled(!readOnly); }

QString ChoiceField::refusalText() const { return m_refusal->shownText(); }

bool ChoiceField::eventFilter(QObject* watched, QEvent* event)
{
    if (watched == m_box && event->type() == QEvent::Wheel) {
        event->ignore(); // up to the scroll area
        return true;
    }
    return QWidget::eventFilter(watched, event);
}

void ChoiceField::handOver(int index)
{
    const std::string key = m_box->itemData(index).toString().toStdString();
    m_refusal->clear();
    if (!m_mixed && key == m_key)
        return;
    const QString stays = m_mixed ? QString() : m_box->itemText(m_box->findData(QString::fromStdString(m_key)));
    if (const auto refusal = m_accept(key)) {
        showKey();
        m_refusal->show(*refusal, m_box->accessibleName(), stays);
    } else {
        showKey();
    }
}

void ChoiceField::showKey()
{
    const int index = m_mixed ? -1 : m_box->findData(QString::fromStdString(m_key));
    const bool unknown = !m_mixed && index < 0 && !m_key.empty();
    m_box->setPlaceholderText(m_mixed ? tr("mixed") : unknown ? QString::fromStdString(m_key) : QString());
    m_box->setCurrentIndex(index);
    m_box->setToolTip(index >= 0 ? m_box->itemText(index) : QString());
}

} // namespace sumpwright::ui::properties
