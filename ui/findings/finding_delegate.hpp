// FindingDelegate: paints one finding: mark and word of its severity, the sentence, the advice, the source.
#pragma once

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
};

} // namespace sumpwright::ui::findings
