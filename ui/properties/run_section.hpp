// What runs are made of and how they lie: pipe, service, length, and the steady fall of gravity runs.
#pragma once

#include "ui/properties/section.hpp"

namespace sumpwright::ui::properties
{

class RunSection : public Section
{
    Q_OBJECT

public:
    explicit RunSection(Chosen chosen, QWidget* parent = nullptr);

private:
    void addPipeRow();
    void addServiceRow();
    void addFallRow();
};

} // namespace sumpwright::ui::properties
