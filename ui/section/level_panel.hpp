// LevelPanel: the pane under the plan - the drawing of levels, and in one line above it what is drawn: elevation or
// section, which way the section follows, how much larger heights are drawn.
#pragma once

#include <QWidget>

#include "ui/section/level_view.hpp"

QT_BEGIN_NAMESPACE
class QComboBox;
class QToolButton;
QT_END_NAMESPACE

namespace sumpwright::ui::section
{

class LevelLegend;

class LevelPanel final : public QWidget
{
    Q_OBJECT

public:
    LevelPanel(document::Document& document, canvas::PlanView& plan, QWidget* parent = nullptr);

    LevelView& view() const { return *m_view; }
    Mode mode() const { return m_view->mode(); }
    void setMode(Mode mode);
    int heights() const { return m_view->heights(); }
    void setHeights(int times);
    void takeFocus();

Q_SIGNALS:
    void modeChanged();

private:
    QToolButton* modeButton(const QString& words, const QString& tip, Mode mode);
    void refreshWays();

    document::Document& m_document;
    LevelView* m_view;
    QToolButton* m_elevation;
    QToolButton* m_section;
    QComboBox* m_way;
    LevelLegend* m_legend;
    QComboBox* m_heights;
    std::vector<report::WayChoice> m_ways; // as in the list
    std::optional<report::WayChoice> m_usual;
};

} // namespace sumpwright::ui::section
