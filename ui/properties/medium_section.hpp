// What fills the chosen grow beds, and how deep.
#pragma once

#include "ui/properties/section.hpp"

namespace sumpwright::ui::properties
{

class MediumSection : public Section
{
    Q_OBJECT

public:
    explicit MediumSection(Chosen chosen, QWidget* parent = nullptr);

private:
    std::vector<Choice> mediumChoices() const;
};

} // namespace sumpwright::ui::properties
