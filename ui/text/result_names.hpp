// Names of what an assessment says: states, load cases, what holds the water, where a coefficient comes from, and the
// reason why there is no number.
#pragma once

#include <QString>

#include "core/assessment/assessment.hpp"
#include "ui/text/display.hpp"

namespace sumpwright::ui::text
{

QString nameOf(assessment::WaterState state);
QString nameOf(assessment::RunningState state);
QString nameOf(assessment::YearEnd end);
QString nameOf(assessment::LoadCase loadCase);
QString nameOf(assessment::HeldBy heldBy);
QString nameOf(assessment::Trust trust);
QString nameOf(assessment::FlowRegime regime);
QString nameOf(assessment::FittingRole role);
QString nameOf(assessment::LossBasis basis);
QString nameOf(assessment::Severity severity);

QString whyMissing(assessment::Status status, const assessment::Reason& reason); // "not computed: altitude missing"
template <class T> QString whyMissing(const assessment::Stage<T>& stage)
{
    return stage.ok() ? QString() : whyMissing(stage.status(), stage.reason());
}
template <class T> QString stageText(const DisplaySettings& display, const assessment::Stage<T>& stage)
{
    return stage.ok() ? display.quantityText(*stage) : whyMissing(stage);
}
// A source's title from the catalogue; the key itself where it is not listed; common practice said in words.
QString sourceTitle(const catalogue::Catalogue& catalogue, const std::string& key);

} // namespace sumpwright::ui::text
