#include "ui/window/fold_column.hpp"

#include <algorithm>

#include <QScrollBar>
#include <QToolButton>
#include <QVBoxLayout>

#include "ui/style/type.hpp"

namespace sumpwright::ui::window
{

namespace
{

constexpr int leastChart = 41 * style::step; // its sentence, 220 px of chart, and the value read

} // namespace

Fold::Fold(const QString& id, const QString& title, QWidget* content, QWidget* parent)
    : QWidget(parent), m_id(id), m_title(new QToolButton(this)), m_content(content)
{
    auto* rows = new QVBoxLayout(this);
    rows->setContentsMargins(0, 0, 0, 0);
    rows->setSpacing(0);
    m_title->setText(title);
    m_title->setFont(style::strongFont());
    m_title->setCheckable(false);
    m_title->setToolButtonStyle(Qt::ToolButtonTextBesideIcon);
    m_title->setArrowType(Qt::DownArrow);
    m_title->setAutoRaise(true);
    m_title->setFocusPolicy(Qt::StrongFocus);
    m_title->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    m_title->setMinimumHeight(style::leastTarget + style::halfStep);
    m_title->setToolTip(tr("Fold or unfold this chart"));
    connect(m_title, &QToolButton::clicked, this, [this] { setOpen(!open()); });
    rows->addWidget(m_title);
    rows->addWidget(content);
    content->setMinimumHeight(leastChart);
    content->setVisible(true);
}

bool Fold::open() const { return !m_content->isHidden(); }

void Fold::setOpen(bool nowOpen)
{
    m_content->setVisible(nowOpen);
    m_title->setArrowType(nowOpen ? Qt::DownArrow : Qt::RightArrow);
    m_title->setAccessibleDescription(nowOpen ? tr("unfolded") : tr("folded"));
    Q_EMIT toggled(nowOpen);
}

FoldColumn::FoldColumn(QWidget* parent) : QScrollArea(parent)
{
    auto* inside = new QWidget;
    m_rows = new QVBoxLayout(inside);
    m_rows->setContentsMargins(0, 0, 0, style::step);
    m_rows->setSpacing(style::halfStep);
    m_rows->addStretch(1);
    setWidget(inside);
    setWidgetResizable(true);
    setFrameShape(QFrame::NoFrame);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setFocusPolicy(Qt::NoFocus); // the folds and charts inside take it
}

Fold* FoldColumn::add(const QString& id, const QString& title, QWidget* content)
{
    auto* fold = new Fold(id, title, content, widget());
    m_rows->insertWidget(m_rows->count() - 1, fold);
    m_folds.append(fold);
    // Sideways there is nothing to scroll: the column is never narrower than its charts.
    setMinimumWidth(
        std::max(minimumWidth(), fold->minimumSizeHint().width() + verticalScrollBar()->sizeHint().width()));
    return fold;
}

void FoldColumn::reveal(const QString& id)
{
    for (Fold* fold : m_folds) {
        if (fold->id() != id)
            continue;
        fold->setOpen(true);
        ensureWidgetVisible(fold, 0, 0);
        fold->content()->setFocus(Qt::OtherFocusReason);
    }
}

QStringList FoldColumn::foldedIds() const
{
    QStringList ids;
    for (const Fold* fold : m_folds)
        if (!fold->open())
            ids << fold->id();
    return ids;
}

void FoldColumn::setFoldedIds(const QStringList& ids)
{
    for (Fold* fold : m_folds)
        fold->setOpen(!ids.contains(fold->id()));
}

} // namespace sumpwright::ui::window
