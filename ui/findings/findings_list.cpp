#include "ui/findings/findings_list.hpp"

#include <QAccessible>
#include <QLabel>
#include <QListView>
#include <QPushButton>
#include <QVBoxLayout>

#include "ui/document/view_settings.hpp"
#include "ui/findings/finding_delegate.hpp"
#include "ui/findings/findings_model.hpp"
#include "ui/style/type.hpp"

namespace sumpwright::ui::findings
{

FindingsList::FindingsList(document::Document& document, QWidget* parent)
    : QWidget(parent), m_document(document), m_model(new FindingsModel(this)), m_list(new QListView(this)),
      m_goTo(new QPushButton(tr("&Go to"), this)), m_caution(new QLabel(this))
{
    m_list->setModel(m_model);
    m_list->setItemDelegate(new FindingDelegate(m_list));
    m_list->setAccessibleName(tr("Findings"));
    m_list->setResizeMode(QListView::Adjust);
    m_list->setWordWrap(true);
    m_list->setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    m_list->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_list->setFrameShape(QFrame::NoFrame);
    m_goTo->setToolTip(tr("Select the element of this finding and show it in the plan"));
    m_goTo->setEnabled(false);
    m_caution->setWordWrap(true);
    m_caution->setText(tr("A check for planning, not a design: local codes, licensed trades and a structural engineer "
                          "decide."));
    auto* foot = new QHBoxLayout;
    foot->addWidget(m_caution, 1);
    foot->addWidget(m_goTo);
    auto* rows = new QVBoxLayout(this);
    rows->setContentsMargins(0, 0, style::halfStep, style::halfStep);
    rows->setSpacing(style::halfStep);
    rows->addWidget(m_list, 1);
    rows->addLayout(foot);
    foot->setContentsMargins(style::step, 0, 0, 0);

    connect(&m_document, &document::Document::assessmentChanged, this, &FindingsList::update);
    connect(&m_document.view(), &document::ViewSettings::changed, this, &FindingsList::update);
    connect(m_list, &QListView::activated, this, &FindingsList::goToCurrent);
    connect(m_goTo, &QPushButton::clicked, this, &FindingsList::goToCurrent);
    connect(m_list->selectionModel(), &QItemSelectionModel::currentChanged, this, [this](const QModelIndex& current) {
        const auto* finding = m_model->at(current.row());
        m_goTo->setEnabled(finding && !finding->elements.empty());
        m_document.highlight(finding && !finding->elements.empty() ? finding->elements.front() : base::Id{});
    });
    update();
}

int FindingsList::count() const { return m_model->rowCount(); }

QString FindingsList::textOf(int row) const
{
    const QModelIndex index = m_model->index(row);
    return index.data(Qt::DisplayRole).toString() + QStringLiteral(" [") +
           index.data(FindingsModel::source).toString() + QStringLiteral("]");
}

void FindingsList::update()
{
    const auto results = m_document.assessment();
    const text::DisplaySettings display{m_document.view().unitSystem(), m_document.view().numberStyle()};
    if (!results || (results->findings == m_shown && display == m_display))
        return;
    const bool more = !m_shown || results->findings->list.size() > m_shown->list.size();
    const int row = m_list->currentIndex().row();
    m_shown = results->findings;
    m_display = display;
    m_model->show(*results, display);
    if (row >= 0 && row < m_model->rowCount())
        m_list->selectionModel()->setCurrentIndex(m_model->index(row), QItemSelectionModel::NoUpdate);
    if (more) {
        QAccessibleEvent announced(m_list, QAccessible::Alert);
        QAccessible::updateAccessibility(&announced);
    }
}

void FindingsList::goTo(int row)
{
    m_list->setCurrentIndex(m_model->index(row));
    goToCurrent();
}

void FindingsList::goToCurrent()
{
    const auto* finding = m_model->at(m_list->currentIndex().row());
    if (finding && !finding->elements.empty())
        m_document.goTo(finding->elements);
}

} // namespace sumpwright::ui::findings
