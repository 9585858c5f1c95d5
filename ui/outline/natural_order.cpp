#include "ui/outline/natural_order.hpp"

#include <QStringView>

namespace sumpwright::ui::outline
{

namespace
{
// The digits that start here, without leading zeros.
QStringView digitsAt(const QString& text, qsizetype& at)
{
    while (at < text.size() && text[at] == u'0')
        ++at;
    const qsizetype first = at;
    while (at < text.size() && text[at] >= u'0' && text[at] <= u'9')
        ++at;
    return QStringView(text).mid(first, at - first);
}

bool isDigit(QChar c) { return c >= u'0' && c <= u'9'; }
} // namespace

bool naturallyBefore(const QString& a, const QString& b)
{
    qsizetype i = 0;
    qsizetype j = 0;
    while (i < a.size() && j < b.size()) {
        if (isDigit(a[i]) && isDigit(b[j])) {
            const QStringView left = digitsAt(a, i);
            const QStringView right = digitsAt(b, j);
            if (left.size() != right.size())
                return left.size() < right.size();
            if (const int order = left.compare(right); order != 0)
                return order < 0;
            continue;
        }
        const QChar left = a[i++].toCaseFolded();
        const QChar right = b[j++].toCaseFolded();
        if (left != right)
            return left < right;
    }
    return a.size() - i != b.size() - j ? a.size() - i < b.size() - j : a < b;
}

} // namespace sumpwright::ui::outline
