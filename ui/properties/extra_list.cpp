#include "ui/properties/extra_list.hpp"

#include <cmath>

#include <QPushButton>

#include "core/plan/edits/run.hpp"
#include "ui/properties/loss_section.hpp"
#include "ui/properties/part_choices.hpp"
#include "ui/text/names.hpp"

namespace sumpwright::ui::properties
{

namespace
{
class ExtraSection : public Section
{
public:
    ExtraSection(Chosen run, std::size_t index, QWidget* parent) : Section(std::move(run), {}, parent), m_index(index)
    {
        setAccessibleName(named(ExtraList::tr("Fitting")));
        addFittingRow();
        addRow(ExtraList::tr("Number"),
               ratioField(named(ExtraList::tr("Number")),
                          reading<double>([](const auto& extra) { return double(extra.count); }),
                          [this](const double& value) {
                              const bool whole = std::floor(value) == value && std::abs(value) < 1e6;
                              // not a whole number: minus one is refused by the edit with its own words
                              return change([&](auto& extra) { extra.count = whole ? static_cast<int>(value) : -1; });
                          }));
        addRow(ExtraList::tr("K of one"),
               optionalRatioField(
                   named(ExtraList::tr("K")),
                   reading<std::optional<double>>([](const auto& extra) { return extra.lossCoefficient; }),
                   [this](const std::optional<double>& k) {
                       return change([&](auto& extra) { extra.lossCoefficient = k; });
                   },
                   ExtraList::tr("from the catalogue")));
        addCounted();
        addWide(button(ExtraList::tr("Remove"), named(ExtraList::tr("Remove")), [this] {
            auto list = runNow().extraFittings;
            list.erase(list.begin() + static_cast<std::ptrdiff_t>(m_index));
            return plan::setExtraFittings(chosen().ids, std::move(list));
        }));
    }

private:
    // Of the run's losses that have no place of their own, the one of this row.
    const assessment::FittingLoss* find(const assessment::Assessment& results) const
    {
        const auto* run = assessment::find(results.flow->runs, chosen().first());
        if (!run)
            return nullptr;
        std::size_t before = m_index;
        for (const auto& loss : run->fittings)
            if (loss.place == assessment::FittingPlace::alongRun && before-- == 0)
                return &loss;
        return nullptr;
    }
    QString countedText(const assessment::Assessment& results) const
    {
        const auto* loss = find(results);
        if (!loss)
            return {};
        const QString one = lossText(chosen().display(), *results.catalogue, *loss);
        return loss->count == 1
                   ? one
                   : ExtraList::tr("%1 in all, each %2").arg(chosen().display().ratioText(loss->k * loss->count), one);
    }
    void addCounted()
    {
        auto* counted = addResult(
            ExtraList::tr("Counted"), [this](const assessment::Assessment& results) { return countedText(results); },
            [this](const assessment::Assessment& results) -> std::optional<assessment::Working> {
                const auto* loss = find(results);
                return loss ? assessment::workingOfFitting(results, chosen().first(), *loss,
                                                           assessment::RunningState::least)
                            : std::nullopt;
            });
        counted->setFullName(named(ExtraList::tr("Counted")));
    }
    const plan::Run& runNow() const { return *chosen().plan().runs.find(chosen().first()); }
    QString named(const QString& what) const
    {
        return ExtraList::tr("%1, undrawn fitting %2").arg(what).arg(static_cast<int>(m_index) + 1);
    }
    template <class T, class Of> Read<T> reading(Of of) const
    {
        return [this, of](const plan::Plan& plan) {
            Shared<T> shared;
            const auto* run = plan.runs.find(chosen().first());
            if (run && m_index < run->extraFittings.size())
                shared.add(of(run->extraFittings[m_index]));
            return shared;
        };
    }
    template <class Change> plan::Edit change(const Change& how) const
    {
        auto list = runNow().extraFittings;
        how(list.at(m_index));
        return plan::setExtraFittings(chosen().ids, std::move(list));
    }
    void addFittingRow()
    {
        const auto kinds = [this] {
            std::vector<Choice> choices;
            for (const auto& fitting : chosen().document.catalogue()->fittings())
                if (fitting.valve == catalogue::ValveKind::NotAValve)
                    choices.push_back({fitting.id, text::partName(fitting.name, fitting.provenance.basis), {}});
            return choices;
        };
        auto* field =
            choiceField(named(ExtraList::tr("Fitting")), kinds(),
                        reading<std::string>([](const auto& extra) { return extra.fittingId; }),
                        [this](const std::string& id) { return change([&](auto& extra) { extra.fittingId = id; }); });
        addRow(ExtraList::tr("Fitting"), field);
        onRefresh(whenPartsChange(chosen().document, [field, kinds] { field->setChoices(kinds()); }));
    }

    std::size_t m_index;
};
} // namespace

ExtraList::ExtraList(Chosen about, QWidget* parent) : RowList(std::move(about), tr("Fittings not drawn"), parent)
{
    addBelow(button(tr("Add fitting"), tr("Add a fitting that is not drawn"), [this] {
        auto list = chosen().plan().runs.find(chosen().first())->extraFittings;
        list.push_back({"union", 1, std::nullopt});
        return plan::setExtraFittings(chosen().ids, std::move(list));
    }));
}

RowList::Keys ExtraList::keysNow() const
{
    Keys keys;
    if (const auto* run = chosen().plan().runs.find(chosen().first()))
        for (std::size_t index = 0; index < run->extraFittings.size(); ++index)
            keys.push_back(std::to_string(index));
    return keys;
}

Section* ExtraList::makeRow(const std::string&, std::size_t index) { return new ExtraSection(chosen(), index, this); }

} // namespace sumpwright::ui::properties
