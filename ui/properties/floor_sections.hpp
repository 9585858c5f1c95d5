// The parts of the floor's form: its sizes and outline by number, its level and fall, and what a floor of one use is
// allowed to carry, for comparison only.
#pragma once

#include "ui/properties/row_list.hpp"

namespace sumpwright::ui::properties
{

// Length and width; on an empty plan the first entry draws a floor.
class FloorSizeSection : public Section
{
    Q_OBJECT

public:
    explicit FloorSizeSection(Chosen chosen, QWidget* parent = nullptr);

private:
    void addSizeRow(const QString& label, units::Length plan::Point::*along);
};

class FloorCornersSection : public RowList
{
    Q_OBJECT

public:
    explicit FloorCornersSection(Chosen chosen, QWidget* parent = nullptr);

protected:
    Keys keysNow() const override;
    Section* makeRow(const std::string& key, std::size_t index) override;
};

class FloorLevelsSection : public Section
{
    Q_OBJECT

public:
    explicit FloorLevelsSection(Chosen chosen, QWidget* parent = nullptr);

private:
    void addFallRows();
    void addDrainRow(const QString& label, units::Length plan::Point::*which);
};

class FloorLoadSection : public Section
{
    Q_OBJECT

public:
    explicit FloorLoadSection(Chosen chosen, QWidget* parent = nullptr);

private:
    void addUseRow();
    QString totalText(const assessment::Assessment& results, assessment::LoadCase loadCase) const;
    QString comparisonText(const assessment::Assessment& results) const;
};

} // namespace sumpwright::ui::properties
