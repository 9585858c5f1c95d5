// Fittings of one run that are not drawn - unions, strainers, barbs - with their number and K.
#pragma once

#include "ui/properties/row_list.hpp"

namespace sumpwright::ui::properties
{

class ExtraList : public RowList
{
    Q_OBJECT

public:
    explicit ExtraList(Chosen chosen, QWidget* parent = nullptr);

protected:
    Keys keysNow() const override;
    Section* makeRow(const std::string& key, std::size_t index) override;
};

} // namespace sumpwright::ui::properties
