// NoteForm: the words of a note and where it stands.
#pragma once

#include "ui/properties/form.hpp"

namespace sumpwright::ui::properties
{

class NoteForm : public Form
{
    Q_OBJECT

public:
    NoteForm(document::Document& document, std::vector<base::Id> notes, QWidget* parent = nullptr);
};

} // namespace sumpwright::ui::properties
