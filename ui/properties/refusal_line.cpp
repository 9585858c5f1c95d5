#include "ui/properties/refusal_line.hpp"

#include <QAccessible>

#include "ui/text/refusals.hpp"

namespace sumpwright::ui::properties
{

RefusalLine::RefusalLine(QWidget* parent) : QuietLabel(Tone::fault, parent) { setVisible(false); }

void RefusalLine::show(const base::Refusal& refusal, const QString& name, const QString& stays)
{
    QString words = text::sentenceOf(refusal, name);
    if (!stays.isEmpty())
        words += QLatin1Char(' ') + tr("It stays %1.").arg(stays);
    setText(words);
    setVisible(true);
    QAccessibleEvent alert(this, QAccessible::Alert);
    QAccessible::updateAccessibility(&alert);
}

void RefusalLine::clear()
{
    setVisible(false);
    setText({});
}

QString RefusalLine::shownText() const { return text(); }

} // namespace sumpwright::ui::properties
