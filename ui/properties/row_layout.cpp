#include "ui/properties/row_layout.hpp"

#include <algorithm>

#include <QStyle>
#include <QWidget>

namespace sumpwright::ui::properties
{

namespace
{
int heightOf(const QLayoutItem& item, int width)
{
    const int asked = item.hasHeightForWidth() ? item.heightForWidth(width) : item.sizeHint().height();
    return std::max(asked, item.minimumSize().height());
}
} // namespace

RowLayout::~RowLayout()
{
    for (const Row& row : m_rows) {
        delete row.label;
        delete row.field;
    }
}

void RowLayout::addRow(QWidget* label, QWidget* field)
{
    addChildWidget(label);
    addChildWidget(field);
    m_rows.push_back({new QWidgetItem(label), new QWidgetItem(field)});
    invalidate();
}

void RowLayout::addRow(QWidget* wide)
{
    addChildWidget(wide);
    m_rows.push_back({nullptr, new QWidgetItem(wide)});
    invalidate();
}

void RowLayout::setRowVisible(QWidget* field, bool visible)
{
    for (const Row& row : m_rows) {
        if (!row.field || row.field->widget() != field)
            continue;
        field->setVisible(visible);
        if (row.label)
            row.label->widget()->setVisible(visible);
    }
}

void RowLayout::addItem(QLayoutItem* item)
{
    m_rows.push_back({nullptr, item});
    invalidate();
}

int RowLayout::count() const
{
    int found = 0;
    for (const Row& row : m_rows)
        found += (row.label ? 1 : 0) + (row.field ? 1 : 0);
    return found;
}

QLayoutItem* RowLayout::itemAt(int index) const
{
    int at = 0;
    for (const Row& row : m_rows)
        for (QLayoutItem* item : {row.label, row.field})
            if (item && at++ == index)
                return item;
    return nullptr;
}

QLayoutItem* RowLayout::takeAt(int index)
{
    QLayoutItem* taken = itemAt(index);
    if (!taken)
        return nullptr;
    for (Row& row : m_rows) {
        row.label = row.label == taken ? nullptr : row.label;
        row.field = row.field == taken ? nullptr : row.field;
    }
    std::erase_if(m_rows, [](const Row& row) { return !row.label && !row.field; });
    invalidate();
    return taken;
}

// A row may need a second line where there is less width.
bool RowLayout::hasHeightForWidth() const
{
    return std::any_of(m_rows.begin(), m_rows.end(),
                       [](const Row& row) { return row.shown() && (row.inTwo() || row.field->hasHeightForWidth()); });
}

int RowLayout::heightForWidth(int width) const
{
    const QMargins edges = contentsMargins();
    const int inner = width - edges.left() - edges.right();
    return arrange(QRect(0, 0, inner, 0), Place::no) + edges.top() + edges.bottom();
}

QSize RowLayout::minimumSize() const
{
    QSize least;
    for (const Row& row : m_rows) {
        if (!row.shown())
            continue;
        QSize own = row.field->minimumSize();
        if (row.inTwo())
            own = own.expandedTo(row.label->minimumSize());
        least = QSize(std::max(least.width(), own.width()), least.height() + own.height() + m_rowGap);
    }
    const QMargins edges = contentsMargins();
    return least + QSize(edges.left() + edges.right(), edges.top() + edges.bottom());
}

QSize RowLayout::sizeHint() const
{
    int label = 0;
    int field = 0;
    for (const Row& row : m_rows) {
        if (!row.shown())
            continue;
        field = std::max(field, row.field->sizeHint().width());
        if (row.inTwo())
            label = std::max(label, row.label->sizeHint().width() + m_columnGap);
    }
    const QMargins edges = contentsMargins();
    const int width = label + field + edges.left() + edges.right();
    return {width, heightForWidth(width)};
}

void RowLayout::setGeometry(const QRect& room)
{
    QLayout::setGeometry(room);
    arrange(room.marginsRemoved(contentsMargins()), Place::yes);
}

// As wide as the widest label that leaves the widest field its room; fields that need more than half stand below
// their labels and do not count.
int RowLayout::labelColumn(int width) const
{
    int need = 0;
    for (const Row& row : m_rows)
        if (row.shown() && row.inTwo() && row.field->minimumSize().width() <= width / 2)
            need = std::max(need, row.field->minimumSize().width());
    int column = 0;
    for (const Row& row : m_rows)
        if (row.shown() && row.inTwo() && row.label->minimumSize().width() <= width - m_columnGap - need)
            column = std::max(column, row.label->minimumSize().width());
    return column;
}

// Text that would run to many short lines beside its label reads better below it.
bool RowLayout::fitsBeside(const Row& row, int column, int width) const
{
    const int rest = width - column - m_columnGap;
    if (row.label->minimumSize().width() > column || row.field->minimumSize().width() > rest)
        return false;
    if (!row.field->hasHeightForWidth())
        return true;
    const int line = row.label->sizeHint().height();
    const int beside = heightOf(*row.field, rest);
    return beside <= 3 * line || heightOf(*row.field, width) + m_rowGap + line >= beside;
}

int RowLayout::arrange(const QRect& room, Place place) const
{
    const int column = labelColumn(room.width());
    int top = room.top();
    int gap = 0;
    for (const Row& row : m_rows) {
        if (!row.shown())
            continue;
        top += gap;
        top += arrangeRow(row, QRect(room.left(), top, room.width(), 0), column, place);
        gap = m_rowGap;
    }
    return top - room.top();
}

int RowLayout::arrangeRow(const Row& row, const QRect& room, int column, Place place) const
{
    const int width = room.width();
    const QPoint at = room.topLeft();
    if (row.inTwo() && fitsBeside(row, column, width)) {
        const int rest = width - column - m_columnGap;
        const int line = row.label->sizeHint().height();
        const int height = std::max(heightOf(*row.field, rest), line);
        // In the middle of a field of one line, and level with the first line of text.
        const int beside = std::clamp(row.field->minimumSize().height(), line, line * 7 / 4);
        if (place == Place::yes) {
            put(*row.label, room, {at, QSize(column, std::min(height, beside))});
            put(*row.field, room, {at + QPoint(column + m_columnGap, 0), QSize(rest, height)});
        }
        return height;
    }
    const int line = row.inTwo() ? row.label->sizeHint().height() : 0;
    const int above = row.inTwo() ? line + m_rowGap / 2 : 0;
    const int height = heightOf(*row.field, width);
    if (place == Place::yes) {
        if (row.inTwo())
            put(*row.label, room, {at, QSize(width, line)});
        put(*row.field, room, {at + QPoint(0, above), QSize(width, height)});
    }
    return above + height;
}

void RowLayout::put(QLayoutItem& item, const QRect& room, const QRect& where) const
{
    const auto* widget = parentWidget();
    const QRect whole(room.left(), where.top(), room.width(), where.height());
    item.setGeometry(widget ? QStyle::visualRect(widget->layoutDirection(), whole, where) : where);
}

} // namespace sumpwright::ui::properties
