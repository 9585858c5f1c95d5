// Asking worksheets in tests: ask("pipe-friction", {{"flow", "1000 L/h"}, ...}).
#pragma once

#include <string>
#include <vector>

#include <gtest/gtest.h>

#include "core/worksheets/worksheet.hpp"

namespace sumpwright::tests
{

using Texts = std::vector<worksheets::InputText>;

inline base::Outcome<worksheets::Answer> ask(const std::string& id, const Texts& texts,
                                             const units::NumberStyle& style = units::NumberStyle::point())
{
    const auto sheet = worksheets::findWorksheet(id);
    if (!sheet)
        return sheet.refusal();
    return worksheets::answer(**sheet, texts, *catalogue::Catalogue::builtIn(), style);
}

inline double numberOf(const worksheets::Answer& answer, const std::string& output)
{
    const worksheets::NamedValue* found = answer.output(output);
    EXPECT_NE(found, nullptr) << output;
    return found ? worksheets::numberOf(found->value) : 0.0;
}

inline std::string wordOf(const worksheets::Answer& answer, const std::string& output)
{
    const worksheets::NamedValue* found = answer.output(output);
    EXPECT_NE(found, nullptr) << output;
    return found ? std::get<std::string>(found->value) : std::string();
}

// One good set of inputs for each worksheet.
inline std::vector<std::pair<std::string, Texts>> goodQuestions()
{
    return {
        {"water-properties", {{"temperature", "20 degC"}}},
        {"friction-factor", {{"reynolds", "1e5"}, {"relative_roughness", "1e-4"}}},
        {"pipe-friction", {{"flow", "1000 L/h"}, {"bore", "27.2 mm"}, {"length", "10 m"}}},
        {"fitting-loss", {{"fitting", "ball-valve"}, {"bore", "27.2 mm"}, {"flow", "1000 L/h"}, {"opening", "0.5"}}},
        {"pump-duty", {{"pump", "G4500"}, {"static_head", "1.2 m"}, {"bore", "27.2 mm"}, {"length", "6 m"}}},
        {"pump-energy",
         {{"flow", "2000 L/h"}, {"head", "1.8 m"}, {"wire_to_water", "0.25"}, {"price", "0.31 EUR/kWh"}}},
        {"overflow-level", {{"flow", "2000 L/h"}, {"bore", "47.3 mm"}}},
        {"overflow-capacity", {{"bore", "47.3 mm"}, {"head", "20 mm"}, {"open_fraction", "0.5"}}},
        {"side-outlet", {{"flow", "2000 L/h"}, {"bore", "57 mm"}}},
        {"sloping-drain", {{"bore", "103.6 mm"}, {"fall", "1 %"}, {"flow", "2000 L/h"}}},
        {"tank-emptying", {{"area", "1.2 m2"}, {"hole", "20 mm"}, {"level_from", "0.8 m"}, {"level_to", "0.2 m"}}},
        {"vessel-mass",
         {{"shape", "rectangle"},
          {"length", "2 m"},
          {"width", "1 m"},
          {"medium", "gravel"},
          {"medium_depth", "0.3 m"},
          {"legs", "6"}}},
        {"air-pressure", {{"altitude", "120 m"}}},
        {"pipe-flow", {{"head", "0.3 m"}, {"bore", "27.2 mm"}, {"length", "10 m"}}},
        {"flow-factor", {{"flow_factor", "10 m3/h"}, {"bore", "26.64 mm"}, {"flow", "2000 L/h"}}},
        {"bore-change", {{"upstream_bore", "34 mm"}, {"downstream_bore", "27.2 mm"}}},
        {"sum-k", {{"coefficients", "elbows: 2*0.9; exit: 1"}}},
        {"pipe-content", {{"bore", "27.2 mm"}, {"length", "10 m"}}},
        {"static-lift", {{"from", "0.35 m"}, {"to", "1.2 m"}}},
        {"pump-head", {{"pump", "G4500"}, {"flow", "2000 L/h"}}},
        {"grade-line", {{"start", "0.35 m"}, {"head_gained", "2 m"}, {"losses", "P1: 0.3 m"}}},
        {"flow-balance", {{"coming_in", "P1: 1500 L/h"}, {"going_out", "G1: 700 L/h"}}},
        {"vessel-water",
         {{"bottom", "0 m"},
          {"area", "1.2 m2"},
          {"rim", "1 m"},
          {"lip", "0.8 m"},
          {"flow", "1500 L/h"},
          {"bore", "57 mm"}}},
        {"sump-level",
         {{"running_level", "0.5 m"},
          {"bottom", "0 m"},
          {"area", "0.8 m2"},
          {"rim", "0.7 m"},
          {"drained", "B1: 20 L"},
          {"flooded", "B1: 110 L"}}},
        {"pump-stop",
         {{"running_level", "0.4 m"},
          {"bottom", "0 m"},
          {"area", "1 m2"},
          {"spill_level", "0.6 m"},
          {"coming_down", "T1: 60 L; P1: 12 L"}}},
        {"water-total", {{"vessels", "T1: 1000 L; B1: 110 L"}, {"pipes", "P1: 2 L"}}},
        {"load-total", {{"loads", "T1: 1060 kg on 1.2 m2"}, {"floor_area", "30 m2"}}},
        {"live-load", {{"pressure", "8.7 kPa"}, {"live_load", "3 kPa"}, {"mean_pressure", "2 kPa"}}},
    };
}

} // namespace sumpwright::tests
