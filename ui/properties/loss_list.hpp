// Every entry, exit, bend, tee and change of bore the water of one run meets, with its K, where that comes from, and an
// entry that overrides it; emptied, the catalogue's value holds again.
#pragma once

#include "ui/properties/row_list.hpp"

namespace sumpwright::ui::properties
{

class LossList : public RowList
{
    Q_OBJECT

public:
    explicit LossList(Chosen chosen, QWidget* parent = nullptr);

protected:
    Keys keysNow() const override;
    Section* makeRow(const std::string& key, std::size_t index) override;
};

} // namespace sumpwright::ui::properties
