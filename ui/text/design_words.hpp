// Words of the design help: what a proposal does and why, in one sentence each, and what each row of it says.
#pragma once

#include <QString>
#include <QStringList>

#include "core/design/pipe_sizes.hpp"
#include "core/design/pump_choice.hpp"
#include "core/design/valve_setting.hpp"
#include "ui/text/display.hpp"

namespace sumpwright::ui::text
{

// Valves. The reason, then what the person has to know besides: one sentence each.
QString reasonOf(const sumpwright::design::ValveSetting& setting, bool speedTaken, const DisplaySettings& display);
QStringList remarksOn(const sumpwright::design::ValveSetting& setting, const plan::Plan& plan, bool speedTaken,
                      const DisplaySettings& display);
QString aimName(sumpwright::design::Aim aim);
QString valveName(const plan::ValveRef& valve, const plan::Plan& plan); // "V1 on R6"
// "52° shut" of a quarter turn's handle; "2.1 of 5 turns shut" of a gate with so many turns.
QString handleText(const sumpwright::design::ValveOpening& valve, double gateTurns, const DisplaySettings& display);
QString handleBandText(const sumpwright::design::ValveOpening& valve, const DisplaySettings& display); // empty: no band

// Pumps.
QString pumpName(const sumpwright::design::PumpChoice& choice, const plan::Plan& plan);
QString verdictOn(const sumpwright::design::PumpChoice& choice,
                  const DisplaySettings& display); // "does it", "0.42 m short"
QString reasonOf(const sumpwright::design::PumpRanking& ranking, const sumpwright::design::PumpChoice& choice,
                 const plan::Plan& plan, const DisplaySettings& display);

// Pipes.
QString nameOf(sumpwright::design::PipePart part);
QString pipeName(const catalogue::Catalogue& catalogue, const std::string& id);
QString reasonOf(const sumpwright::design::PipeSizing& sizing, const sumpwright::design::PipeChoice& choice,
                 sumpwright::design::Kept kept, const std::string& currency, const DisplaySettings& display);
QStringList remarksOn(const sumpwright::design::PipeSizing& sizing, sumpwright::design::Kept kept,
                      const DisplaySettings& display);
QString sumText(units::Money amount, const std::string& currency, const DisplaySettings& display); // four digits
QString moneyText(units::Money amount, const std::string& currency, const DisplaySettings& display);

} // namespace sumpwright::ui::text
