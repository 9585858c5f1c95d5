#include "ui/properties/tee_form.hpp"

#include "core/plan/edits/move.hpp"
#include "ui/properties/name_section.hpp"
#include "ui/properties/position_section.hpp"
#include "ui/text/result_names.hpp"
#include "ui/text/subject.hpp"

namespace sumpwright::ui::properties
{

namespace
{
bool meets(const plan::Run& run, base::Id tee)
{
    const auto at = [tee](const plan::RunEnd& end) {
        const auto* met = std::get_if<plan::TeeEnd>(&end);
        return met && met->tee == tee;
    };
    return at(run.from) || at(run.to);
}

class TeeSection : public Section
{
public:
    explicit TeeSection(Chosen tees) : Section(std::move(tees), {})
    {
        const QString level = TeeForm::tr("Level of the centre line");
        addRow(level, quantityField<units::Elevation>(
                          level,
                          [this](const plan::Plan& plan) {
                              return sharedOver<units::Elevation>(plan.tees, chosen().ids,
                                                                  [](const auto& tee) { return tee.level; });
                          },
                          [this](const units::Elevation& value) { return plan::setTeeLevel(chosen().ids, value); }));
        if (chosen().one())
            addMeeting();
    }

private:
    void addMeeting()
    {
        addFact(TeeForm::tr("Runs that meet"), [this](const plan::Plan& plan) {
            QStringList runs;
            for (const auto& run : plan.runs)
                if (meets(*run, chosen().first()))
                    runs << text::subject(plan, run->id);
            return runs.join(QStringLiteral(", "));
        });
        for (const auto state : assessment::allRunningStates)
            addResult(
                state == assessment::RunningState::least ? TeeForm::tr("Water would stand at, least flow")
                                                         : TeeForm::tr("Water would stand at, most flow"),
                [this, state](const assessment::Assessment& results) {
                    const auto* tee = assessment::find(results.flow->tees, chosen().first());
                    return tee ? text::stageText(chosen().display(), tee->grade[state]) : QString();
                },
                [this, state](const assessment::Assessment& results) {
                    return assessment::workingOfGrade(results, chosen().first(), state);
                });
        addHint(TeeForm::tr("The K each run suffers here is entered with that run."));
    }
};
} // namespace

TeeForm::TeeForm(document::Document& document, std::vector<base::Id> tees, QWidget* parent)
    : Form({document, std::move(tees)}, parent)
{
    add(new NameSection(chosen()));
    add(new TeeSection(chosen()));
    add(new PositionSection(chosen()));
}

} // namespace sumpwright::ui::properties
