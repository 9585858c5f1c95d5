// FindingDelegate: paints one finding: mark and word of its severity, the sentence, the advice, the source.
#pragma once

#include <utility>

#include <QFont>
#include <QHash>
#include <QStyledItemDelegate>

namespace sumpwright::ui::findings
{

class FindingDelegate : public QStyledItemDelegate
{
    Q_OBJECT

public:
    using QStyledItemDelegate::QStyledItemDelegate;

    void paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const override;
    QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override;

private:
    mutable QHash<std::pair<QString, QString>, int> m_heights; // by head and tail, at this width and in this font
    mutable int m_heightsWidth = 0;
    mutable QFont m_heightsFont;
};

} // namespace sumpwright::ui::findings
