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
    QSize least(0, 0);
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

// The items of one line, from `first` on; the line is never empty.
FlowRow::Line FlowRow::lineFrom(std::size_t first, int room) const
{
    Line line{first, first, 0, 0, 0};
    for (; line.last < m_items.size(); ++line.last) {
        const QLayoutItem& item = *m_items[line.last];
        if (item.isEmpty())
            continue;
        const int gap = line.used > 0 ? spacing() : 0;
        if (line.used > 0 && line.width + gap + item.sizeHint().width() > room)
            break;
        ++line.used;
        line.width += gap + item.sizeHint().width();
        line.height = std::max(line.height, item.sizeHint().height());
    }
    return line;
}

// What a line has left over is shared out evenly, as far as the items take more than they ask for.
void FlowRow::place(const Line& line, const QRect& room) const
{
    int spare = std::max(room.width() - line.width, 0);
    int waiting = line.used;
    int x = room.left();
    for (std::size_t i = line.first; i < line.last; ++i) {
        QLayoutItem& item = *m_items[i];
        if (item.isEmpty())
            continue;
        const QSize asked = item.sizeHint();
        const int more = std::clamp(item.maximumSize().width() - asked.width(), 0, spare / waiting--);
        spare -= more;
        const QRect where(x, room.top(), asked.width() + more, asked.height());
        item.setGeometry(QStyle::visualRect(parentWidget()->layoutDirection(), room, where));
        x += where.width() + spacing();
    }
}

int FlowRow::arrange(const QRect& room, Place how) const
{
    int top = room.top();
    for (std::size_t first = 0; first < m_items.size();) {
        const Line line = lineFrom(first, room.width());
        if (how == Place::yes)
            place(line, QRect(room.left(), top, room.width(), line.height));
        top += line.height;
        first = line.last;
    }
    return top - room.top();
}

} // namespace sumpwright::ui::charts
