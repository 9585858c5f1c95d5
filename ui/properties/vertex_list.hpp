// The vertices of one run: place, level of the centre line and, for gravity runs, of the invert. Ends that are attached
// follow what they are attached to and are not entered here.
#pragma once

#include "ui/properties/row_list.hpp"

namespace sumpwright::ui::properties
{

class VertexList : public RowList
{
    Q_OBJECT

public:
    explicit VertexList(Chosen chosen, QWidget* parent = nullptr);

protected:
    Keys keysNow() const override;
    Section* makeRow(const std::string& key, std::size_t index) override;

private:
    const plan::Run* run() const { return chosen().plan().runs.find(chosen().first()); }
};

} // namespace sumpwright::ui::properties
