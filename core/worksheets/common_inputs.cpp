#include "core/worksheets/common_inputs.hpp"

namespace sumpwright::worksheets
{
namespace
{

InputSpec quantity(std::string name, std::string meaning, units::KindId kind, std::string least, std::string most)
{
    InputSpec spec;
    spec.name = std::move(name);
    spec.meaning = std::move(meaning);
    spec.kind = kind;
    spec.least = std::move(least);
    spec.most = std::move(most);
    return spec;
}

} // namespace

InputSpec flowInput()
{
    InputSpec spec = quantity("flow", "flow through the pipe", units::KindId::flow, "0 L/h", "1 m3/s");
    spec.leastExcluded = true;
    return spec;
}

InputSpec boreInput() { return quantity("bore", "inside diameter of the pipe", units::KindId::length, "1 mm", "1 m"); }

InputSpec lengthInput() { return quantity("length", "length of the pipe", units::KindId::length, "0 m", "10000 m"); }

InputSpec roughnessInput()
{
    InputSpec spec = quantity("roughness", "roughness of the pipe wall", units::KindId::length, "0 mm", "10 mm");
    spec.ifAbsent = "0.0015 mm";
    return spec;
}

InputSpec waterTemperatureInput()
{
    InputSpec spec =
        quantity("temperature", "temperature of the water", units::KindId::temperature, "0 degC", "40 degC");
    spec.ifAbsent = "20 degC";
    return spec;
}

InputSpec sumKInput()
{
    InputSpec spec =
        quantity("sum_k", "sum of the loss coefficients of the fittings", units::KindId::ratio, "0", "10000");
    spec.sort = InputSort::Ratio;
    spec.ifAbsent = "0";
    return spec;
}

Note transitionNote()
{
    return {"transition-uncertain",
            "The flow is between laminar and turbulent: the friction factor is an estimate, it may jump."};
}

Note roughNote()
{
    return {"rough-beyond-chart", "The wall is rougher than the published charts (5 % of the bore): an estimate."};
}

} // namespace sumpwright::worksheets
