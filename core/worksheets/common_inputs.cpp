#include "core/worksheets/common_inputs.hpp"

namespace sumpwright::worksheets
{
InputSpec quantityInput(std::string name, std::string meaning, units::KindId kind, std::string least, std::string most)
{
    InputSpec spec;
    spec.name = std::move(name);
    spec.meaning = std::move(meaning);
    spec.kind = kind;
    spec.least = std::move(least);
    spec.most = std::move(most);
    return spec;
}

InputSpec listInput(std::string name, std::string meaning, units::KindId kind, std::string least, std::string most)
{
    InputSpec spec = quantityInput(std::move(name), std::move(meaning), kind, std::move(least), std::move(most));
    spec.sort = InputSort::List;
    return spec;
}

InputSpec optionally(InputSpec spec)
{
    spec.required = false;
    return spec;
}

InputSpec moreThan(InputSpec spec)
{
    spec.leastExcluded = true;
    return spec;
}

InputSpec levelInput(std::string name, std::string meaning)
{
    return quantityInput(std::move(name), std::move(meaning), units::KindId::elevation, "-500 m", "9000 m");
}

InputSpec areaInput(std::string name, std::string meaning)
{
    return quantityInput(std::move(name), std::move(meaning), units::KindId::area, "1 cm2", "1000000 m2");
}

InputSpec volumesInput(std::string name, std::string meaning)
{
    return listInput(std::move(name), std::move(meaning), units::KindId::volume, "0 L", "1000000 m3");
}

InputSpec flowInput()
{
    InputSpec spec = quantityInput("flow", "flow through the pipe", units::KindId::flow, "0 L/h", "1 m3/s");
    spec.leastExcluded = true;
    return spec;
}

InputSpec boreInput()
{
    return quantityInput("bore", "inside diameter of the pipe", units::KindId::length, "1 mm", "1 m");
}

InputSpec lengthInput()
{
    return quantityInput("length", "length of the pipe", units::KindId::length, "0 m", "10000 m");
}

InputSpec roughnessInput()
{
    InputSpec spec = quantityInput("roughness", "roughness of the pipe wall", units::KindId::length, "0 mm", "10 mm");
    spec.ifAbsent = "0.0015 mm";
    return spec;
}

InputSpec corrugatedFactorInput()
{
    InputSpec spec = quantityInput("corrugated_factor",
                                   "least friction factor of corrugated hose, usually 0.06 to 0.10; 0 for a plain wall",
                                   units::KindId::ratio, "0", "1");
    spec.sort = InputSort::Ratio;
    spec.ifAbsent = "0";
    return spec;
}

InputSpec waterTemperatureInput()
{
    InputSpec spec =
        quantityInput("temperature", "temperature of the water", units::KindId::temperature, "0 degC", "40 degC");
    spec.ifAbsent = "20 degC";
    return spec;
}

InputSpec openingHeadInput()
{
    InputSpec spec = quantityInput("opening_head", "head that springs of non-return valves hold shut with",
                                   units::KindId::head, "0 m", "100 m");
    spec.ifAbsent = "0 m";
    return spec;
}

InputSpec sumKInput()
{
    InputSpec spec =
        quantityInput("sum_k", "sum of the loss coefficients of the fittings", units::KindId::ratio, "0", "10000");
    spec.sort = InputSort::Ratio;
    spec.ifAbsent = "0";
    return spec;
}

Note corrugatedNote()
{
    return {"corrugated-estimate",
            "Corrugated hose: the friction factor depends on its shape, 0.06 to 0.10; an estimate."};
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
