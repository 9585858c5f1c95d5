// FileCommands' messages about recovery, other windows and other programs, and its lists of recent plans and examples.
#include <QAction>
#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QLocale>
#include <QMenu>

#include "core/storage/plan_text.hpp"
#include "ui/document/document.hpp"
#include "ui/document/recent_plans.hpp"
#include "ui/document/session.hpp"
#include "ui/window/file_commands.hpp"
#include "ui/window/message_strip.hpp"

namespace sumpwright::ui::window
{

void FileCommands::offerRecovery()
{
    for (const document::RecoveryOffer& offer : m_parts.session.recoveryOffers()) {
        QString message = tr("Unsaved work on “%1” from %2 was found.")
                              .arg(offer.name, QLocale().toString(offer.written, QLocale::ShortFormat));
        if (offer.fileChangedSince)
            message += u' ' + tr("The saved file was changed since by another program.");
        const auto discard = [this, offer] { m_parts.session.discard(offer); };
        m_parts.strips.show({QStringLiteral("recovery.") + QFileInfo(offer.journal).fileName(),
                             Weight::caution,
                             message,
                             {{tr("Recover"), [this, offer] { recover(offer); }}, {tr("Throw away"), discard}}});
    }
}

void FileCommands::recover(const document::RecoveryOffer& offer)
{
    if (!mayLeave())
        return offerRecovery();
    if (const auto refusal = m_parts.session.recover(offer))
        return tellRefusal(tr("The work could not be recovered."), *refusal);
    Q_EMIT opened();
    m_parts.document.say(tr("Recovered. Nothing is written to your file until you save."));
}

void FileCommands::tellChangedOnDisk(bool missing)
{
    const QString key = QStringLiteral("disk");
    const StripChoice keep{tr("Keep what is on screen"), [this] { m_parts.session.keepMine(); }};
    if (missing) {
        m_parts.strips.show({key,
                             Weight::caution,
                             tr("The file of this plan is gone: it was moved or deleted. Saving writes it again."),
                             {keep}});
        return;
    }
    m_parts.strips.show({key,
                         Weight::caution,
                         tr("The file of this plan was changed by another program."),
                         {{tr("Reload the file"), [this] { revert(); }}, keep}});
}

void FileCommands::tellHolder()
{
    const QString key = QStringLiteral("holder");
    if (m_parts.session.heldBy().isEmpty())
        return m_parts.strips.drop(key);
    m_parts.strips.show({key,
                         Weight::note,
                         tr("For reading only: this plan is being edited by %1.").arg(m_parts.session.heldBy()),
                         {{tr("Try again"), [this] { revert(); }}, {tr("Save as…"), [this] { saveAs(); }}}});
}

void FileCommands::fillRecentMenu(QMenu& menu)
{
    connect(&menu, &QMenu::aboutToShow, this, [this, &menu] {
        menu.clear();
        int number = 0;
        for (const QString& path : m_parts.recent.paths()) {
            const QFileInfo file(path);
            QString name = file.completeBaseName();
            name.replace(QStringLiteral("&"), QStringLiteral("&&"));
            QAction* action = menu.addAction(QStringLiteral("&%1  %2").arg(++number % 10).arg(name));
            action->setToolTip(QDir::toNativeSeparators(path));
            action->setEnabled(file.exists());
            if (!file.exists())
                action->setText(tr("%1 (not found)").arg(action->text()));
            connect(action, &QAction::triggered, this, [this, path] { openPath(path); });
        }
        if (number == 0)
            menu.addAction(tr("None yet"))->setEnabled(false);
        menu.addSeparator();
        QAction* clear = menu.addAction(tr("&Clear this list"));
        clear->setEnabled(number > 0);
        connect(clear, &QAction::triggered, &m_parts.recent, &document::RecentPlans::clear);
    });
    menu.setToolTipsVisible(true);
}

void FileCommands::fillExampleMenu(QMenu& menu)
{
    const QDir folder(QStringLiteral(":/examples"));
    for (const QString& name : folder.entryList({QStringLiteral("*.sumpwright")}, QDir::Files, QDir::Name)) {
        const QString resource = folder.filePath(name);
        QString title = QFileInfo(name).completeBaseName().replace(u'_', u' ').replace(u'-', u' ');
        title.front() = title.front().toUpper();
        connect(menu.addAction(title), &QAction::triggered, this, [this, resource] { openExample(resource); });
    }
    if (menu.isEmpty())
        menu.addAction(tr("None in this build"))->setEnabled(false);
}

void FileCommands::openExample(const QString& resource)
{
    if (!mayLeave())
        return;
    QFile file(resource);
    const QByteArray bytes = file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
    auto loaded = storage::loadText(std::string_view(bytes.constData(), static_cast<std::size_t>(bytes.size())));
    if (!loaded)
        return tellRefusal(tr("The example was not opened."), loaded.refusal());
    const QString name = QString::fromStdString(loaded->plan.site->name);
    m_parts.session.startUntitled(loaded->plan, name);
    Q_EMIT opened();
}

} // namespace sumpwright::ui::window
