#include "ui/parts/parts_panel.hpp"

#include <QAccessible>
#include <QComboBox>
#include <QFileDialog>
#include <QFileInfo>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QScrollArea>
#include <QSplitter>
#include <QTreeView>
#include <QVBoxLayout>

#include "core/plan/edits/own_parts.hpp"
#include "core/storage/csv.hpp"
#include "core/storage/file.hpp"
#include "core/storage/kept_parts.hpp"
#include "ui/document/document.hpp"
#include "ui/document/view_settings.hpp"
#include "ui/parts/import_preview.hpp"
#include "ui/parts/part_model.hpp"
#include "ui/properties/commit.hpp"
#include "ui/style/file_box.hpp"
#include "ui/style/type.hpp"
#include "ui/text/refusals.hpp"

namespace sumpwright::ui::parts
{

PartsPanel::PartsPanel(document::Document& document, OwnPartForm::Display display, QString kept, QWidget* parent)
    : QWidget(parent), m_document(document), m_display(std::move(display)), m_kept(std::move(kept)),
      m_model(new PartModel(this)), m_search(new QLineEdit(this)), m_filter(new QComboBox(this)),
      m_list(new QTreeView(this)), m_details(new QLabel(this)), m_form(new OwnPartForm(document, m_display, this)),
      m_preview(new ImportPreview(this)), m_said(new QLabel(this)), m_newPipe(new QPushButton(tr("New &pipe"), this)),
      m_newFitting(new QPushButton(tr("New &fitting"), this)), m_newPump(new QPushButton(tr("New pu&mp"), this)),
      m_remove(new QPushButton(tr("&Remove"), this)), m_import(new QPushButton(tr("&Import…"), this)),
      m_export(new QPushButton(tr("&Export…"), this)), m_keep(new QPushButton(tr("&Keep for other plans"), this)),
      m_take(new QPushButton(tr("&Take kept ones"), this))
{
    makeSearch();
    makeList();
    makeButtons();
    layOut();
    connect(&m_document, &document::Document::planChanged, this, &PartsPanel::refresh);
    connect(&m_document, &document::Document::readOnlyChanged, this, &PartsPanel::refresh);
    connect(&m_document.view(), &document::ViewSettings::changed, this, &PartsPanel::refresh);
    connect(m_preview, &ImportPreview::accepted, this, &PartsPanel::takeImport);
    connect(m_preview, &ImportPreview::left, this, [this] {
        m_preview->clear();
        say({});
        m_import->setFocus(Qt::OtherFocusReason);
    });
    refresh();
}

void PartsPanel::makeSearch()
{
    m_search->setPlaceholderText(tr("Search: name, size, source"));
    m_search->setAccessibleName(tr("Search parts"));
    m_search->setClearButtonEnabled(true);
    m_search->setMinimumHeight(style::leastTarget);
    m_filter->setAccessibleName(tr("Which parts"));
    m_filter->setMinimumHeight(style::leastTarget);
    for (const QString& words : {tr("all"), tr("own parts"), tr("pipes"), tr("fittings, valves"), tr("pumps")})
        m_filter->addItem(words);
    const auto search = [this] {
        const PartRow* current = m_model->at(m_list->currentIndex().row());
        const std::string id = current ? current->id : std::string();
        m_model->search(static_cast<PartFilter>(m_filter->currentIndex()), m_search->text());
        select(id);
    };
    connect(m_search, &QLineEdit::textChanged, this, search);
    connect(m_filter, &QComboBox::currentIndexChanged, this, search);
}

void PartsPanel::makeList()
{
    m_list->setModel(m_model);
    m_list->setAccessibleName(tr("Parts"));
    m_list->setRootIsDecorated(false);
    m_list->setUniformRowHeights(true);
    m_list->setAllColumnsShowFocus(true);
    m_list->setFrameShape(QFrame::NoFrame);
    m_list->setMinimumHeight(15 * style::step);
    m_list->header()->setStretchLastSection(false);
    m_list->header()->setSectionResizeMode(PartModel::name, QHeaderView::Stretch);
    m_list->header()->setSectionResizeMode(PartModel::figure, QHeaderView::ResizeToContents);
    m_list->header()->setSectionResizeMode(PartModel::basis, QHeaderView::Interactive);
    m_list->header()->resizeSection(PartModel::basis, 10 * style::step); // the whole of it stands below
    connect(m_list->selectionModel(), &QItemSelectionModel::currentChanged, this, &PartsPanel::showCurrent);
}

void PartsPanel::makeButtons()
{
    m_newPipe->setToolTip(tr("Adds a pipe of your own to this plan"));
    m_newFitting->setToolTip(tr("Adds a fitting or valve of your own to this plan"));
    m_newPump->setToolTip(tr("Adds a pump of your own to this plan"));
    m_remove->setToolTip(tr("Takes the own part out of this plan; one that is used stays"));
    m_import->setToolTip(tr("Reads own parts from a table saved as CSV, and shows first what would come in"));
    m_export->setToolTip(tr("Writes the own parts of this plan to a table"));
    connect(m_newPipe, &QPushButton::clicked, this, &PartsPanel::addPipe);
    connect(m_newFitting, &QPushButton::clicked, this, &PartsPanel::addFitting);
    connect(m_newPump, &QPushButton::clicked, this, &PartsPanel::addPump);
    connect(m_remove, &QPushButton::clicked, this, &PartsPanel::removeCurrent);
    connect(m_import, &QPushButton::clicked, this, &PartsPanel::chooseImport);
    m_keep->setToolTip(tr("Adds the own parts of this plan to those you keep for all plans"));
    m_take->setToolTip(tr("Shows the parts you keep for all plans; this plan takes a copy"));
    connect(m_keep, &QPushButton::clicked, this, &PartsPanel::keepForOtherPlans);
    connect(m_take, &QPushButton::clicked, this, &PartsPanel::offerKept);
    connect(m_export, &QPushButton::clicked, this, &PartsPanel::chooseExport);
    m_details->setWordWrap(true);
    m_details->setTextInteractionFlags(Qt::TextSelectableByMouse);
    m_details->setAlignment(Qt::AlignTop | Qt::AlignLeft);
    m_details->setAccessibleName(tr("About the part"));
    m_said->setWordWrap(true);
    m_said->setObjectName(QStringLiteral("said"));
    m_said->hide();
}

void PartsPanel::layOut()
{
    auto* search = new QHBoxLayout;
    search->addWidget(m_search, 1);
    search->addWidget(m_filter);
    auto* fresh = new QHBoxLayout;
    for (QPushButton* each : {m_newPipe, m_newFitting, m_newPump})
        fresh->addWidget(each);
    fresh->addStretch(1);
    auto* table = new QHBoxLayout;
    for (QPushButton* each : {m_remove, m_import, m_export})
        table->addWidget(each);
    table->addStretch(1);
    auto* keeping = new QHBoxLayout;
    keeping->addWidget(m_keep);
    keeping->addWidget(m_take);
    keeping->addStretch(1);
    auto* content = new QWidget;
    auto* below = new QVBoxLayout(content);
    below->setContentsMargins(0, style::halfStep, style::halfStep, 0);
    below->setSpacing(style::step);
    for (QWidget* each : std::initializer_list<QWidget*>{m_preview, m_form, m_details})
        below->addWidget(each);
    below->addStretch(1);
    auto* scroll = new QScrollArea(this);
    scroll->setWidget(content);
    scroll->setWidgetResizable(true);
    scroll->setFrameShape(QFrame::NoFrame);
    scroll->setFocusPolicy(Qt::NoFocus);
    auto* parted = new QSplitter(Qt::Vertical, this);
    parted->addWidget(m_list);
    parted->addWidget(scroll);
    parted->setChildrenCollapsible(false);
    parted->setSizes({300, 300});
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(style::step, style::step, style::step, style::step);
    column->setSpacing(style::halfStep);
    column->addLayout(search);
    column->addWidget(parted, 1);
    column->addLayout(fresh);
    column->addLayout(table);
    column->addLayout(keeping);
    column->addWidget(m_said);
}

void PartsPanel::refresh()
{
    const text::DisplaySettings display = m_display();
    if (m_tables != m_document.catalogue() || !(m_shownAs == display)) {
        const PartRow* current = m_model->at(m_list->currentIndex().row());
        const std::string id = current ? current->id : std::string();
        m_tables = m_document.catalogue();
        m_shownAs = display;
        m_model->setRows(partRows(*m_tables, display));
        select(id);
    }
    m_form->refresh();
    const PartRow* current = m_model->at(m_list->currentIndex().row());
    const bool writable = !m_document.readOnly();
    for (QPushButton* each : {m_newPipe, m_newFitting, m_newPump, m_import, m_take})
        each->setEnabled(writable);
    m_remove->setEnabled(writable && current && current->own);
    m_export->setEnabled(!m_document.shown().ownParts->empty());
    m_keep->setEnabled(!m_document.shown().ownParts->empty());
}

void PartsPanel::select(const std::string& id)
{
    const int row = std::max(m_model->rowOf(id), m_model->rowCount() > 0 ? 0 : -1);
    m_list->setCurrentIndex(row < 0 ? QModelIndex() : m_model->index(row, 0));
    showCurrent();
}

void PartsPanel::showCurrent()
{
    const PartRow* row = m_model->at(m_list->currentIndex().row());
    m_details->setText(row ? row->details : tr("No part is found by this search."));
    m_form->showPart(row && row->own ? row->id : std::string());
    m_remove->setEnabled(row && row->own && !m_document.readOnly());
}

void PartsPanel::say(const QString& words)
{
    m_said->setText(words);
    m_said->setVisible(!words.isEmpty());
    if (!words.isEmpty()) {
        QAccessibleEvent announced(m_said, QAccessible::Alert);
        QAccessible::updateAccessibility(&announced);
    }
}

QString PartsPanel::said() const { return m_said->isHidden() ? QString() : m_said->text(); }

std::string PartsPanel::freshName(const QString& words) const
{
    const auto taken = [this](const std::string& name) {
        bool there = false;
        plan::forEachPart(*m_document.committed().ownParts,
                          [&](const plan::OwnPart& part) { there = there || part.name == name; });
        return there;
    };
    std::string name = words.toStdString();
    for (int number = 2; taken(name); ++number)
        name = words.toStdString() + " " + std::to_string(number);
    return name;
}

void PartsPanel::add(const plan::Edit& edit, const std::string& id)
{
    m_search->clear();
    m_filter->setCurrentIndex(0);
    if (const auto refusal = properties::commitOrRefuse(m_document, edit))
        return say(text::sentenceOf(*refusal, {}));
    say({});
    select(id);
    m_form->focusName();
}

void PartsPanel::addPipe()
{
    plan::OwnPipe pipe;
    pipe.name = freshName(tr("My pipe"));
    pipe.id = plan::OwnIds(*m_document.committed().ownParts).next(pipe.name);
    pipe.outsideDiameter = units::millimetres(32.0);
    pipe.bore = units::millimetres(27.2);
    add(plan::putOwnPart(pipe), pipe.id);
}

void PartsPanel::addFitting()
{
    plan::OwnFitting fitting;
    fitting.name = freshName(tr("My fitting"));
    fitting.id = plan::OwnIds(*m_document.committed().ownParts).next(fitting.name);
    fitting.k = 1.0;
    add(plan::putOwnPart(fitting), fitting.id);
}

void PartsPanel::addPump()
{
    plan::OwnPump pump;
    pump.name = freshName(tr("My pump"));
    pump.id = plan::OwnIds(*m_document.committed().ownParts).next(pump.name);
    pump.curve = {{units::Flow(), units::metresHead(2.0)}, {units::litresPerHour(2000.0), units::Head()}};
    pump.twoNumbers = true;
    add(plan::putOwnPart(pump), pump.id);
}

void PartsPanel::removeCurrent()
{
    const PartRow* row = m_model->at(m_list->currentIndex().row());
    if (!row || !row->own)
        return;
    const QString name = row->name;
    if (const auto refusal = properties::commitOrRefuse(m_document, plan::removeOwnPart(row->id)))
        return say(text::sentenceOf(*refusal, {}));
    say(tr("%1 is taken out; undo brings it back.").arg(name));
    m_list->setFocus(Qt::OtherFocusReason);
}

void PartsPanel::chooseImport()
{
    const QString path =
        style::askForFile(window(), tr("Import own parts"), {}, tr("Tables (*.csv *.txt);;All files (*)"));
    if (!path.isEmpty())
        importFrom(path);
}

void PartsPanel::importFrom(const QString& path)
{
    say({});
    const QString name = QFileInfo(path).fileName();
    const auto bytes = storage::readFile(path.toStdString(), storage::largestCsvBytes);
    if (!bytes)
        return m_preview->showRefusal(name, bytes.refusal());
    auto preview = storage::previewParts(*bytes, *m_document.committed().ownParts);
    if (!preview)
        return m_preview->showRefusal(name, preview.refusal());
    m_preview->showPreview(name, std::move(preview).value());
}

void PartsPanel::takeImport()
{
    const plan::OwnParts parts = m_preview->preview().parts();
    const auto count = parts.size();
    if (const auto refusal = properties::commitOrRefuse(m_document, plan::importOwnParts(parts)))
        return say(text::sentenceOf(*refusal, {}));
    m_preview->clear();
    m_filter->setCurrentIndex(static_cast<int>(PartFilter::own));
    say(tr("Own parts that came in: %1. Undo takes them out again.").arg(count));
    m_list->setFocus(Qt::OtherFocusReason);
}

void PartsPanel::chooseExport()
{
    QFileDialog box(window(), tr("Write own parts to a table"), {}, tr("Tables (*.csv)"));
    style::showKindsOnly(box);
    box.setAcceptMode(QFileDialog::AcceptSave);
    box.setDefaultSuffix(QStringLiteral("csv"));
    box.selectFile(tr("own-parts.csv"));
    if (box.exec() == QDialog::Accepted)
        exportTo(box.selectedFiles().value(0));
}

void PartsPanel::keepForOtherPlans()
{
    const auto kept = storage::readKeptParts(m_kept.toStdString());
    if (!kept)
        return say(text::sentenceOf(kept.refusal(), m_kept));
    const plan::OwnParts all = storage::mergedParts(*kept, *m_document.committed().ownParts);
    if (const auto refusal = storage::writeKeptParts(m_kept.toStdString(), all))
        return say(text::sentenceOf(*refusal, m_kept));
    say(tr("Kept for other plans, now %1 in all, in %2").arg(all.size()).arg(m_kept));
}

void PartsPanel::offerKept()
{
    say({});
    const auto kept = storage::readKeptParts(m_kept.toStdString());
    if (!kept)
        return m_preview->showRefusal(m_kept, kept.refusal());
    if (kept->empty())
        return say(tr("You keep no parts for other plans yet."));
    // By way of a table, whose rows find their place among the parts of this plan.
    auto preview = storage::previewParts(storage::partsTable(*kept), *m_document.committed().ownParts);
    if (!preview)
        return m_preview->showRefusal(m_kept, preview.refusal());
    m_preview->showPreview(tr("Kept parts"), std::move(preview).value());
}

bool PartsPanel::exportTo(const QString& path)
{
    const std::string text = storage::partsTable(*m_document.committed().ownParts);
    if (const auto refusal = storage::writeFile(path.toStdString(), text)) {
        say(text::sentenceOf(*refusal, {}));
        return false;
    }
    say(tr("Own parts written to %1").arg(QFileInfo(path).fileName()));
    return true;
}

} // namespace sumpwright::ui::parts
