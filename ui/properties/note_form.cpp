#include "ui/properties/note_form.hpp"

#include "core/plan/edits/annotation.hpp"
#include "ui/properties/each.hpp"
#include "ui/properties/position_section.hpp"

namespace sumpwright::ui::properties
{

namespace
{
class WordsSection : public Section
{
public:
    explicit WordsSection(Chosen notes) : Section(std::move(notes), {})
    {
        const QString label = NoteForm::tr("Words");
        addRow(label, textField(
                          label,
                          [this](const plan::Plan& plan) {
                              return sharedOver<std::string>(plan.notes, chosen().ids,
                                                             [](const auto& note) { return note.text; });
                          },
                          [this](const std::string& words) {
                              return eachOf(chosen().ids,
                                            [&](base::Id note) { return plan::setNoteText(note, words); });
                          }));
    }
};
} // namespace

NoteForm::NoteForm(document::Document& document, std::vector<base::Id> notes, QWidget* parent)
    : Form({document, std::move(notes)}, parent)
{
    add(new WordsSection(chosen()));
    add(new PositionSection(chosen()));
}

} // namespace sumpwright::ui::properties
