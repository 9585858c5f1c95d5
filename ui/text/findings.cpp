#include "ui/text/findings.hpp"

#include <algorithm>
#include <cmath>
#include <type_traits>

#include <QCoreApplication>

#include "core/report/sentences.hpp"
#include "ui/text/names.hpp"
#include "ui/text/result_names.hpp"
#include "ui/text/subject.hpp"

namespace sumpwright::ui::text
{

namespace
{
class Words
{
    Q_DECLARE_TR_FUNCTIONS(FindingWords)
};

const report::Sentence* sentenceOf(std::span<const report::Sentence> sentences, const std::string& id)
{
    const auto at = std::find_if(sentences.begin(), sentences.end(), [&](const auto& each) { return each.id == id; });
    return at == sentences.end() ? nullptr : &*at;
}

QString translated(std::string_view sentence)
{
    return sentence.empty() ? QString() : QCoreApplication::translate("FindingWords", std::string(sentence).c_str());
}

QString plainText(const assessment::Amount& amount, const DisplaySettings& display)
{
    const double* ratio = std::get_if<double>(&amount);
    return ratio ? display.ratioText(*ratio, 2) : amountText(amount, display);
}

// Two lengths of one sentence are told in one unit: that of the longer.
QString comparedText(const assessment::Amount& amount, const assessment::Finding& finding,
                     const DisplaySettings& display)
{
    const auto* length = std::get_if<units::Length>(&amount);
    const auto* value = std::get_if<units::Length>(&finding.value);
    const auto* limit = std::get_if<units::Length>(&finding.limit);
    if (!length || !value || !limit)
        return amountText(amount, display);
    const bool us = display.system == units::UnitSystem::us;
    const double longer = std::max(std::abs(units::inMetres(*value)), std::abs(units::inMetres(*limit)));
    if (us)
        return display.quantityText(*length, {.unit = longer < 0.3048 ? "in" : "ft"});
    return display.quantityText(*length, {.unit = longer < 0.9995 ? "mm" : "m"});
}

QString wordFor(const QString& key, const assessment::Finding& finding, const plan::Plan& plan,
                const DisplaySettings& display)
{
    if (key == QLatin1String("value"))
        return comparedText(finding.value, finding, display);
    if (key == QLatin1String("limit"))
        return comparedText(finding.limit, finding, display);
    if (key == QLatin1String("beside"))
        return amountText(finding.beside, display);
    if (key == QLatin1String("plain value"))
        return plainText(finding.value, display);
    if (key == QLatin1String("plain limit"))
        return plainText(finding.limit, display);
    if (key == QLatin1String("subject"))
        return QString::fromStdString(finding.subject);
    if (key == QLatin1String("all"))
        return allSubjects(plan, finding.elements);
    if (key.contains(u'|'))
        return key.section(u'|', finding.alike > 1 ? 1 : 0, finding.alike > 1 ? 1 : 0);
    if (key == QLatin1String("1") && finding.alike > 1)
        return allSubjects(
            plan, {finding.elements.begin(), finding.elements.begin() + static_cast<std::ptrdiff_t>(finding.alike)});
    const std::size_t index = key == QLatin1String("2") ? 1 : 0;
    return index < finding.elements.size() ? subject(plan, finding.elements[index]) : subjects(plan, {});
}

QString filled(const QString& pattern, const assessment::Finding& finding, const plan::Plan& plan,
               const DisplaySettings& display)
{
    QString text;
    qsizetype from = 0;
    for (qsizetype open = pattern.indexOf(u'{'); open >= 0; open = pattern.indexOf(u'{', from)) {
        const qsizetype close = pattern.indexOf(u'}', open);
        if (close < 0)
            break;
        text += pattern.mid(from, open - from);
        text += wordFor(pattern.mid(open + 1, close - open - 1), finding, plan, display);
        from = close + 1;
    }
    return heading(text + pattern.mid(from));
}
} // namespace

FindingWords findingWords(const assessment::Finding& finding, const assessment::Assessment& results,
                          const DisplaySettings& display)
{
    FindingWords words;
    if (const auto* sentence = sentenceOf(report::findingSentences(), finding.id)) {
        const bool bare = std::holds_alternative<std::monostate>(finding.value) && !sentence->withoutValue.empty();
        words.message =
            filled(translated(bare ? sentence->withoutValue : sentence->text), finding, results.plan, display);
    } else {
        words.message = QString::fromStdString(finding.id);
    }
    if (const auto* advice = sentenceOf(report::adviceSentences(), finding.mend))
        words.advice = filled(translated(advice->text), finding, results.plan, display);
    words.source = finding.source.empty() ? sourceTitle(*results.catalogue, "common-practice")
                                          : sourceTitle(*results.catalogue, finding.source);
    return words;
}

QString amountText(const assessment::Amount& amount, const DisplaySettings& display)
{
    return std::visit(
        [&display](const auto& value) -> QString {
            using Kind = std::decay_t<decltype(value)>;
            if constexpr (std::is_same_v<Kind, std::monostate>)
                return {};
            else if constexpr (std::is_same_v<Kind, double>)
                return value <= 1.0 ? display.percentText(value, 2) : display.ratioText(value, 2);
            else if constexpr (std::is_same_v<Kind, units::Length>)
                return display.quantityText(value, {.smallInMillimetres = true});
            else
                return display.quantityText(value);
        },
        amount);
}

} // namespace sumpwright::ui::text
