// Boxes that ask for a file, showing each by its kind alone: the toolkit's own icons look inside every file of the
// folder, which may wait for ever on a device and take long over a network.
#pragma once

#include <QString>

QT_BEGIN_NAMESPACE
class QFileDialog;
class QWidget;
QT_END_NAMESPACE

namespace sumpwright::ui::style
{

void showKindsOnly(QFileDialog& box);

// An existing file; empty: none was chosen.
QString askForFile(QWidget* parent, const QString& title, const QString& folder, const QString& kinds);

} // namespace sumpwright::ui::style
