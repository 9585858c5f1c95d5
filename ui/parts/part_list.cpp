#include "ui/parts/part_list.hpp"

#include <algorithm>

#include <QCoreApplication>

#include "ui/text/names.hpp"
#include "ui/text/result_names.hpp"

namespace sumpwright::ui::parts
{

namespace
{

class Parts
{
    Q_DECLARE_TR_FUNCTIONS(Parts)
};

QString provenanceLines(const catalogue::Catalogue& tables, const catalogue::Provenance& provenance)
{
    QStringList lines{
        Parts::tr("Source: %1; %2").arg(text::sourceTitle(tables, provenance.source), text::nameOf(provenance.basis))};
    if (provenance.basis == catalogue::Basis::Own)
        lines = QStringList{Parts::tr("Source: your own part, not checked against anything printed")};
    if (!provenance.range.empty())
        lines << Parts::tr("Holds for: %1").arg(QString::fromStdString(provenance.range));
    if (!provenance.note.empty())
        lines << (provenance.basis == catalogue::Basis::Own ? Parts::tr("Numbers from: %1") : Parts::tr("Note: %1"))
                     .arg(QString::fromStdString(provenance.note));
    return lines.join(u'\n');
}

// Always in the unit of small sizes, so that sizes read down the list.
QString sizeText(const text::DisplaySettings& display, units::Length size)
{
    return display.entryText(size, text::inSmallSizes);
}

template <class Row> PartRow begun(PartKind kind, const Row& row)
{
    PartRow part;
    part.kind = kind;
    part.id = row.id;
    part.own = row.provenance.basis == catalogue::Basis::Own;
    part.name = text::partName(row.name, row.provenance.basis);
    part.basis = text::nameOf(row.provenance.basis);
    return part;
}

PartRow rowOf(const catalogue::Pipe& pipe, const catalogue::Catalogue& tables, const text::DisplaySettings& display)
{
    PartRow part = begun(PartKind::pipe, pipe);
    part.figure = Parts::tr("bore %1").arg(sizeText(display, pipe.bore));
    QStringList lines{
        Parts::tr("Outside %1, wall %2, bore %3")
            .arg(sizeText(display, pipe.outsideDiameter), sizeText(display, pipe.wall), sizeText(display, pipe.bore))};
    if (!part.own)
        lines << QStringLiteral("%1; %2").arg(QString::fromStdString(pipe.standard),
                                              QString::fromStdString(pipe.material));
    lines << (pipe.gravityOnly ? Parts::tr("Holds no pressure: gravity runs only")
                               : Parts::tr("Pressure class: %1").arg(QString::fromStdString(pipe.pressureClass)));
    if (pipe.corrugatedFactor)
        lines << Parts::tr("Corrugated inside: friction factor %1, an estimate")
                     .arg(display.ratioText(*pipe.corrugatedFactor));
    part.details = lines.join(u'\n') + u'\n' + provenanceLines(tables, pipe.provenance);
    return part;
}

PartRow rowOf(const catalogue::Fitting& fitting, const catalogue::Catalogue& tables,
              const text::DisplaySettings& display)
{
    PartRow part = begun(PartKind::fitting, fitting);
    part.figure = fitting.flowFactor ? Parts::tr("Kv %1").arg(display.quantityText(*fitting.flowFactor))
                                     : Parts::tr("K %1").arg(display.ratioText(fitting.defaultK));
    QStringList lines{fitting.flowFactor
                          ? Parts::tr("Passes %1 fully open at 1 bar; K follows from the bore")
                                .arg(display.quantityText(*fitting.flowFactor))
                          : Parts::tr("K %1 on the velocity in the bore").arg(display.ratioText(fitting.defaultK))};
    if (fitting.valve == catalogue::ValveKind::Check)
        lines << Parts::tr("Lets water through one way only");
    if (fitting.cracking)
        lines << Parts::tr("Opens at a head of %1").arg(display.quantityText(*fitting.cracking));
    if (!fitting.openings.empty())
        lines << Parts::tr("Partly closed: by the table of %1").arg(text::sourceTitle(tables, fitting.openingSource));
    part.details = lines.join(u'\n') + u'\n' + provenanceLines(tables, fitting.provenance);
    return part;
}

PartRow rowOf(const catalogue::Pump& pump, const catalogue::Catalogue& tables, const text::DisplaySettings& display)
{
    PartRow part = begun(PartKind::pump, pump);
    part.figure = Parts::tr("%1, %2").arg(display.quantityText(pump.points.back().flow),
                                          display.quantityText(pump.points.front().head));
    QStringList points;
    for (const auto& point : pump.points)
        points << Parts::tr("%1 at %2").arg(display.quantityText(point.flow), display.quantityText(point.head));
    QStringList lines{points.join(QStringLiteral("; "))};
    if (pump.twoNumbers)
        lines << Parts::tr("Only the two numbers of its box: the curve between them is an estimate");
    if (!pump.power.empty())
        lines << Parts::tr("Draws %1").arg(display.quantityText(pump.power.front().input));
    part.details = lines.join(u'\n') + u'\n' + provenanceLines(tables, pump.provenance);
    return part;
}

bool kindFits(const PartRow& row, PartFilter filter)
{
    switch (filter) {
    case PartFilter::all:
        return true;
    case PartFilter::own:
        return row.own;
    case PartFilter::pipes:
        return row.kind == PartKind::pipe;
    case PartFilter::fittings:
        return row.kind == PartKind::fitting;
    case PartFilter::pumps:
        return row.kind == PartKind::pump;
    }
    return true;
}

} // namespace

std::vector<PartRow> partRows(const catalogue::Catalogue& tables, const text::DisplaySettings& display)
{
    std::vector<PartRow> rows;
    const auto add = [&](const auto& entries) {
        for (const auto& entry : entries)
            rows.push_back(rowOf(entry, tables, display));
    };
    add(tables.pipes());
    add(tables.fittings());
    add(tables.pumps());
    std::stable_partition(rows.begin(), rows.end(), [](const PartRow& row) { return row.own; });
    return rows;
}

bool found(const PartRow& row, PartFilter filter, const QString& search)
{
    if (!kindFits(row, filter))
        return false;
    const QStringList words = search.split(u' ', Qt::SkipEmptyParts);
    return std::all_of(words.begin(), words.end(), [&row](const QString& word) {
        return row.name.contains(word, Qt::CaseInsensitive) || row.figure.contains(word, Qt::CaseInsensitive) ||
               row.details.contains(word, Qt::CaseInsensitive);
    });
}

} // namespace sumpwright::ui::parts
