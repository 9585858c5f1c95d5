#include "core/units/parse.hpp"

#include "core/units/measures.hpp"
#include "core/units/parse_si.hpp"

namespace sumpwright::units
{

template <class Kind> base::Outcome<Kind> parse(std::string_view text, const NumberStyle& style, const Reading& reading)
{
    const base::Outcome<double> si = detail::parseSi(kindId<Kind>, text, style, reading);
    if (!si)
        return si.refusal();
    return fromSi<Kind>(*si);
}

#define SUMPWRIGHT_PARSE(Type, id)                                                                                     \
    template base::Outcome<Type> parse<Type>(std::string_view, const NumberStyle&, const Reading&);
SUMPWRIGHT_KINDS(SUMPWRIGHT_PARSE)
#undef SUMPWRIGHT_PARSE

base::Outcome<double> parseRatio(std::string_view text, const NumberStyle& style)
{
    return detail::parseSi(KindId::ratio, text, style, {});
}

} // namespace sumpwright::units
