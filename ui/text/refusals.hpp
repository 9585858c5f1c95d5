// Refusals in sentences: where, what was wrong, how to mend it, from the core's ids.
#pragma once

#include <QString>

#include "core/base/outcome.hpp"

namespace sumpwright::ui::text
{

struct RefusalWords {
    QString where; // empty: the place is plain from the context
    QString what;
    QString mend; // may be empty
};

RefusalWords wordsOf(const base::Refusal& refusal);
// "Wall height: '3 kg' is a mass. Enter a length, e.g. 2.4 m." The name stands for a place inside typed text.
QString sentenceOf(const base::Refusal& refusal, const QString& name);

} // namespace sumpwright::ui::text
