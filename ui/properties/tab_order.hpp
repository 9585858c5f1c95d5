// Tab order as the eye goes: widgets of the layouts in order, also those that came later than their neighbours.
#pragma once

#include <QtGlobal>

QT_BEGIN_NAMESPACE
class QWidget;
QT_END_NAMESPACE

namespace sumpwright::ui::properties
{

void orderTabs(QWidget& root);

} // namespace sumpwright::ui::properties
