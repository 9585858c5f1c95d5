#include "ui/properties/loss_list.hpp"

#include "ui/properties/loss_section.hpp"

namespace sumpwright::ui::properties
{

namespace
{
// Valves and fittings that are not drawn have lists of their own.
bool listedHere(const assessment::FittingLoss& loss)
{
    return loss.place == assessment::FittingPlace::start || loss.place == assessment::FittingPlace::end ||
           loss.place == assessment::FittingPlace::vertex;
}

std::vector<LossPlace> placesNow(const Chosen& chosen)
{
    std::vector<LossPlace> places;
    const auto results = chosen.document.assessment();
    const auto* run = results ? assessment::find(results->flow->runs, chosen.first()) : nullptr;
    if (run)
        for (const auto& loss : run->fittings)
            if (listedHere(loss))
                places.push_back({loss.role, loss.place, loss.vertex});
    return places;
}
} // namespace

LossList::LossList(Chosen about, QWidget* parent) : RowList(std::move(about), tr("Bends, tees, entry and exit"), parent)
{
    addHint(tr("Each K counts the velocity head in this run's bore. An empty K takes the catalogue's."));
    addResult(
        tr("Sum of K"),
        [this](const assessment::Assessment& results) {
            const auto* run = assessment::find(results.flow->runs, chosen().first());
            return run ? chosen().display().ratioText(run->sumK) : QString();
        },
        [this](const assessment::Assessment& results) { return assessment::workingOfSumK(results, chosen().first()); });
}

RowList::Keys LossList::keysNow() const
{
    Keys keys;
    for (const auto& place : placesNow(chosen()))
        keys.push_back(place.key());
    return keys;
}

Section* LossList::makeRow(const std::string&, std::size_t index)
{
    return new LossSection(chosen(), placesNow(chosen()).at(index), this);
}

} // namespace sumpwright::ui::properties
