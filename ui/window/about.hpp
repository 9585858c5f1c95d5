// The two windows of the Help menu: every command with its key, and what the program is and on whose authority.
#pragma once

#include <qglobal.h>

QT_BEGIN_NAMESPACE
class QWidget;
QT_END_NAMESPACE

namespace sumpwright::catalogue
{
class Catalogue;
}

namespace sumpwright::ui::window
{

class Commands;

void showKeys(const Commands& commands, QWidget* parent);
void showAbout(const catalogue::Catalogue& catalogue, QWidget* parent);

} // namespace sumpwright::ui::window
