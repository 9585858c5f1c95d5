// OutlineModel: every element of the plan as a tree of two levels - groups by kind, elements by tag in natural order -
// with site and floor on top. Renaming an element is one undo step. A drag changes facts, never the order.
#pragma once

#include <vector>

#include <QAbstractItemModel>

#include "ui/document/document.hpp"

namespace sumpwright::ui::outline
{

enum class TopPart { site, floor };

class OutlineModel : public QAbstractItemModel
{
    Q_OBJECT

public:
    enum Role { groupNameRole = Qt::UserRole };
    enum Column { titleColumn, factsColumn, columnsInAll };

    explicit OutlineModel(document::Document& document, QObject* parent = nullptr);

    base::Id idAt(const QModelIndex& index) const; // none for groups, site and floor
    QModelIndex indexOf(base::Id id) const;
    std::optional<TopPart> topPartAt(const QModelIndex& index) const;

    QModelIndex index(int row, int column, const QModelIndex& parent = {}) const override;
    QModelIndex parent(const QModelIndex& child) const override;
    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    bool setData(const QModelIndex& index, const QVariant& value, int role) override;
    Qt::ItemFlags flags(const QModelIndex& index) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

Q_SIGNALS:
    void renameRefused(const QString& sentence); // empty: the rename went through

private:
    struct Group {
        QString name;
        std::vector<base::Id> ids;
        std::vector<std::string> tags; // as sorted, to tell when the order may have changed
        friend bool operator==(const Group&, const Group&) = default;
    };
    static std::vector<Group> groupsOf(const plan::Plan& plan);
    static bool sameMembers(const std::vector<Group>& a, const std::vector<Group>& b);
    bool orderMayDiffer() const;
    void reorder(std::vector<Group> groups);
    void update();
    void refreshChanged();
    void refreshFacts();

    document::Document& m_document;
    std::vector<Group> m_groups;
};

} // namespace sumpwright::ui::outline
