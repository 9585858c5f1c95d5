// VitalSigns: the quiet strip of figures that is always in sight; each is a button that leads to its chart. While a
// gesture lasts the buttons keep their places and the strip its height, whatever the figures do.
#pragma once

#include <functional>
#include <memory>
#include <optional>

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
    void workingWanted(const QString& id); // of a sign

protected:
    void resizeEvent(QResizeEvent* event) override;

private:
    void planChanged();
    void addButton();
    void settle(const std::vector<Sign>& signs);
    void follow(const std::vector<Sign>& signs);
    void fitHeight(); // a tool bar asks for no height by width

    document::Document& m_document;
    std::function<text::DisplaySettings()> m_display;
    FlowRow* m_row;
    QList<SignButton*> m_buttons;
    std::shared_ptr<const assessment::Assessment> m_before; // when the gesture began
    bool m_gesture = false;
    std::optional<text::DisplaySettings> m_shownIn;
};

} // namespace sumpwright::ui::charts
