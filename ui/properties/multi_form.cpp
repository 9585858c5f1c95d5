#include "ui/properties/multi_form.hpp"

#include <map>

#include "core/plan/edits/move.hpp"
#include "ui/properties/position_section.hpp"
#include "ui/text/subject.hpp"

namespace sumpwright::ui::properties
{

namespace
{
class ContentsSection : public Section
{
public:
    explicit ContentsSection(Chosen elements) : Section(std::move(elements), {})
    {
        addFact(MultiForm::tr("Chosen"), [this](const plan::Plan& plan) {
            std::map<plan::ElementKind, std::vector<base::Id>> byKind;
            for (const auto id : chosen().ids)
                if (const auto kind = plan::kindOf(plan, id))
                    byKind[*kind].push_back(id);
            QStringList words;
            for (const auto& [kind, ids] : byKind)
                words << text::subjects(plan, ids);
            return words.join(QStringLiteral(", "));
        });
        const QString raise = MultiForm::tr("Raise all by");
        addRow(raise,
               quantityField<units::Length>(
                   raise, [](const plan::Plan&) { return sharedOne(units::metres(0.0)); },
                   [this](const units::Length& by) { return plan::raiseElements(chosen().ids, by); }, {"m", "ft"}));
    }
};
} // namespace

MultiForm::MultiForm(document::Document& document, std::vector<base::Id> elements, QWidget* parent)
    : Form({document, std::move(elements)}, parent)
{
    add(new ContentsSection(chosen()));
    add(new PositionSection(chosen()));
}

} // namespace sumpwright::ui::properties
