// The commands that change what is selected, without a tool: duplicate, delete, turn, raise, align, distribute.
#pragma once

namespace sumpwright::ui::document
{
class Document;
}

namespace sumpwright::ui::window
{

class Commands;

void addEditCommands(Commands& commands, document::Document& document);    // menu Edit
void addArrangeCommands(Commands& commands, document::Document& document); // menu Arrange
// Enabled as far as the selection allows.
void followSelection(Commands& commands, document::Document& document);

} // namespace sumpwright::ui::window
