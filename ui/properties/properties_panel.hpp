// PropertiesPanel: shows the form of what is chosen - site or floor while nothing is - and keeps it up to date. A form
// is made anew only when the choice, or the kind of what is chosen, changes; never while it is typed in.
#pragma once

#include <string>

#include <QWidget>

#include "core/assessment/working.hpp"
#include "ui/document/document.hpp"

QT_BEGIN_NAMESPACE
class QScrollArea;
class QTabBar;
QT_END_NAMESPACE

namespace sumpwright::ui::properties
{

class Form;

class PropertiesPanel : public QWidget
{
    Q_OBJECT

public:
    explicit PropertiesPanel(document::Document& document, QWidget* parent = nullptr);

    Form* form() const { return m_form; }
    void showSite(); // both also let go of what is chosen
    void showFloor();
    void takeFocus();   // the first field
    void finishEntry(); // what is typed counts, as if the field were left; for saving and closing

Q_SIGNALS:
    void workingWanted(const sumpwright::assessment::Working& working);

protected:
    void changeEvent(QEvent* event) override;

private:
    std::string signature() const; // what the form's make-up depends on
    Form* makeForm();
    void settle();
    void showPart(int tab);
    void keepRoom();
    QString focusedName() const;
    void focusNamed(const QString& name);

    document::Document& m_document;
    QTabBar* m_tabs;
    QScrollArea* m_scroll;
    Form* m_form = nullptr;
    std::string m_signature;
};

} // namespace sumpwright::ui::properties
