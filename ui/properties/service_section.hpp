// ServiceSection: what shuts a bed, a pump or a long run off, whether it comes apart there, and what comes out first.
#pragma once

#include "ui/properties/section.hpp"

namespace sumpwright::ui::properties
{

class ServiceSection final : public Section
{
    Q_OBJECT

public:
    explicit ServiceSection(Chosen chosen, QWidget* parent = nullptr);

private:
    const assessment::Service* find(const assessment::Assessment& results) const;
};

} // namespace sumpwright::ui::properties
