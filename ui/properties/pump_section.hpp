// Which pump it is and how it is set: model, speed, running or not, vessel, outlet level, least depth.
#pragma once

#include "ui/properties/section.hpp"

namespace sumpwright::ui::properties
{

class PumpSection : public Section
{
    Q_OBJECT

public:
    explicit PumpSection(Chosen chosen, QWidget* parent = nullptr);

private:
    void addModelRow();
    void addVesselRow();
    void addSettingRows();
    void addLevelRows();
};

} // namespace sumpwright::ui::properties
