#include "ui/outline/outline_panel.hpp"

#include <algorithm>

#include <QContextMenuEvent>
#include <QHeaderView>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QScopedValueRollback>
#include <QSortFilterProxyModel>
#include <QTreeView>
#include <QVBoxLayout>

#include "ui/outline/outline_model.hpp"
#include "ui/style/palette.hpp"
#include "ui/style/type.hpp"

namespace sumpwright::ui::outline
{

OutlinePanel::OutlinePanel(document::Document& document, QWidget* parent)
    : QWidget(parent), m_document(document), m_model(new OutlineModel(document, this)),
      m_filtered(new QSortFilterProxyModel(this)), m_filter(new QLineEdit(this)), m_tree(new QTreeView(this)),
      m_refusal(new QLabel(this))
{
    setAccessibleName(tr("Outline"));
    m_filter->setPlaceholderText(tr("Filter"));
    m_filter->setAccessibleName(tr("Filter of the outline"));
    m_filter->setClearButtonEnabled(true);
    m_filter->setMinimumHeight(style::leastTarget);
    m_refusal->setWordWrap(true);
    m_refusal->setTextFormat(Qt::PlainText);
    m_refusal->setVisible(false);
    m_filtered->setSourceModel(m_model);
    m_filtered->setRecursiveFilteringEnabled(true);
    m_filtered->setFilterCaseSensitivity(Qt::CaseInsensitive);
    m_filtered->setFilterRole(Qt::AccessibleTextRole);
    m_filtered->setFilterKeyColumn(OutlineModel::titleColumn);
    makeTree();
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(style::halfStep, style::halfStep, style::halfStep, 0);
    column->setSpacing(style::halfStep);
    column->addWidget(m_filter);
    column->addWidget(m_tree, 1);
    column->addWidget(m_refusal);
    setFocusProxy(m_tree);
    connect(m_filter, &QLineEdit::textChanged, this, &OutlinePanel::filterBy);
    connect(m_model, &OutlineModel::renameRefused, this, &OutlinePanel::showRefusal);
    connect(&m_document, &document::Document::selectionChanged, this, &OutlinePanel::showChosen);
    showChosen();
}

void OutlinePanel::makeTree()
{
    m_tree->setModel(m_filtered);
    m_tree->setAccessibleName(tr("Everything drawn"));
    m_tree->setSelectionMode(QAbstractItemView::ExtendedSelection);
    m_tree->setEditTriggers(QAbstractItemView::EditKeyPressed);
    m_tree->setUniformRowHeights(true);
    m_tree->setTabKeyNavigation(false);
    m_tree->setExpandsOnDoubleClick(false);
    m_tree->setTextElideMode(Qt::ElideRight);
    m_tree->header()->setStretchLastSection(true);
    m_tree->header()->setSectionResizeMode(OutlineModel::titleColumn, QHeaderView::Interactive);
    m_tree->header()->setSectionsMovable(false);
    m_tree->expandAll();
    m_tree->installEventFilter(this);
    m_tree->viewport()->installEventFilter(this);
    connect(m_tree, &QTreeView::doubleClicked, this, &OutlinePanel::activate);
    connect(m_tree->selectionModel(), &QItemSelectionModel::selectionChanged, this, &OutlinePanel::chooseFromTree);
    connect(m_filtered, &QAbstractItemModel::modelAboutToBeReset, this, [this] {
        m_settling = true;
        m_folded = foldedGroups();
    });
    connect(m_filtered, &QAbstractItemModel::modelReset, this, [this] {
        unfoldAllBut(m_folded);
        m_settling = false;
        makeRoomForTags();
        showChosen();
    });
    connect(m_filtered, &QAbstractItemModel::layoutChanged, this, &OutlinePanel::makeRoomForTags);
    makeRoomForTags();
}

QString OutlinePanel::refusalText() const { return m_refusal->isHidden() ? QString() : m_refusal->text(); }

// When tags come, go or change; a column that measured itself would do so on every frame of a drag.
// Headings run over both columns. A long note is cut short rather than push aside what everything is.
void OutlinePanel::makeRoomForTags()
{
    const QFontMetrics metrics = m_tree->fontMetrics();
    int need = m_tree->header()->sectionSizeHint(OutlineModel::titleColumn);
    for (int row = 0; row < m_filtered->rowCount(); ++row) {
        const QModelIndex group = m_filtered->index(row, OutlineModel::titleColumn);
        m_tree->setFirstColumnSpanned(row, {}, true);
        for (int child = 0; child < m_filtered->rowCount(group); ++child) {
            const QString tag = m_filtered->index(child, OutlineModel::titleColumn, group).data().toString();
            need = std::max(need, 2 * m_tree->indentation() + metrics.horizontalAdvance(tag) + 2 * style::step);
        }
    }
    m_tree->setColumnWidth(OutlineModel::titleColumn, std::min(need, metrics.averageCharWidth() * 13));
}

// By kind, without the number in brackets.
QStringList OutlinePanel::foldedGroups() const
{
    QStringList folded;
    for (int row = 0; row < m_filtered->rowCount(); ++row) {
        const QModelIndex group = m_filtered->index(row, 0);
        if (m_filtered->hasChildren(group) && !m_tree->isExpanded(group))
            folded << group.data(OutlineModel::groupNameRole).toString();
    }
    return folded;
}

void OutlinePanel::unfoldAllBut(const QStringList& folded)
{
    for (int row = 0; row < m_filtered->rowCount(); ++row) {
        const QModelIndex group = m_filtered->index(row, 0);
        m_tree->setExpanded(group, !folded.contains(group.data(OutlineModel::groupNameRole).toString()));
    }
}

void OutlinePanel::filterBy(const QString& words)
{
    const QScopedValueRollback settling(m_settling, true);
    m_filtered->setFilterFixedString(words);
    m_tree->expandAll();
    showChosen();
}

void OutlinePanel::chooseFromTree()
{
    if (m_settling)
        return;
    std::vector<base::Id> ids;
    std::optional<TopPart> part;
    for (const auto& shown : m_tree->selectionModel()->selectedRows(OutlineModel::titleColumn)) {
        const QModelIndex index = m_filtered->mapToSource(shown);
        if (const base::Id id = m_model->idAt(index); id.valid())
            ids.push_back(id);
        else if (const auto top = m_model->topPartAt(index))
            part = top;
        else // a group stands for all it holds
            for (int row = 0; row < m_model->rowCount(index); ++row)
                ids.push_back(m_model->idAt(m_model->index(row, 0, index)));
    }
    std::sort(ids.begin(), ids.end());
    ids.erase(std::unique(ids.begin(), ids.end()), ids.end());
    const bool nothing = ids.empty();
    const QScopedValueRollback choosing(m_choosing, true); // what the person marked here stays marked
    m_document.select(std::move(ids));
    if (nothing && part)
        Q_EMIT partWanted(*part);
}

void OutlinePanel::showChosen()
{
    if (m_choosing)
        return;
    const QScopedValueRollback settling(m_settling, true);
    QItemSelection chosen;
    QModelIndex last;
    for (const auto id : m_document.selection()) {
        const QModelIndex index = m_filtered->mapFromSource(m_model->indexOf(id));
        if (!index.isValid())
            continue;
        chosen.select(index, index.siblingAtColumn(OutlineModel::factsColumn));
        last = index;
    }
    m_tree->selectionModel()->select(chosen, QItemSelectionModel::ClearAndSelect);
    if (!last.isValid())
        return;
    m_tree->selectionModel()->setCurrentIndex(last, QItemSelectionModel::NoUpdate);
    m_tree->scrollTo(last);
}

void OutlinePanel::activate(const QModelIndex& shown)
{
    const QModelIndex index = m_filtered->mapToSource(shown);
    if (const base::Id id = m_model->idAt(index); id.valid())
        m_document.goTo({id});
    else if (!m_model->topPartAt(index))
        m_tree->setExpanded(shown, !m_tree->isExpanded(shown));
}

void OutlinePanel::showRefusal(const QString& sentence)
{
    m_refusal->setText(sentence);
    m_refusal->setVisible(!sentence.isEmpty());
    QPalette own;
    own.setColor(QPalette::WindowText, style::themeOf(*this).fault);
    m_refusal->setPalette(own);
}

bool OutlinePanel::eventFilter(QObject* watched, QEvent* event)
{
    if (event->type() == QEvent::ContextMenu) {
        const auto* menu = static_cast<QContextMenuEvent*>(event);
        const bool byKey = menu->reason() == QContextMenuEvent::Keyboard;
        openMenuAt(byKey ? m_tree->visualRect(m_tree->currentIndex()).center() : menu->pos());
        return true;
    }
    if (watched == m_tree && event->type() == QEvent::KeyPress) {
        const auto* key = static_cast<QKeyEvent*>(event);
        if (key->key() == Qt::Key_Return || key->key() == Qt::Key_Enter) {
            activate(m_tree->currentIndex());
            return true;
        }
        if (key->key() == Qt::Key_Delete && !m_document.selection().empty()) {
            Q_EMIT deleteWanted();
            return true;
        }
        if (key->key() == Qt::Key_Escape && !m_refusal->isHidden()) {
            showRefusal({});
            return true;
        }
    }
    return QWidget::eventFilter(watched, event);
}

void OutlinePanel::openMenuAt(const QPoint& inView)
{
    const QModelIndex under = m_tree->indexAt(inView);
    if (under.isValid() && !m_tree->selectionModel()->isSelected(under))
        m_tree->selectionModel()->setCurrentIndex(under,
                                                  QItemSelectionModel::ClearAndSelect | QItemSelectionModel::Rows);
    Q_EMIT menuRequested(m_tree->viewport()->mapToGlobal(inView));
}

void OutlinePanel::changeEvent(QEvent* event)
{
    if (event->type() == QEvent::PaletteChange && !m_refusal->isHidden())
        showRefusal(m_refusal->text());
    QWidget::changeEvent(event);
}

} // namespace sumpwright::ui::outline
