#include "ui/charts/chart_panel.hpp"

#include <QAbstractAxis>
#include <QAccessible>
#include <QChart>
#include <QClipboard>
#include <QContextMenuEvent>
#include <QEvent>
#include <QFileDialog>
#include <QFileInfo>
#include <QGraphicsLayout>
#include <QGuiApplication>
#include <QHBoxLayout>
#include <QLabel>
#include <QLegend>
#include <QLocale>
#include <QMenu>
#include <QPushButton>
#include <QSaveFile>
#include <QVBoxLayout>

#include "ui/charts/chart_picture.hpp"
#include "ui/charts/readable_view.hpp"
#include "ui/style/file_box.hpp"
#include "ui/style/palette.hpp"
#include "ui/style/type.hpp"

namespace sumpwright::ui::charts
{

namespace
{

QString askPath(QWidget& parent, const QString& title, const QString& kinds, const QString& fileName)
{
    QFileDialog dialog(&parent, title, QString(), kinds);
    style::showKindsOnly(dialog);
    dialog.setAcceptMode(QFileDialog::AcceptSave);
    dialog.setDefaultSuffix(QFileInfo(fileName).suffix());
    QObject::connect(&dialog, &QFileDialog::filterSelected, &dialog, [&dialog](const QString& filter) {
        dialog.setDefaultSuffix(filter.section(QStringLiteral("*."), 1).section(u')', 0, 0));
    });
    dialog.selectFile(fileName);
    return dialog.exec() == QDialog::Accepted ? dialog.selectedFiles().value(0) : QString();
}

} // namespace

void dress(QChart& chart, const style::Theme& theme)
{
    chart.setBackgroundBrush(theme.paper);
    chart.setBackgroundRoundness(0.0);
    chart.setBackgroundPen(Qt::NoPen);
    chart.setMargins(QMargins(style::halfStep, 0, style::step, 0));
    chart.layout()->setContentsMargins(0, 0, 0, 0);
    QLocale numbers; // the desktop's decimal sign; no point or comma is ever a group mark
    numbers.setNumberOptions(QLocale::OmitGroupSeparator);
    chart.setLocale(numbers);
    chart.setLocalizeNumbers(true);
    chart.legend()->setAlignment(Qt::AlignBottom);
    chart.legend()->setLabelColor(theme.ink);
    chart.legend()->setFont(style::bodyFont());
    for (QAbstractAxis* axis : chart.axes()) {
        axis->setLabelsFont(style::bodyFont());
        axis->setTitleFont(style::bodyFont());
        axis->setLabelsColor(theme.ink);
        axis->setTitleBrush(theme.quiet);
        axis->setLinePen(QPen(theme.quiet, 1.0));
        axis->setGridLinePen(QPen(theme.gridHeavy, 1.0));
    }
}

ChartPanel::ChartPanel(document::Document& document, DisplayNow display, const QString& question, QWidget* parent)
    : QWidget(parent), m_document(document), m_display(std::move(display)), m_question(question),
      m_sentence(new QLabel(this)), m_readOut(new QLabel(this)), m_workingButton(new QPushButton(tr("Working"), this)),
      m_chart(new QChart), m_view(nullptr)
{
    m_view = new ReadableView(m_chart, this);
    m_view->setAccessibleName(question);
    m_sentence->setWordWrap(true);
    m_sentence->setAccessibleName(question);
    m_readOut->setWordWrap(true);
    m_readOut->setAlignment(Qt::AlignLeft | Qt::AlignTop);
    m_readOut->setMinimumHeight(2 * m_readOut->fontMetrics().lineSpacing()); // what is read moves nothing
    auto* rows = new QVBoxLayout(this);
    rows->setContentsMargins(style::step, style::halfStep, style::step, style::halfStep);
    rows->setSpacing(style::halfStep);
    rows->addWidget(m_sentence);
    rows->addWidget(m_view, 1);
    auto* foot = new QHBoxLayout;
    foot->setSpacing(style::step);
    foot->addWidget(m_readOut, 1);
    foot->addWidget(m_workingButton, 0, Qt::AlignTop);
    rows->addLayout(foot);
    m_workingButton->setFlat(true);
    m_workingButton->setMinimumHeight(style::leastTarget);
    m_workingButton->setAccessibleName(tr("Show working: %1").arg(question));
    m_workingButton->setToolTip(tr("Opens the worksheet behind the value read, or behind the chart's figure"));
    m_workingButton->setEnabled(false);
    connect(m_workingButton, &QPushButton::clicked, this, &ChartPanel::askWorking);
    setFocusProxy(m_view);

    connect(&m_document, &document::Document::assessmentChanged, this, &ChartPanel::resultsCame);
    connect(m_view, &ReadableView::pointed, this, [this](const QPoint& at) { read(m_view->nearest(m_readings, at)); });
    connect(m_view, &ReadableView::left, this, [this] {
        if (!m_view->hasFocus())
            read(-1);
    });
    connect(m_view, &ReadableView::keyPressed, this, &ChartPanel::keyRead);
    connect(m_view, &ReadableView::activated, this, [this](const QPoint& at) {
        read(m_view->nearest(m_readings, at));
        keyRead(Qt::Key_Return);
    });
}

ChartPanel::~ChartPanel() = default;

std::optional<assessment::Working> ChartPanel::working() const
{
    const auto results = m_document.assessment();
    const WorkingOf& of = m_read >= 0 ? m_readings[static_cast<std::size_t>(m_read)].working : m_working;
    return results && of ? of(*results) : std::nullopt;
}

// While a gesture lasts the numbers change every moment: it is offered when they stand still.
void ChartPanel::offerWorking()
{
    m_workingButton->setEnabled(!m_document.stale() && !m_document.previewing() && working().has_value());
}

QString ChartPanel::sentence() const { return text::breakable(m_sentence->text()); }
QString ChartPanel::readOut() const { return text::breakable(m_readOut->text()); }
void ChartPanel::setSentence(const QString& sentence) { m_sentence->setText(text::unbroken(sentence)); }

void ChartPanel::addControl(QWidget* control) { static_cast<QVBoxLayout*>(layout())->insertWidget(1, control); }

void ChartPanel::refresh()
{
    m_drawn.reset();
    resultsCame();
}

void ChartPanel::resultsCame()
{
    m_dirty = true;
    if (isVisible())
        redraw();
}

void ChartPanel::showEvent(QShowEvent* event)
{
    QWidget::showEvent(event);
    redraw();
}

bool ChartPanel::event(QEvent* event)
{
    if (event->type() == QEvent::PaletteChange || event->type() == QEvent::FontChange) {
        m_drawn.reset();
        m_dressed = nullptr;
        resultsCame();
    }
    return QWidget::event(event);
}

void ChartPanel::redraw()
{
    if (!m_dirty || m_redrawing)
        return;
    m_dirty = false;
    m_redrawing = true;
    const style::Theme& theme = style::themeOf(*this);
    const auto results = m_document.assessment();
    if (results && results != m_drawn) {
        draw(*results, theme);
        if (m_dressed != &theme) {
            dress(*m_chart, theme);
            m_view->setBackgroundBrush(theme.paper);
            m_dressed = &theme;
        }
        m_drawn = results;
        if (m_read >= 0)
            read(m_read < static_cast<int>(m_readings.size()) ? m_read : -1);
    }
    // A palette set on a label reaches it as an event of its own; only when the colour differs.
    const QColor ink = m_document.stale() ? theme.stale : theme.ink;
    if (m_sentence->palette().color(QPalette::WindowText) != ink) {
        QPalette colours = m_sentence->palette();
        colours.setColor(QPalette::WindowText, ink);
        m_sentence->setPalette(colours);
    }
    m_chart->setOpacity(m_document.stale() ? 0.55 : 1.0);
    offerWorking();
    m_redrawing = false;
}

void ChartPanel::read(int index)
{
    const bool good = index >= 0 && index < static_cast<int>(m_readings.size());
    m_read = good ? index : -1;
    const QString text = good ? m_readings[static_cast<std::size_t>(index)].text : QString();
    m_view->mark(good ? m_readings[static_cast<std::size_t>(index)].place : QRectF(), good);
    m_document.highlight(good ? m_readings[static_cast<std::size_t>(index)].element : base::Id{});
    offerWorking();
    if (text == readOut())
        return;
    m_readOut->setText(text::unbroken(text));
    m_view->setAccessibleDescription(text);
    QAccessibleEvent announced(m_view, QAccessible::DescriptionChanged);
    QAccessible::updateAccessibility(&announced);
}

void ChartPanel::keyRead(int key)
{
    const int count = static_cast<int>(m_readings.size());
    if (count == 0)
        return;
    switch (key) {
    case Qt::Key_Right:
    case Qt::Key_Down:
        read(m_read < 0 ? 0 : (m_read + 1) % count);
        break;
    case Qt::Key_Left:
    case Qt::Key_Up:
        read(m_read <= 0 ? count - 1 : m_read - 1);
        break;
    case Qt::Key_Home:
        read(0);
        break;
    case Qt::Key_End:
        read(count - 1);
        break;
    case Qt::Key_Escape:
        read(-1);
        break;
    default:
        if (m_read >= 0 && m_readings[static_cast<std::size_t>(m_read)].element.valid())
            m_document.goTo({m_readings[static_cast<std::size_t>(m_read)].element});
    }
}

bool ChartPanel::savePicture(const QString& path)
{
    m_view->mark({}, false);
    return saveChartPicture(path, {m_question, sentence()}, *m_view, style::themeOf(*this));
}

bool ChartPanel::saveNumbers(const QString& path)
{
    QSaveFile file(path);
    return file.open(QIODevice::WriteOnly) && file.write(m_table.toCsv().toUtf8()) >= 0 && file.commit();
}

// The question without its mark, which a file's name cannot bear everywhere.
QString ChartPanel::fileName(const QString& ending) const
{
    QString name = m_question;
    return name.remove(u'?') + u'.' + ending;
}

void ChartPanel::askPicture()
{
    const QString path = askPath(*this, tr("Picture of the chart: %1").arg(m_question),
                                 tr("Picture (*.png);;Vector picture (*.svg)"), fileName(QStringLiteral("png")));
    if (path.isEmpty())
        return;
    m_document.say(savePicture(path) ? tr("Saved %1").arg(path)
                                     : tr("%1 could not be written; choose another folder").arg(path));
}

void ChartPanel::askNumbers()
{
    const QString path = askPath(*this, tr("Numbers of the chart: %1").arg(m_question), tr("Table (*.csv)"),
                                 fileName(QStringLiteral("csv")));
    if (path.isEmpty())
        return;
    m_document.say(saveNumbers(path) ? tr("Saved %1").arg(path)
                                     : tr("%1 could not be written; choose another folder").arg(path));
}

void ChartPanel::copyNumbers() { QGuiApplication::clipboard()->setText(m_table.toCsv()); }

void ChartPanel::copySentence() { QGuiApplication::clipboard()->setText(sentence()); }

void ChartPanel::askWorking()
{
    if (const auto wanted = working())
        Q_EMIT workingWanted(*wanted);
    else
        m_document.say(tr("No single worksheet gives this value."));
}

void ChartPanel::contextMenuEvent(QContextMenuEvent* event)
{
    QMenu menu(this);
    menu.addAction(tr("Show working"), this, &ChartPanel::askWorking);
    menu.addAction(tr("Save as picture…"), this, &ChartPanel::askPicture);
    menu.addAction(tr("Save numbers…"), this, &ChartPanel::askNumbers);
    menu.addAction(tr("Copy numbers"), this, &ChartPanel::copyNumbers);
    menu.addAction(tr("Copy sentence"), this, &ChartPanel::copySentence);
    menu.exec(event->globalPos());
}

} // namespace sumpwright::ui::charts
