// The parts of the site's form: whose plan it is, the conditions it is designed for, the sketch under the plan, prices,
// clearances, and totals.
#pragma once

#include "ui/properties/section.hpp"

namespace sumpwright::ui::properties
{

class SiteNamesSection : public Section
{
    Q_OBJECT

public:
    explicit SiteNamesSection(Chosen chosen, QWidget* parent = nullptr);
};

class SiteConditionsSection : public Section
{
    Q_OBJECT

public:
    explicit SiteConditionsSection(Chosen chosen, QWidget* parent = nullptr);

private:
    void addYearsWaterRows();
    void addPipeConditionRow();
};

class SitePricesSection : public Section
{
    Q_OBJECT

public:
    explicit SitePricesSection(Chosen chosen, QWidget* parent = nullptr);
};

class ClearancesSection : public Section
{
    Q_OBJECT

public:
    explicit ClearancesSection(Chosen chosen, QWidget* parent = nullptr);

private:
    void addClearance(const QString& label, units::Length plan::Clearances::*which);
};

// The picture under the plan, while there is one.
class SiteSketchSection : public Section
{
    Q_OBJECT

public:
    explicit SiteSketchSection(Chosen chosen, QWidget* parent = nullptr);
};

class TotalsSection : public Section
{
    Q_OBJECT

public:
    explicit TotalsSection(Chosen chosen, QWidget* parent = nullptr);
};

} // namespace sumpwright::ui::properties
