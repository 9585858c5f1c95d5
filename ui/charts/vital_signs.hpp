// VitalSigns: the quiet strip of figures that is always in sight; each is a button that leads to its chart.
#pragma once

#include <functional>
#include <memory>

#include <QWidget>

#include "ui/charts/signs.hpp"
#include "ui/document/document.hpp"

namespace sumpwright::ui::charts
{

class FlowRow;
class SignButton;

class VitalSigns : public QWidget
{
    Q_OBJECT

public:
    VitalSigns(document::Document& document, std::function<text::DisplaySettings()> display, QWidget* parent = nullptr);

    void refresh(); // the display settings changed

Q_SIGNALS:
    void chartWanted(const QString& id); // "water", "duty", "floor"
    void findingsWanted();

private:
    void planChanged();

    document::Document& m_document;
    std::function<text::DisplaySettings()> m_display;
    FlowRow* m_row;
    QList<SignButton*> m_buttons;
    std::shared_ptr<const assessment::Assessment> m_before; // when the gesture began
    bool m_gesture = false;
};

} // namespace sumpwright::ui::charts
