#include "ui/properties/tab_order.hpp"

#include <QLayout>
#include <QWidget>

namespace sumpwright::ui::properties
{

namespace
{
void collect(QWidget& widget, std::vector<QWidget*>& found);

void collect(QLayout& layout, std::vector<QWidget*>& found)
{
    for (int index = 0; index < layout.count(); ++index) {
        QLayoutItem* item = layout.itemAt(index);
        if (item->layout())
            collect(*item->layout(), found);
        else if (item->widget())
            collect(*item->widget(), found);
    }
}

void collect(QWidget& widget, std::vector<QWidget*>& found)
{
    if (widget.focusPolicy() & Qt::TabFocus)
        found.push_back(&widget);
    if (widget.layout())
        collect(*widget.layout(), found);
}
} // namespace

std::vector<QWidget*> keyTakers(QWidget& root)
{
    std::vector<QWidget*> found;
    collect(root, found);
    return found;
}

void orderTabs(QWidget& root)
{
    const auto found = keyTakers(root);
    for (std::size_t index = 1; index < found.size(); ++index)
        QWidget::setTabOrder(found[index - 1], found[index]);
}

} // namespace sumpwright::ui::properties
