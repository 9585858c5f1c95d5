// FindingsList: what a practitioner should know about the plan, in sentences: severity by word and shape, what is
// wrong, what mends it, who says so. Enter or a double click goes to the element.
#pragma once

#include <functional>
#include <memory>

#include <QWidget>

#include "ui/document/document.hpp"
#include "ui/text/display.hpp"

QT_BEGIN_NAMESPACE
class QLabel;
class QListView;
class QPushButton;
QT_END_NAMESPACE

namespace sumpwright::ui::findings
{

class FindingsModel;

class FindingsList : public QWidget
{
    Q_OBJECT

public:
    explicit FindingsList(document::Document& document, QWidget* parent = nullptr);

    int count() const;
    QString textOf(int row) const; // severity, message, advice, source in one text
    void goTo(int row);

private:
    void update();
    void goToCurrent();

    document::Document& m_document;
    FindingsModel* m_model;
    QListView* m_list;
    QPushButton* m_goTo;
    QLabel* m_caution;
    std::shared_ptr<const assessment::Findings> m_shown;
    text::DisplaySettings m_display;
};

} // namespace sumpwright::ui::findings
