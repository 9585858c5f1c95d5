#include "ui/window/about.hpp"

#include <QCoreApplication>
#include <QDialog>
#include <QDialogButtonBox>
#include <QHeaderView>
#include <QPushButton>
#include <QTableWidget>
#include <QTextBrowser>
#include <QVBoxLayout>

#include "core/catalogue/catalogue.hpp"
#include "ui/style/type.hpp"
#include "ui/text/cautions.hpp"
#include "ui/text/names.hpp"
#include "ui/window/commands.hpp"

namespace sumpwright::ui::window
{

namespace
{

QString words(const char* text) { return QCoreApplication::translate("About", text); }

void closeButton(QDialog& dialog, QVBoxLayout& rows)
{
    auto* buttons = new QDialogButtonBox;
    buttons->addButton(words("&Close"), QDialogButtonBox::RejectRole);
    QObject::connect(buttons, &QDialogButtonBox::rejected, &dialog, &QDialog::reject);
    rows.addWidget(buttons);
}

QString plain(QString text)
{
    text.remove(u'&');
    return text;
}

QTableWidgetItem* cell(const QString& text)
{
    auto* item = new QTableWidgetItem(text);
    item->setFlags(Qt::ItemIsEnabled | Qt::ItemIsSelectable);
    return item;
}

QString aboutText(const catalogue::Catalogue& catalogue)
{
    QString html = QStringLiteral("<h3>Sumpwright %1</h3>").arg(QCoreApplication::applicationVersion().toHtmlEscaped());
    html +=
        QStringLiteral("<p>%1</p>")
            .arg(words("Plans small recirculating aquaponic systems on the floor they stand on, and computes water, "
                       "head, duty point and load on every edit."));
    html += QStringLiteral("<p>%1</p>")
                .arg(words("Free software under the GNU General Public License, version 3 or later; it comes with "
                           "absolutely no warranty."));
    html += QStringLiteral("<h4>%1</h4>").arg(words("Cautions"));
    for (const QString& caution : {text::loadCaution(), text::electricalCaution(), text::drinkingWaterCaution()})
        html += QStringLiteral("<p>%1</p>").arg(caution.toHtmlEscaped());
    html += QStringLiteral("<h4>%1</h4><ul>").arg(words("Where the numbers come from"));
    for (const catalogue::Source& source : catalogue.sources())
        html +=
            QStringLiteral("<li>%1 (%2)</li>")
                .arg(QString::fromStdString(source.title).toHtmlEscaped(), text::nameOf(source.basis).toHtmlEscaped());
    return html + QStringLiteral("</ul>");
}

} // namespace

void showKeys(const Commands& commands, QWidget* parent)
{
    QDialog dialog(parent);
    dialog.setWindowTitle(words("Keys"));
    auto* rows = new QVBoxLayout(&dialog);
    auto* table = new QTableWidget(static_cast<int>(commands.order().size()), 3, &dialog);
    table->setHorizontalHeaderLabels({words("Command"), words("Key"), words("What it does")});
    table->setAccessibleName(words("Commands and their keys"));
    table->setTabKeyNavigation(false);
    table->setSelectionBehavior(QAbstractItemView::SelectRows);
    table->verticalHeader()->hide();
    table->setShowGrid(false);
    int row = 0;
    for (const std::string& id : commands.order()) {
        const QAction* action = commands.find(id);
        QString key = action->shortcut().toString(QKeySequence::NativeText);
        if (commands.spec(id).scope == Scope::planView && !key.isEmpty())
            key += words(" (in the plan)");
        table->setItem(row, 0, cell(plain(commands.spec(id).text)));
        table->setItem(row, 1, cell(key));
        table->setItem(row, 2, cell(commands.spec(id).tip));
        ++row;
    }
    table->resizeColumnsToContents();
    table->horizontalHeader()->setStretchLastSection(true);
    rows->addWidget(table);
    closeButton(dialog, *rows);
    dialog.resize(90 * style::step, 70 * style::step);
    dialog.exec();
}

void showAbout(const catalogue::Catalogue& catalogue, QWidget* parent)
{
    QDialog dialog(parent);
    dialog.setWindowTitle(words("About Sumpwright"));
    auto* rows = new QVBoxLayout(&dialog);
    auto* text = new QTextBrowser(&dialog);
    text->setAccessibleName(words("About Sumpwright"));
    text->setHtml(aboutText(catalogue));
    rows->addWidget(text);
    closeButton(dialog, *rows);
    dialog.resize(75 * style::step, 70 * style::step);
    dialog.exec();
}

} // namespace sumpwright::ui::window
