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
        {"vessel-mass",
         {{"shape", "rectangle"},
          {"length", "2 m"},
          {"width", "1 m"},
          {"medium", "gravel"},
          {"medium_depth", "0.3 m"}}},
    };
}

} // namespace sumpwright::tests
