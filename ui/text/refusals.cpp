#include "ui/text/refusals.hpp"

#include <QCoreApplication>
#include <QRegularExpression>

#include "ui/text/names.hpp"
#include "ui/text/units_on_screen.hpp"

namespace sumpwright::ui::text
{

namespace
{
class Refusals
{
    Q_DECLARE_TR_FUNCTIONS(Refusals)
};

// A sentence that quotes a very long entry keeps its beginning and its end, so that it can be read.
QString readable(const QString& sentence)
{
    constexpr qsizetype longest = 240;
    if (sentence.size() <= longest)
        return sentence;
    return sentence.left(longest / 2) + QStringLiteral(" … ") + sentence.right(longest / 2);
}

// Sentences of the core are looked up whole; one that carries names or numbers and has no translation stays English.
QString translated(const std::string& sentence)
{
    return sentence.empty() ? QString()
                            : readable(unitsOnScreen(QCoreApplication::translate("Refusals", sentence.c_str())));
}

QString placeWords(const std::string& place)
{
    const QString words = QString::fromStdString(place);
    static const QRegularExpression character(QStringLiteral("^character (\\d+)$"));
    const auto match = character.match(words);
    return match.hasMatch() ? Refusals::tr("at character %1").arg(match.captured(1)) : readable(words);
}

QString closed(QString sentence) // with a full stop
{
    if (!sentence.isEmpty() && !sentence.endsWith(u'.') && !sentence.endsWith(u'?'))
        sentence += u'.';
    return sentence;
}
} // namespace

RefusalWords wordsOf(const base::Refusal& refusal)
{
    return {placeWords(refusal.place), translated(refusal.what), translated(refusal.accepts)};
}

QString sentenceOf(const base::Refusal& refusal, const QString& name)
{
    const RefusalWords words = wordsOf(refusal);
    const bool insideText = refusal.place.rfind("character ", 0) == 0;
    const QString where = words.where.isEmpty() || insideText ? name : words.where;
    QString sentence =
        where.isEmpty() ? heading(words.what) : Refusals::tr("%1: %2", "place, what is wrong").arg(where, words.what);
    if (insideText)
        sentence += QLatin1Char(' ') + Refusals::tr("(%1)").arg(words.where);
    sentence = closed(sentence);
    if (!words.mend.isEmpty())
        sentence += QLatin1Char(' ') + closed(Refusals::tr("Accepted: %1").arg(words.mend));
    return sentence;
}

} // namespace sumpwright::ui::text
