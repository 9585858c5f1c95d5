// FieldRow: one row of a grid - a short label, fields side by side, perhaps a button - with one line beneath for what
// was refused in any of them. Long rows go over several lines. FieldHeads names the columns once above the first line.
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
    void addCaption(const QString& words, const QString& widest); // as wide as the widest, for columns that line up
    void addField(EntryField* field);                             // takes an equal share of the width
    void addEnd(QWidget* widget); // a button at the right; the column is as wide in every row
    void addGap();                // no field in this column
    void nextLine();

private:
    QHBoxLayout* m_line;
    int m_lines = 1;
    RefusalLine* m_refusal;
};

// Captions over the columns of the lines beneath.
QWidget* fieldHeads(const QStringList& captions, bool withEnd, QWidget* parent);

} // namespace sumpwright::ui::properties
