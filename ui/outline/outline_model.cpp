#include "ui/outline/outline_model.hpp"

#include <algorithm>

#include <QFont>

#include "core/plan/edits/rename.hpp"
#include "ui/document/view_settings.hpp"
#include "ui/outline/natural_order.hpp"
#include "ui/outline/outline_facts.hpp"
#include "ui/text/names.hpp"
#include "ui/text/refusals.hpp"
#include "ui/text/subject.hpp"

namespace sumpwright::ui::outline
{

namespace
{
constexpr int topParts = 2; // site, floor
// Internal ids: top rows carry none; elements carry their group's number plus one.
constexpr quintptr topLevel = 0;

text::DisplaySettings displayOf(const document::Document& document)
{
    return {document.view().unitSystem(), document.view().numberStyle()};
}

// Same elements with the same tags and kinds, told without looking at what else changed.
template <class Element, class Same>
bool sameOrder(const plan::Table<Element>& a, const plan::Table<Element>& b, const Same& same)
{
    return a.size() == b.size() && std::equal(a.begin(), a.end(), b.begin(), [&](const auto& x, const auto& y) {
               return x == y || (x->id == y->id && same(*x, *y));
           });
}
} // namespace

OutlineModel::OutlineModel(document::Document& document, QObject* parent)
    : QAbstractItemModel(parent), m_document(document), m_groups(groupsOf(document.shown()))
{
    connect(&m_document, &document::Document::planChanged, this, &OutlineModel::update);
    connect(&m_document.view(), &document::ViewSettings::changed, this, &OutlineModel::refreshFacts);
    connect(&m_document, &document::Document::readOnlyChanged, this, &OutlineModel::refreshFacts);
}

std::vector<OutlineModel::Group> OutlineModel::groupsOf(const plan::Plan& plan)
{
    std::vector<Group> groups;
    const auto group = [&](const QString& name) -> Group& {
        const auto at = std::find_if(groups.begin(), groups.end(), [&](const Group& g) { return g.name == name; });
        return at != groups.end() ? *at : groups.emplace_back(Group{name, {}, {}});
    };
    using Kind = plan::VesselKind;
    for (const auto kind : {Kind::fishTank, Kind::sump, Kind::mediaBed, Kind::raftBed, Kind::settler})
        for (const auto& vessel : plan.vessels)
            if (vessel->kind == kind)
                group(text::groupName(kind)).ids.push_back(vessel->id);
    const auto all = [&](const auto& table, plan::ElementKind kind) {
        for (const auto& element : table)
            group(text::groupName(kind)).ids.push_back(element->id);
    };
    all(plan.pumps, plan::ElementKind::pump);
    all(plan.runs, plan::ElementKind::run);
    all(plan.tees, plan::ElementKind::tee);
    for (const auto& fixture : plan.fixtures)
        group(text::groupName(fixture->kind)).ids.push_back(fixture->id);
    all(plan.notes, plan::ElementKind::note);
    all(plan.dimensions, plan::ElementKind::dimension);
    for (auto& each : groups) {
        std::stable_sort(each.ids.begin(), each.ids.end(), [&](base::Id a, base::Id b) {
            return naturallyBefore(QString::fromStdString(plan::tagOf(plan, a)),
                                   QString::fromStdString(plan::tagOf(plan, b)));
        });
        for (const auto id : each.ids)
            each.tags.push_back(plan::tagOf(plan, id));
    }
    return groups;
}

bool OutlineModel::orderMayDiffer() const
{
    const auto& now = m_document.shown();
    const auto& before = m_document.previouslyShown();
    const auto tagged = [](const auto& a, const auto& b) { return a.tag == b.tag; };
    const auto kinds = [](const auto& a, const auto& b) { return a.tag == b.tag && a.kind == b.kind; };
    const auto any = [](const auto&, const auto&) { return true; };
    return !(sameOrder(now.vessels, before.vessels, kinds) && sameOrder(now.fixtures, before.fixtures, kinds) &&
             sameOrder(now.pumps, before.pumps, tagged) && sameOrder(now.runs, before.runs, tagged) &&
             sameOrder(now.tees, before.tees, tagged) && sameOrder(now.notes, before.notes, any) &&
             sameOrder(now.dimensions, before.dimensions, any));
}

void OutlineModel::update()
{
    if (orderMayDiffer()) {
        auto groups = groupsOf(m_document.shown());
        if (sameMembers(groups, m_groups)) {
            reorder(std::move(groups));
            refreshFacts(); // a tag is named in the facts of others too
        } else {
            beginResetModel();
            m_groups = std::move(groups);
            endResetModel();
        }
        return;
    }
    refreshChanged();
}

// The same elements under the same kinds, in whatever order.
bool OutlineModel::sameMembers(const std::vector<Group>& a, const std::vector<Group>& b)
{
    return std::equal(a.begin(), a.end(), b.begin(), b.end(), [](const Group& x, const Group& y) {
        return x.name == y.name && x.ids.size() == y.ids.size() &&
               std::is_permutation(x.ids.begin(), x.ids.end(), y.ids.begin());
    });
}

// A new tag may send its row elsewhere; what is chosen, open or being typed in stays with its element.
void OutlineModel::reorder(std::vector<Group> groups)
{
    if (groups == m_groups)
        return;
    Q_EMIT layoutAboutToBeChanged();
    const QModelIndexList before = persistentIndexList();
    std::vector<base::Id> ids;
    for (const auto& index : before)
        ids.push_back(idAt(index));
    m_groups = std::move(groups);
    QModelIndexList after;
    for (qsizetype i = 0; i < before.size(); ++i) {
        const base::Id id = ids[static_cast<std::size_t>(i)];
        after << (id.valid() ? indexOf(id).siblingAtColumn(before[i].column()) : before[i]);
    }
    changePersistentIndexList(before, after);
    Q_EMIT layoutChanged();
}

// With every tag as it was, facts differ only where the element itself does.
void OutlineModel::refreshChanged()
{
    const auto& now = m_document.shown();
    const auto& before = m_document.previouslyShown();
    const auto refresh = [this](const auto& table, const auto& former) {
        for (const auto& element : table)
            if (former.share(element->id) != element) {
                const QModelIndex row = indexOf(element->id);
                Q_EMIT dataChanged(row, row.siblingAtColumn(factsColumn));
            }
    };
    refresh(now.vessels, before.vessels);
    refresh(now.fixtures, before.fixtures);
    refresh(now.pumps, before.pumps);
    refresh(now.runs, before.runs);
    refresh(now.tees, before.tees);
    refresh(now.notes, before.notes);
    refresh(now.dimensions, before.dimensions);
}

// The view asks again only for the rows it shows.
void OutlineModel::refreshFacts()
{
    for (int row = 0; row < static_cast<int>(m_groups.size()); ++row) {
        const QModelIndex group = index(row + topParts, 0);
        Q_EMIT dataChanged(index(0, titleColumn, group), index(rowCount(group) - 1, factsColumn, group));
    }
}

base::Id OutlineModel::idAt(const QModelIndex& index) const
{
    if (!index.isValid() || index.internalId() == topLevel)
        return {};
    const auto& ids = m_groups[index.internalId() - 1].ids;
    return ids[static_cast<std::size_t>(index.row())];
}

QModelIndex OutlineModel::indexOf(base::Id id) const
{
    for (std::size_t group = 0; group < m_groups.size(); ++group) {
        const auto& ids = m_groups[group].ids;
        const auto at = std::find(ids.begin(), ids.end(), id);
        if (at != ids.end())
            return createIndex(static_cast<int>(at - ids.begin()), titleColumn, group + 1);
    }
    return {};
}

std::optional<TopPart> OutlineModel::topPartAt(const QModelIndex& index) const
{
    if (!index.isValid() || index.internalId() != topLevel || index.row() >= topParts)
        return std::nullopt;
    return index.row() == 0 ? TopPart::site : TopPart::floor;
}

QModelIndex OutlineModel::index(int row, int column, const QModelIndex& parent) const
{
    if (!hasIndex(row, column, parent))
        return {};
    return createIndex(row, column, parent.isValid() ? static_cast<quintptr>(parent.row() - topParts + 1) : topLevel);
}

QModelIndex OutlineModel::parent(const QModelIndex& child) const
{
    if (!child.isValid() || child.internalId() == topLevel)
        return {};
    return createIndex(static_cast<int>(child.internalId()) - 1 + topParts, titleColumn, topLevel);
}

int OutlineModel::rowCount(const QModelIndex& parent) const
{
    if (!parent.isValid())
        return static_cast<int>(m_groups.size()) + topParts;
    if (parent.internalId() != topLevel || parent.row() < topParts || parent.column() != 0)
        return 0;
    return static_cast<int>(m_groups[static_cast<std::size_t>(parent.row() - topParts)].ids.size());
}

int OutlineModel::columnCount(const QModelIndex&) const { return columnsInAll; }

QVariant OutlineModel::data(const QModelIndex& index, int role) const
{
    const base::Id id = idAt(index);
    const auto& plan = m_document.shown();
    if (!id.valid()) {
        const auto part = topPartAt(index);
        if (role == groupNameRole && !part)
            return m_groups[static_cast<std::size_t>(index.row() - topParts)].name;
        if (role != Qt::AccessibleTextRole && (index.column() != titleColumn || role != Qt::DisplayRole))
            return {};
        if (part)
            return *part == TopPart::site ? tr("Site") : tr("Floor");
        const Group& group = m_groups[static_cast<std::size_t>(index.row() - topParts)];
        return tr("%1 (%2)", "kind, how many").arg(group.name).arg(group.ids.size());
    }
    const auto display = displayOf(m_document);
    const auto facts = [&] { return factsOf(plan, id, *m_document.catalogue(), display); };
    switch (role) {
    case Qt::DisplayRole:
        return index.column() == titleColumn ? titleOf(plan, id, display) : facts();
    case Qt::EditRole:
        return QString::fromStdString(plan::tagOf(plan, id));
    case Qt::ToolTipRole:
    case Qt::AccessibleTextRole: {
        const QString name = text::heading(text::subject(plan, id));
        const QString more = facts();
        return more.isEmpty() ? name : tr("%1: %2", "element, facts").arg(name, more);
    }
    default:
        return {};
    }
}

bool OutlineModel::setData(const QModelIndex& index, const QVariant& value, int role)
{
    const base::Id id = idAt(index);
    const std::string tag = value.toString().trimmed().toStdString();
    if (role != Qt::EditRole || !id.valid() || tag == plan::tagOf(m_document.shown(), id))
        return false;
    const auto edit = plan::renameTag(id, tag);
    if (const auto tried = edit.apply(m_document.committed()); !tried) {
        Q_EMIT renameRefused(text::sentenceOf(tried.refusal(), tr("Tag")));
        return false;
    }
    m_document.commit(edit);
    Q_EMIT renameRefused({});
    return true;
}

Qt::ItemFlags OutlineModel::flags(const QModelIndex& index) const
{
    if (!index.isValid())
        return Qt::NoItemFlags;
    Qt::ItemFlags flags = Qt::ItemIsEnabled | Qt::ItemIsSelectable;
    const base::Id id = idAt(index);
    const bool tagged = id.valid() && !plan::tagOf(m_document.shown(), id).empty();
    if (tagged && index.column() == titleColumn && !m_document.readOnly())
        flags |= Qt::ItemIsEditable;
    return flags;
}

QVariant OutlineModel::headerData(int section, Qt::Orientation orientation, int role) const
{
    if (orientation != Qt::Horizontal || role != Qt::DisplayRole)
        return {};
    return section == titleColumn ? tr("Tag") : tr("What it is");
}

} // namespace sumpwright::ui::outline
