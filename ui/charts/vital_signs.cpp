#include "ui/charts/vital_signs.hpp"

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
    while (m_buttons.size() < static_cast<int>(signs.size())) {
        auto* button = new SignButton(this);
        connect(button, &QAbstractButton::clicked, this, [this, button] {
            if (button->sign().chart.isEmpty())
                Q_EMIT findingsWanted();
            else
                Q_EMIT chartWanted(button->sign().chart);
        });
        m_row->addWidget(button);
        m_buttons << button;
    }
    for (int i = 0; i < m_buttons.size(); ++i) {
        const bool used = i < static_cast<int>(signs.size());
        m_buttons[i]->setVisible(used);
        if (used)
            m_buttons[i]->show(signs[static_cast<std::size_t>(i)], m_document.stale());
    }
}

} // namespace sumpwright::ui::charts
