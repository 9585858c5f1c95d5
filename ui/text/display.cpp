#include "ui/text/display.hpp"

namespace sumpwright::ui::text
{

QString absentText() { return QStringLiteral("\u2013"); }

QString unbroken(QString words)
{
    static const QString gallon = QStringLiteral("US gal");
    for (qsizetype i = 1; i + 1 < words.size(); ++i)
        if (words[i] == u' ' && words[i - 1].isDigit() && (words[i + 1].isLetter() || words[i + 1] == u'%'))
            words[i] = QChar::Nbsp;
    return words.replace(gallon, QStringLiteral("US\u00a0gal"));
}

QString breakable(QString unbrokenWords) { return unbrokenWords.replace(QChar::Nbsp, u' '); }

QString DisplaySettings::ratioText(double ratio, int significantDigits) const
{
    return QString::fromStdString(units::formatRatio(ratio, numbers, significantDigits));
}

QString DisplaySettings::percentText(double ratio, int significantDigits) const
{
    return QString::fromStdString(units::formatPercent(ratio, numbers, significantDigits));
}

namespace
{
// "1.700 %" to "1.7 %".
QString withoutTrailingZeros(QString text, const std::string& decimalMark)
{
    const qsizetype mark = text.indexOf(QString::fromStdString(decimalMark));
    if (mark < 0)
        return text;
    qsizetype end = mark + 1;
    while (end < text.size() && text[end].isDigit())
        ++end;
    qsizetype keep = end;
    while (text[keep - 1] == u'0')
        --keep;
    return text.remove(keep - 1 == mark ? mark : keep, end - (keep - 1 == mark ? mark : keep));
}
} // namespace

QString DisplaySettings::ratioEntryText(double ratio) const
{
    return withoutTrailingZeros(ratioText(ratio, 6), numbers.decimalMark);
}

QString DisplaySettings::percentEntryText(double ratio) const
{
    return withoutTrailingZeros(percentText(ratio, 6), numbers.decimalMark);
}

base::Outcome<double> DisplaySettings::readRatio(const QString& text) const
{
    return units::parseRatio(text.toStdString(), numbers);
}

} // namespace sumpwright::ui::text
