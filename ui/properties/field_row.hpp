// FieldRow: one line of a grid - a short label, fields side by side, perhaps a button - with one line beneath for what
// was refused in any of them. FieldHeads names the columns once above the first line.
#pragma once

#include "ui/properties/section.hpp"

QT_BEGIN_NAMESPACE
class QHBoxLayout;
QT_END_NAMESPACE

namespace sumpwright::ui::properties
{

class FieldRow : public Section
{
    Q_OBJECT

public:
    FieldRow(Chosen chosen, const QString& name, QWidget* parent = nullptr);

protected:
    void addLabel(const QString& words);
    void addField(EntryField* field); // takes an equal share of the width
    void addEnd(QWidget* widget);     // a button; the column is as wide in every line
    void addGap();                    // no field in this column

private:
    QHBoxLayout* m_line;
    RefusalLine* m_refusal;
};

// Captions over the columns of the lines beneath.
QWidget* fieldHeads(const QStringList& captions, bool withEnd, QWidget* parent);

} // namespace sumpwright::ui::properties
