#include "ui/charts/vital_signs.hpp"

#include <algorithm>

#include <QAction>

#include "ui/charts/flow_row.hpp"
#include "ui/charts/sign_button.hpp"
#include "ui/style/type.hpp"

namespace sumpwright::ui::charts
{

VitalSigns::VitalSigns(document::Document& document, std::function<text::DisplaySettings()> display, QWidget* parent)
    : QWidget(parent), m_document(document), m_display(std::move(display)), m_row(new FlowRow(this))
{
    m_row->setContentsMargins(style::halfStep, 0, style::halfStep, 0);
    m_row->setSpacing(style::step);
    setAccessibleName(tr("Vital signs"));
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    connect(&m_document, &document::Document::planChanged, this, &VitalSigns::planChanged);
    connect(&m_document, &document::Document::assessmentChanged, this, &VitalSigns::refresh);
}

void VitalSigns::planChanged()
{
    if (m_document.previewing() == m_gesture)
        return;
    m_gesture = m_document.previewing();
    m_before = m_gesture ? m_document.assessment() : nullptr;
    if (!m_gesture)
        refresh();
}

void VitalSigns::refresh()
{
    const auto results = m_document.assessment();
    if (!results)
        return;
    const auto signs = signsOf(*results, m_before.get(), m_display());
    if (m_gesture)
        follow(signs);
    else
        settle(signs);
}

// Widths only grow from one result to the next, so that figures do not push each other about; other units start anew.
void VitalSigns::settle(const std::vector<Sign>& signs)
{
    const auto how = m_shownIn == m_display() ? SignButton::Reserve::atLeast : SignButton::Reserve::exactly;
    m_shownIn = m_display();
    while (m_buttons.size() < static_cast<int>(signs.size()))
        addButton();
    for (int i = 0; i < m_buttons.size(); ++i) {
        const bool used = i < static_cast<int>(signs.size());
        m_buttons[i]->setVisible(used);
        if (!used)
            continue;
        const Sign& sign = signs[static_cast<std::size_t>(i)];
        const bool same = m_buttons[i]->sign().id == sign.id;
        m_buttons[i]->show(sign, m_document.stale());
        for (QAction* working : m_buttons[i]->actions())
            working->setVisible(!sign.chart.isEmpty()); // findings are no figure
        m_buttons[i]->reserve(same ? how : SignButton::Reserve::exactly);
    }
    fitHeight();
}

void VitalSigns::fitHeight()
{
    m_row->invalidate();
    setFixedHeight(std::max(1, m_row->heightForWidth(width())));
}

void VitalSigns::resizeEvent(QResizeEvent* event)
{
    QWidget::resizeEvent(event);
    fitHeight();
}

void VitalSigns::follow(const std::vector<Sign>& signs)
{
    for (SignButton* button : m_buttons) {
        const auto sign = std::find_if(signs.begin(), signs.end(),
                                       [button](const Sign& each) { return each.id == button->sign().id; });
        if (sign == signs.end())
            button->showNothing();
        else
            button->show(*sign, m_document.stale());
    }
}

void VitalSigns::addButton()
{
    auto* button = new SignButton(this);
    connect(button, &QAbstractButton::clicked, this, [this, button] {
        if (button->sign().chart.isEmpty())
            Q_EMIT findingsWanted();
        else
            Q_EMIT chartWanted(button->sign().chart);
    });
    auto* working = new QAction(tr("Show working"), button);
    connect(working, &QAction::triggered, this, [this, button] { Q_EMIT workingWanted(button->sign().id); });
    button->addAction(working);
    button->setContextMenuPolicy(Qt::ActionsContextMenu);
    m_row->addWidget(button);
    m_buttons << button;
}

} // namespace sumpwright::ui::charts
