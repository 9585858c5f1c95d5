// RefusalLine: what was refused, beneath the field that asked for it, and told to assistive tools when it appears.
#pragma once

#include "core/base/outcome.hpp"
#include "ui/properties/quiet_label.hpp"

namespace sumpwright::ui::properties
{

class RefusalLine : public QuietLabel
{
    Q_OBJECT

public:
    explicit RefusalLine(QWidget* parent);

    // Name: of the field. `stays`: the value that still holds; empty: nothing to say about it.
    void show(const base::Refusal& refusal, const QString& name, const QString& stays);
    void clear();
    QString shownText() const; // empty: nothing refused
};

} // namespace sumpwright::ui::properties
