// The ports of one vessel - inlets, overflow or standpipe, side outlets - each with its levels and the run it meets.
#pragma once

#include "ui/properties/row_list.hpp"

namespace sumpwright::ui::properties
{

class PortList : public RowList
{
    Q_OBJECT

public:
    explicit PortList(Chosen chosen, QWidget* parent = nullptr);

protected:
    Keys keysNow() const override;
    Section* makeRow(const std::string& key, std::size_t index) override;

private:
    plan::Edit addPortOf(plan::PortKind kind) const;
};

} // namespace sumpwright::ui::properties
