// Tab order as the eye goes: widgets of the layouts in order, also those that came later than their neighbours.
#pragma once

#include <vector>

#include <QtGlobal>

QT_BEGIN_NAMESPACE
class QWidget;
QT_END_NAMESPACE

namespace sumpwright::ui::properties
{

// The widgets that take the keyboard, in this order, hidden ones too.
std::vector<QWidget*> keyTakers(QWidget& root);
void orderTabs(QWidget& root);

} // namespace sumpwright::ui::properties
