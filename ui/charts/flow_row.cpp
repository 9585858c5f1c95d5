#include "ui/charts/flow_row.hpp"

#include <algorithm>

#include <QStyle>
#include <QWidget>

namespace sumpwright::ui::charts
{

namespace
{
QSize withEdges(QSize size, const QMargins& edges)
{
    return size + QSize(edges.left() + edges.right(), edges.top() + edges.bottom());
}
} // namespace

FlowRow::~FlowRow()
{
    for (QLayoutItem* item : m_items)
        delete item;
}

void FlowRow::addItem(QLayoutItem* item)
{
    m_items.push_back(item);
    invalidate();
}

QLayoutItem* FlowRow::itemAt(int index) const
{
    return index >= 0 && index < count() ? m_items[static_cast<std::size_t>(index)] : nullptr;
}

QLayoutItem* FlowRow::takeAt(int index)
{
    QLayoutItem* taken = itemAt(index);
    if (!taken)
        return nullptr;
    m_items.erase(m_items.begin() + index);
    invalidate();
    return taken;
}

int FlowRow::heightForWidth(int width) const
{
    const QMargins edges = contentsMargins();
    return arrange(QRect(0, 0, width - edges.left() - edges.right(), 0), Place::no) + edges.top() + edges.bottom();
}

// As wide as the widest one alone.
QSize FlowRow::minimumSize() const
{
    QSize least;
    for (const QLayoutItem* item : m_items)
        if (!item->isEmpty())
            least = least.expandedTo(item->sizeHint());
    return withEdges(least, contentsMargins());
}

QSize FlowRow::sizeHint() const
{
    QSize hint;
    for (const QLayoutItem* item : m_items)
        if (!item->isEmpty())
            hint = {hint.width() + item->sizeHint().width() + spacing(),
                    std::max(hint.height(), item->sizeHint().height())};
    return withEdges(hint, contentsMargins());
}

void FlowRow::setGeometry(const QRect& room)
{
    QLayout::setGeometry(room);
    arrange(room.marginsRemoved(contentsMargins()), Place::yes);
}

int FlowRow::arrange(const QRect& room, Place place) const
{
    QPoint at = room.topLeft();
    int lineHeight = 0;
    for (QLayoutItem* item : m_items) {
        if (item->isEmpty())
            continue;
        const QSize size = item->sizeHint();
        if (at.x() > room.left() && at.x() + size.width() > room.left() + room.width()) {
            at = {room.left(), at.y() + lineHeight};
            lineHeight = 0;
        }
        if (place == Place::yes)
            item->setGeometry(QStyle::visualRect(parentWidget()->layoutDirection(), room, QRect(at, size)));
        at.rx() += size.width() + spacing();
        lineHeight = std::max(lineHeight, size.height());
    }
    return at.y() + lineHeight - room.top();
}

} // namespace sumpwright::ui::charts
