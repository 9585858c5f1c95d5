// PartRow: one row of the catalogue or one own part as the list of parts shows it, and how rows are found.
#pragma once

#include <string>
#include <vector>

#include <QString>

#include "core/catalogue/catalogue.hpp"
#include "ui/text/display.hpp"

namespace sumpwright::ui::parts
{

enum class PartKind { pipe, fitting, pump };

struct PartRow {
    PartKind kind = PartKind::pipe;
    std::string id;
    QString name;
    QString figure;  // what matters first: bore, K or Kv, greatest flow and head
    QString basis;   // where the value is from
    QString details; // lines: sizes, source, range, note
    bool own = false;
};

enum class PartFilter { all, own, pipes, fittings, pumps };

// Own parts first, then the tables in their order.
std::vector<PartRow> partRows(const catalogue::Catalogue& tables, const text::DisplaySettings& display);
// Every word of the search must stand in the row, in any case of letters.
bool found(const PartRow& row, PartFilter filter, const QString& search);

} // namespace sumpwright::ui::parts
