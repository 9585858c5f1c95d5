// OutlinePanel: everything drawn, as a list: choose, rename (F2), filter, go to (Enter). What is chosen here is chosen
// in the plan, and the other way round.
#pragma once

#include <QPoint>
#include <QStringList>
#include <QWidget>

#include "ui/document/document.hpp"
#include "ui/outline/outline_model.hpp"

QT_BEGIN_NAMESPACE
class QLabel;
class QLineEdit;
class QSortFilterProxyModel;
class QTreeView;
QT_END_NAMESPACE

namespace sumpwright::ui::outline
{

class OutlinePanel : public QWidget
{
    Q_OBJECT

public:
    explicit OutlinePanel(document::Document& document, QWidget* parent = nullptr);

    QTreeView& tree() { return *m_tree; }
    QLineEdit& filter() { return *m_filter; }
    QString refusalText() const;

Q_SIGNALS:
    void menuRequested(QPoint global);                      // right button, menu key or Shift+F10 on an element
    void partWanted(sumpwright::ui::outline::TopPart part); // site or floor chosen
    void deleteWanted();                                    // Delete pressed on what is chosen

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    void makeTree();
    void filterBy(const QString& words);
    void chooseFromTree();
    void showChosen();
    void activate(const QModelIndex& shown);
    void showRefusal(const QString& sentence);
    void makeRoomForTags();
    QStringList foldedGroups() const;
    void unfoldAllBut(const QStringList& folded);
    void openMenuAt(const QPoint& inView);

    document::Document& m_document;
    OutlineModel* m_model;
    QSortFilterProxyModel* m_filtered;
    QLineEdit* m_filter;
    QTreeView* m_tree;
    QLabel* m_refusal;
    QStringList m_folded;
    bool m_settling = false; // the tree changes by itself, the person chose nothing
    bool m_choosing = false; // the person chose here
};

} // namespace sumpwright::ui::outline
