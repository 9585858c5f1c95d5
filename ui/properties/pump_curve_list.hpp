// A pump's own curve, point by point; for a pump from the catalogue its points are shown and cannot be changed here.
#pragma once

#include "ui/properties/row_list.hpp"

namespace sumpwright::ui::properties
{

class PumpCurveList : public RowList
{
    Q_OBJECT

public:
    explicit PumpCurveList(Chosen chosen, QWidget* parent = nullptr);

protected:
    Keys keysNow() const override;
    Section* makeRow(const std::string& key, std::size_t index) override;

private:
    QString catalogueCurve(const plan::Plan& plan) const;
    plan::Edit addPoint() const;
    void addRatings();
};

} // namespace sumpwright::ui::properties
