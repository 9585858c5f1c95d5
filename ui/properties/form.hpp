// Form: the properties of what is chosen: a heading and sections beneath each other. Kept up to date by the document;
// a hidden form waits until it is shown.
#pragma once

#include <vector>

#include <QWidget>

#include "ui/properties/chosen.hpp"
#include "ui/properties/section.hpp"

QT_BEGIN_NAMESPACE
class QLabel;
class QVBoxLayout;
QT_END_NAMESPACE

namespace sumpwright::ui::properties
{

class Form : public QWidget
{
    Q_OBJECT

public:
    explicit Form(Chosen chosen, QWidget* parent = nullptr);

    const Chosen& chosen() const { return m_chosen; }
    void refresh(); // all rows from the plan, then all results
    void refreshResults();

Q_SIGNALS:
    void workingWanted(const sumpwright::assessment::Working& working);

protected:
    template <class Part> Part* add(Part* section)
    {
        take(section);
        return section;
    }
    virtual QString headingText() const; // "Grow bed B2", "3 grow beds"
    void showEvent(QShowEvent* event) override;

private:
    void take(Section* section);
    void refreshAll();

    Chosen m_chosen;
    QLabel* m_heading;
    QVBoxLayout* m_column;
    std::vector<Section*> m_sections;
    bool m_behind = true; // the plan moved on while hidden
};

} // namespace sumpwright::ui::properties
