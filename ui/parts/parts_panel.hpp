// PartsPanel: the catalogue and the person's own parts with source and range; own ones are added, changed, removed,
// imported from a table and written to one here.
#pragma once

#include <memory>

#include <QWidget>

#include "core/catalogue/catalogue.hpp"
#include "ui/parts/own_part_form.hpp"

QT_BEGIN_NAMESPACE
class QComboBox;
class QLabel;
class QLineEdit;
class QPushButton;
class QTreeView;
QT_END_NAMESPACE

namespace sumpwright::ui::parts
{

class ImportPreview;
class PartModel;

class PartsPanel : public QWidget
{
    Q_OBJECT

public:
    // `kept`: the file of the parts kept for all plans.
    PartsPanel(document::Document& document, OwnPartForm::Display display, QString kept, QWidget* parent = nullptr);

    void importFrom(const QString& path); // shows what would come in
    bool exportTo(const QString& path);   // false: not written, which is said
    ImportPreview& preview() { return *m_preview; }
    QString said() const; // the line under the buttons; empty: none

private:
    void makeSearch();
    void makeList();
    void makeButtons();
    void layOut();
    void refresh();
    void showCurrent();
    void select(const std::string& id);
    void add(const plan::Edit& edit, const std::string& id);
    void addPipe();
    void addFitting();
    void addPump();
    void removeCurrent();
    void takeImport();
    void chooseImport();
    void chooseExport();
    void keepForOtherPlans();
    void offerKept();
    void say(const QString& words);
    std::string freshName(const QString& words) const;

    document::Document& m_document;
    OwnPartForm::Display m_display;
    QString m_kept;
    std::shared_ptr<const catalogue::Catalogue> m_tables; // those the list shows
    text::DisplaySettings m_shownAs;
    PartModel* m_model;
    QLineEdit* m_search;
    QComboBox* m_filter;
    QTreeView* m_list;
    QLabel* m_details;
    OwnPartForm* m_form;
    ImportPreview* m_preview;
    QLabel* m_said;
    QPushButton* m_newPipe;
    QPushButton* m_newFitting;
    QPushButton* m_newPump;
    QPushButton* m_remove;
    QPushButton* m_import;
    QPushButton* m_export;
    QPushButton* m_keep;
    QPushButton* m_take;
};

} // namespace sumpwright::ui::parts
