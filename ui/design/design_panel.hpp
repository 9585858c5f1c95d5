// DesignPanel: the design help: three questions, each with a proposal that is one undoable step.
#pragma once

#include <QWidget>

#include "ui/design/design_page.hpp"

QT_BEGIN_NAMESPACE
class QTabWidget;
QT_END_NAMESPACE

namespace sumpwright::ui::design
{

class PipePage;
class PumpPage;
class ValvePage;

enum class Question { valves, pump, pipes };

class DesignPanel : public QWidget
{
    Q_OBJECT

public:
    DesignPanel(document::Document& document, const DisplayNow& display, QWidget* parent = nullptr);

    void open(Question question); // works it out, and gives its form the keyboard
    DesignPage& page() const;     // the one on view
    ValvePage& valves() const { return *m_valves; }
    PumpPage& pump() const { return *m_pump; }
    PipePage& pipes() const { return *m_pipes; }

Q_SIGNALS:
    void workingWanted(const sumpwright::assessment::Working& working);

private:
    void add(DesignPage* page, const QString& title);

    QTabWidget* m_tabs;
    ValvePage* m_valves;
    PumpPage* m_pump;
    PipePage* m_pipes;
};

} // namespace sumpwright::ui::design
