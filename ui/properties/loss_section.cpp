#include "ui/properties/loss_section.hpp"

#include <QPushButton>

#include "core/plan/edits/run.hpp"
#include "core/plan/edits/vertex.hpp"
#include "ui/text/names.hpp"
#include "ui/text/result_names.hpp"

namespace sumpwright::ui::properties
{

namespace
{
plan::RunSide sideOf(assessment::FittingPlace place)
{
    return place == assessment::FittingPlace::end ? plan::RunSide::to : plan::RunSide::from;
}
} // namespace

std::string LossPlace::key() const
{
    return std::to_string(static_cast<int>(role)) + "/" + std::to_string(static_cast<int>(place)) + "/" +
           std::to_string(vertex);
}

bool LossPlace::isAt(const assessment::FittingLoss& loss) const
{
    return loss.role == role && loss.place == place && loss.vertex == vertex;
}

QString lossText(const text::DisplaySettings& display, const catalogue::Catalogue& catalogue,
                 const assessment::FittingLoss& loss)
{
    const QString k = LossSection::tr("K %1, %2").arg(display.ratioText(loss.k), text::nameOf(loss.basis));
    const QString source = text::sourceTitle(catalogue, loss.source);
    return source.isEmpty() ? k : LossSection::tr("%1: %2", "coefficient, its source").arg(k, source);
}

LossSection::LossSection(Chosen run, LossPlace place, QWidget* parent)
    : Section(std::move(run), {}, parent), m_place(place)
{
    setAccessibleName(label());
    if (m_place.role == assessment::FittingRole::boreChange) {
        addCounted(label());
        return;
    }
    m_k = optionalRatioField(
        tr("K of %1").arg(label()), [this](const plan::Plan& plan) { return sharedOne(overridden(plan)); },
        [this](const std::optional<double>& k) { return override(k); }, tr("from the catalogue"));
    addRow(label(), m_k);
    if (m_place.role == assessment::FittingRole::bend)
        addBendRow();
    addCounted(tr("Counted"))->setFullName(tr("Counted, %1").arg(label()));
    m_reset = button(tr("Back to the catalogue's K"), tr("Back to the catalogue's K: %1").arg(label()),
                     [this] { return override(std::nullopt); });
    addWide(m_reset);
    onRefresh([this](const plan::Plan& plan) { setRowVisible(m_reset, overridden(plan).has_value()); });
}

ResultField* LossSection::addCounted(const QString& caption)
{
    return addResult(
        caption, [this](const auto& results) { return sourceText(results); },
        [this](const assessment::Assessment& results) -> std::optional<assessment::Working> {
            const auto* loss = find(results);
            return loss
                       ? assessment::workingOfFitting(results, chosen().first(), *loss, assessment::RunningState::least)
                       : std::nullopt;
        });
}

void LossSection::refreshResults()
{
    Section::refreshResults();
    const auto results = chosen().document.assessment();
    const auto* loss = results ? find(*results) : nullptr;
    if (m_k && loss && loss->basis != assessment::LossBasis::overridden)
        m_k->setEmptyText(chosen().display().ratioText(loss->k));
}

const assessment::FittingLoss* LossSection::find(const assessment::Assessment& results) const
{
    const auto* run = assessment::find(results.flow->runs, chosen().first());
    if (run)
        for (const auto& loss : run->fittings)
            if (m_place.isAt(loss))
                return &loss;
    return nullptr;
}

QString LossSection::sourceText(const assessment::Assessment& results) const
{
    const auto* loss = find(results);
    return loss ? lossText(chosen().display(), *results.catalogue, *loss) : QString();
}

std::optional<double> LossSection::overridden(const plan::Plan& plan) const
{
    const auto* run = plan.runs.find(chosen().first());
    if (!run)
        return std::nullopt;
    if (m_place.place == assessment::FittingPlace::vertex)
        return m_place.vertex < run->vertices.size() ? run->vertices[m_place.vertex].lossCoefficient : std::nullopt;
    const plan::RunEnd& end = plan::endOf(*run, sideOf(m_place.place));
    if (const auto* port = std::get_if<plan::PortEnd>(&end))
        return port->lossCoefficient;
    if (const auto* tee = std::get_if<plan::TeeEnd>(&end))
        return tee->lossCoefficient;
    return std::nullopt;
}

plan::Edit LossSection::override(std::optional<double> k) const
{
    if (m_place.place == assessment::FittingPlace::vertex)
        return plan::setBendLoss(chosen().first(), m_place.vertex, k);
    return plan::setEndLoss(chosen().first(), sideOf(m_place.place), k);
}

QString LossSection::label() const
{
    const QString what = text::heading(text::nameOf(m_place.role));
    switch (m_place.place) {
    case assessment::FittingPlace::start:
        return tr("%1 at the start").arg(what);
    case assessment::FittingPlace::end:
        return tr("%1 at the end").arg(what);
    case assessment::FittingPlace::vertex:
        return tr("%1 at vertex %2").arg(what).arg(m_place.vertex + 1);
    case assessment::FittingPlace::station:
    case assessment::FittingPlace::alongRun:
        return what;
    }
    return what;
}

void LossSection::addBendRow()
{
    std::vector<Choice> bends{{std::string(), tr("As drawn"), tr("Chosen from the angle the run turns by")}};
    for (const auto& fitting : chosen().document.catalogue()->fittings())
        if (fitting.id.rfind("elbow", 0) == 0)
            bends.push_back({fitting.id, QString::fromStdString(fitting.name), text::nameOf(fitting.provenance.basis)});
    addRow(tr("Made with"),
           choiceField(
               tr("Made with, %1").arg(label()), std::move(bends),
               [this](const plan::Plan& plan) {
                   Shared<std::string> shared;
                   const auto* run = plan.runs.find(chosen().first());
                   if (run && m_place.vertex < run->vertices.size())
                       shared.add(run->vertices[m_place.vertex].bendFittingId);
                   return shared;
               },
               [this](const std::string& id) { return plan::setBendFitting(chosen().first(), m_place.vertex, id); }));
}

} // namespace sumpwright::ui::properties
