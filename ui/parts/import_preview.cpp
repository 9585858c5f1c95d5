#include "ui/parts/import_preview.hpp"

#include <algorithm>

#include <QLabel>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QVBoxLayout>

#include "ui/style/type.hpp"
#include "ui/text/refusals.hpp"

namespace sumpwright::ui::parts
{

namespace
{

const plan::OwnPart& identityOf(const storage::AnyOwnPart& part)
{
    return std::visit([](const auto& each) -> const plan::OwnPart& { return each; }, part);
}

QString refusedLines(const storage::PartsPreview& preview)
{
    QStringList lines;
    for (const storage::RefusedRow& row : preview.refused)
        lines << ImportPreview::tr("Refused, %1").arg(text::sentenceOf(row.refusal, {}));
    return lines.join(u'\n');
}

QString comingLines(const storage::PartsPreview& preview)
{
    QStringList lines;
    for (const storage::IncomingPart& part : preview.coming) {
        const QString name = QString::fromStdString(identityOf(part.part).name);
        const QString place = QString::number(part.line);
        lines << (part.replaces ? ImportPreview::tr("Line %1: %2, takes the place of yours").arg(place, name)
                                : ImportPreview::tr("Line %1: %2").arg(place, name));
    }
    return lines.join(u'\n');
}

} // namespace

ImportPreview::ImportPreview(QWidget* parent)
    : QWidget(parent), m_summary(new QLabel(this)), m_lines(new QPlainTextEdit(this)),
      m_take(new QPushButton(tr("&Bring them in"), this)), m_leave(new QPushButton(tr("&Leave it"), this))
{
    m_summary->setWordWrap(true);
    m_summary->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
    m_summary->setFocusPolicy(Qt::NoFocus);
    m_lines->setReadOnly(true);
    m_lines->setTabChangesFocus(true);
    m_lines->setAccessibleName(tr("Rows of the table"));
    m_lines->setMinimumHeight(15 * style::step);
    m_take->setToolTip(tr("Puts the parts into the plan, as one step that can be undone"));
    m_leave->setToolTip(tr("Changes nothing"));
    auto* buttons = new QHBoxLayout;
    buttons->addWidget(m_take);
    buttons->addWidget(m_leave);
    buttons->addStretch(1);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(style::halfStep);
    column->addWidget(m_summary);
    column->addWidget(m_lines, 1);
    column->addLayout(buttons);
    connect(m_take, &QPushButton::clicked, this, &ImportPreview::accepted);
    connect(m_leave, &QPushButton::clicked, this, &ImportPreview::left);
    hide();
}

void ImportPreview::showPreview(const QString& file, storage::PartsPreview preview)
{
    m_preview = std::move(preview);
    const auto count = [](std::size_t number) { return QString::number(number); };
    QStringList said{tr("%1: would come in %2 of %3 rows; refused: %4.")
                         .arg(file, count(m_preview.coming.size()),
                              count(m_preview.coming.size() + m_preview.refused.size()),
                              count(m_preview.refused.size()))};
    if (!m_preview.unknownColumns.empty()) {
        QStringList columns;
        for (const std::string& column : m_preview.unknownColumns)
            columns << QString::fromStdString(column);
        said << tr("Columns left out: %1.").arg(columns.join(QStringLiteral(", ")));
    }
    m_summary->setText(said.join(u' '));
    QStringList lines{refusedLines(m_preview), comingLines(m_preview)};
    lines.removeAll(QString());
    m_lines->setPlainText(lines.join(u'\n'));
    m_lines->show();
    m_take->setVisible(!m_preview.coming.empty());
    show();
}

void ImportPreview::showRefusal(const QString& file, const base::Refusal& refusal)
{
    m_preview = {};
    m_summary->setText(tr("%1 was not read. %2").arg(file, text::sentenceOf(refusal, {})));
    m_lines->hide();
    m_take->hide();
    show();
}

void ImportPreview::clear()
{
    m_preview = {};
    m_lines->clear();
    hide();
}

QString ImportPreview::summary() const { return m_summary->text(); }

QString ImportPreview::lines() const { return m_lines->toPlainText(); }

} // namespace sumpwright::ui::parts
