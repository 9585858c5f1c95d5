// The valves of one run, each with its opening, and a way to add one.
#pragma once

#include "ui/properties/row_list.hpp"

namespace sumpwright::ui::properties
{

class ValveList : public RowList
{
    Q_OBJECT

public:
    explicit ValveList(Chosen chosen, QWidget* parent = nullptr);

protected:
    Keys keysNow() const override;
    Section* makeRow(const std::string& key, std::size_t index) override;
};

} // namespace sumpwright::ui::properties
