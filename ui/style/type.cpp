#include "ui/style/type.hpp"

#include <QFontDatabase>
#include <QStringList>

namespace sumpwright::ui::style
{

namespace
{

QFont sized(qreal points, QFont::Weight weight)
{
    QFont font(face());
    font.setPointSizeF(points);
    font.setWeight(weight);
    return font;
}

} // namespace

QString face()
{
    static const QString chosen = [] {
        const QString inter = QStringLiteral("Inter");
        return QFontDatabase::families().contains(inter)
                   ? inter
                   : QFontDatabase::systemFont(QFontDatabase::GeneralFont).family();
    }();
    return chosen;
}

QFont bodyFont() { return sized(bodyPoints, QFont::Normal); }
QFont strongFont() { return sized(bodyPoints, QFont::DemiBold); }
QFont titleFont() { return sized(titlePoints, QFont::DemiBold); }

} // namespace sumpwright::ui::style
