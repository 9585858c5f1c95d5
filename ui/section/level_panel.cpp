#include "ui/section/level_panel.hpp"

#include <QComboBox>
#include <QHBoxLayout>
#include <QSignalBlocker>
#include <QToolButton>

#include <algorithm>

#include "ui/document/document.hpp"
#include "ui/section/level_legend.hpp"
#include "ui/style/type.hpp"

namespace sumpwright::ui::section
{

namespace
{
constexpr int heightsOffered[] = {1, 2, 5};

// The port is named where several of one vessel can be chosen.
QString wordsOf(const plan::Plan& plan, const report::WayChoice& way, bool usual, bool several)
{
    const auto tag = [&](base::Id id) { return QString::fromStdString(plan::tagOf(plan, id)); };
    const plan::Vessel* vessel = plan.vessels.find(way.vessel);
    const plan::Port* port = vessel ? plan::findPort(*vessel, way.port) : nullptr;
    QString words = LevelPanel::tr("%1 to %2", "pump and vessel").arg(tag(way.pump), tag(way.vessel));
    if (several && port)
        words += QStringLiteral(", ") + QString::fromStdString(port->tag);
    return usual ? LevelPanel::tr("%1, hardest way").arg(words) : words;
}
} // namespace

LevelPanel::LevelPanel(document::Document& document, canvas::PlanView& plan, QWidget* parent)
    : QWidget(parent), m_document(document), m_view(new LevelView(document, plan)), m_way(new QComboBox),
      m_legend(new LevelLegend), m_heights(new QComboBox)
{
    m_elevation = modeButton(tr("Elevation"), tr("What stands left in the plan stands left here, at its level."),
                             Mode::elevation);
    m_section = modeButton(tr("Section"), tr("The water's way unrolled: from the pump up, and back to the sump."),
                           Mode::section);
    m_elevation->setChecked(true);
    m_way->setAccessibleName(tr("The water's way"));
    m_way->setToolTip(tr("Which way the section follows: to which outlet of the pump."));
    m_way->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    m_way->setMinimumContentsLength(18);
    m_way->hide();
    for (const int times : heightsOffered)
        m_heights->addItem(times == 1 ? tr("Heights true") : tr("Heights ×%1").arg(times), times);
    m_heights->setAccessibleName(tr("Heights"));
    m_heights->setToolTip(tr("How many times larger heights are drawn than lengths."));

    auto* line = new QHBoxLayout;
    line->setContentsMargins(style::step, style::halfStep, style::step, style::halfStep);
    line->setSpacing(style::halfStep);
    line->addWidget(m_elevation);
    line->addWidget(m_section);
    line->addWidget(m_way);
    line->addWidget(m_legend, 1);
    line->addWidget(m_heights);
    auto* rows = new QVBoxLayout(this);
    rows->setContentsMargins(0, 0, 0, 0);
    rows->setSpacing(0);
    rows->addLayout(line);
    rows->addWidget(m_view, 1);
    setFocusProxy(m_view);

    connect(m_heights, &QComboBox::activated, this,
            [this](int index) { m_view->setHeights(m_heights->itemData(index).toInt()); });
    connect(m_way, &QComboBox::activated, this, [this](int index) {
        const auto at = static_cast<std::size_t>(index);
        if (at < m_ways.size())
            m_view->chooseWay(m_usual == m_ways[at] ? std::nullopt : std::optional(m_ways[at]));
    });
    connect(m_view, &LevelView::pageChanged, this, &LevelPanel::refreshWays);
}

QToolButton* LevelPanel::modeButton(const QString& words, const QString& tip, Mode mode)
{
    auto* button = new QToolButton(this);
    button->setText(words);
    button->setToolTip(tip);
    button->setAccessibleDescription(tip);
    button->setCheckable(true);
    button->setMinimumHeight(style::leastTarget);
    connect(button, &QToolButton::clicked, this, [this, mode] { setMode(mode); });
    return button;
}

void LevelPanel::setMode(Mode mode)
{
    const bool other = mode != m_view->mode();
    m_view->setMode(mode);
    m_elevation->setChecked(mode == Mode::elevation);
    m_section->setChecked(mode == Mode::section);
    m_way->setVisible(mode == Mode::section);
    m_legend->setGrade(mode == Mode::section);
    if (other)
        Q_EMIT modeChanged();
}

void LevelPanel::setHeights(int times)
{
    const int index = m_heights->findData(times);
    m_heights->setCurrentIndex(std::max(0, index));
    m_view->setHeights(index < 0 ? 1 : times);
}

void LevelPanel::takeFocus() { m_view->setFocus(Qt::ShortcutFocusReason); }

// The list is made anew only when other ways are there.
void LevelPanel::refreshWays()
{
    if (m_view->mode() != Mode::section)
        return;
    const auto results = m_document.assessment();
    const plan::Plan& plan = m_document.shown();
    auto ways = report::waysOf(plan, results.get());
    const auto usual = report::usualWay(plan, results.get());
    QStringList words;
    for (const report::WayChoice& way : ways)
        words << wordsOf(plan, way, usual == way,
                         std::count_if(ways.begin(), ways.end(),
                                       [&](const report::WayChoice& other) { return other.vessel == way.vessel; }) > 1);
    QStringList before;
    for (int i = 0; i < m_way->count(); ++i)
        before << m_way->itemText(i);
    const QSignalBlocker quiet(m_way);
    m_ways = std::move(ways);
    m_usual = usual;
    if (words != before) {
        m_way->clear();
        m_way->addItems(words);
        m_way->setEnabled(!words.isEmpty());
    }
    const auto& chosen = m_view->sectionPage().choice();
    const auto at = std::find(m_ways.begin(), m_ways.end(), chosen ? *chosen : m_usual.value_or(report::WayChoice()));
    m_way->setCurrentIndex(at == m_ways.end() ? -1 : static_cast<int>(at - m_ways.begin()));
}

} // namespace sumpwright::ui::section
