#include "ui/window/file_commands.hpp"
#include "ui/style/file_box.hpp"

#include <QCoreApplication>
#include <QFileDialog>
#include <QFileInfo>
#include <QMessageBox>
#include <QProcess>
#include <QPushButton>

#include "ui/document/document.hpp"
#include "ui/document/recent_plans.hpp"
#include "ui/document/session.hpp"
#include "ui/text/refusals.hpp"
#include "ui/window/commands.hpp"
#include "ui/window/message_strip.hpp"
#include "ui/window/window_state.hpp"

namespace sumpwright::ui::window
{

namespace
{

const QString ending = QStringLiteral(".sumpwright");

QString planFilter() { return FileCommands::tr("Plans (*.sumpwright);;All files (*)"); }

} // namespace

FileCommands::FileCommands(const Parts& parts) : QObject(&parts.window), m_parts(parts)
{
    document::Session& session = m_parts.session;
    connect(&session, &document::Session::changedOnDisk, this, &FileCommands::tellChangedOnDisk);
    connect(&session, &document::Session::nameChanged, this, &FileCommands::tellHolder);
    connect(&session, &document::Session::noticed, this, [this](const QString& message) {
        m_parts.strips.show({QStringLiteral("noticed"), Weight::note, message, {}});
    });
    connect(&session, &document::Session::journalFailed, this, [this](const QString& reason) {
        m_parts.strips.show({QStringLiteral("journal"),
                             Weight::caution,
                             tr("Autosaving does not work at the moment: %1. Save often.").arg(reason),
                             {}});
    });
    connect(&session, &document::Session::saved, this, [this] {
        m_parts.strips.drop(QStringLiteral("file"));
        m_parts.strips.drop(QStringLiteral("disk"));
        m_parts.recent.add(m_parts.session.path());
        m_parts.document.say(tr("Saved as %1").arg(m_parts.session.path()));
    });
}

void FileCommands::addTo(Commands& commands)
{
    commands.add({"file.new", Menu::file, tr("&New plan"), tr("Starts an empty plan."), "Ctrl+N"},
                 [this] { startNew(); });
    commands.add(
        {"file.window", Menu::file, tr("New &window"), tr("Opens a second window for another plan."), "Ctrl+Shift+N"},
        [] { QProcess::startDetached(QCoreApplication::applicationFilePath(), {}); });
    commands.add({"file.open", Menu::file, tr("&Open…"), tr("Opens a plan from a file."), "Ctrl+O", tr("Open")},
                 [this] { chooseAndOpen(); });
    commands.add({"file.save", Menu::file, tr("&Save"), tr("Writes the plan to its file."), "Ctrl+S", tr("Save"),
                  Scope::window, false, true},
                 [this] { save(); });
    commands.add({"file.save-as", Menu::file, tr("Save &as…"), tr("Writes the plan to another file and goes on there."),
                  "Ctrl+Shift+S"},
                 [this] { saveAs(); });
    commands.add({"file.revert", Menu::file, tr("&Back to the saved file"),
                  tr("Gives back the plan as it was last saved; the undo steps are lost."), "Ctrl+Alt+Z"},
                 [this] { revert(); });
}

bool FileCommands::mayLeave()
{
    m_parts.finishGesture();
    m_parts.finishEntry();
    if (!m_parts.session.modified())
        return true;
    QMessageBox box(QMessageBox::NoIcon, tr("Unsaved changes"),
                    tr("Save the changes to “%1”?").arg(m_parts.session.displayName()), QMessageBox::NoButton,
                    &m_parts.window);
    box.setInformativeText(tr("Discarded changes cannot be brought back."));
    QPushButton* saveButton = box.addButton(tr("&Save"), QMessageBox::AcceptRole);
    QPushButton* discardButton = box.addButton(tr("&Discard"), QMessageBox::DestructiveRole);
    QPushButton* cancelButton = box.addButton(tr("&Cancel"), QMessageBox::RejectRole);
    box.setDefaultButton(saveButton);
    box.setEscapeButton(cancelButton);
    box.exec();
    if (box.clickedButton() == saveButton)
        return save();
    return box.clickedButton() == discardButton;
}

void FileCommands::startNew()
{
    if (!mayLeave())
        return;
    m_parts.session.startUntitled();
    Q_EMIT opened();
}

void FileCommands::chooseAndOpen()
{
    const QString path =
        style::askForFile(&m_parts.window, tr("Open a plan"), m_parts.state.lastFolder(), planFilter());
    if (!path.isEmpty())
        openPath(path);
}

bool FileCommands::openPath(const QString& path)
{
    if (!mayLeave())
        return false;
    if (const auto refusal = m_parts.session.open(path)) {
        tellRefusal(tr("“%1” was not opened.").arg(QFileInfo(path).fileName()), *refusal);
        return false;
    }
    m_parts.strips.drop(QStringLiteral("file"));
    m_parts.strips.drop(QStringLiteral("disk"));
    m_parts.recent.add(m_parts.session.path());
    m_parts.state.setLastFolder(QFileInfo(path).absolutePath());
    Q_EMIT opened();
    return true;
}

bool FileCommands::save()
{
    m_parts.finishEntry();
    if (m_parts.session.path().isEmpty() || m_parts.document.readOnly())
        return saveAs();
    if (const auto refusal = m_parts.session.save()) {
        if (refusal->id != "session.changed-on-disk") // that one has its own strip
            tellRefusal(tr("The plan was not saved."), *refusal);
        return false;
    }
    return true;
}

bool FileCommands::saveAs()
{
    m_parts.finishEntry();
    QFileDialog dialog(&m_parts.window, tr("Save the plan as"), m_parts.state.lastFolder(), planFilter());
    style::showKindsOnly(dialog);
    dialog.setAcceptMode(QFileDialog::AcceptSave);
    dialog.setDefaultSuffix(ending.mid(1));
    dialog.selectFile(m_parts.session.path().isEmpty() ? m_parts.session.displayName() + ending
                                                       : m_parts.session.path());
    if (dialog.exec() != QDialog::Accepted || dialog.selectedFiles().isEmpty())
        return false;
    const QString path = dialog.selectedFiles().constFirst();
    if (const auto refusal = m_parts.session.saveAs(path)) {
        tellRefusal(tr("The plan was not saved."), *refusal);
        return false;
    }
    m_parts.state.setLastFolder(QFileInfo(path).absolutePath());
    return true;
}

void FileCommands::revert()
{
    if (m_parts.session.path().isEmpty()) {
        m_parts.document.say(tr("This plan was never saved: there is nothing to go back to."));
        return;
    }
    m_parts.finishGesture();
    if (const auto refusal = m_parts.session.revert())
        return tellRefusal(tr("The saved file could not be read again."), *refusal);
    m_parts.strips.drop(QStringLiteral("disk"));
    m_parts.document.say(tr("Back to the saved file."));
}

void FileCommands::tellRefusal(const QString& before, const base::Refusal& refusal)
{
    const text::RefusalWords words = text::wordsOf(refusal);
    QStringList parts{before};
    parts << (words.where.isEmpty() ? words.what : words.where + QStringLiteral(": ") + words.what);
    QString message = parts.join(u' ');
    if (!message.endsWith(u'.'))
        message += u'.';
    if (!words.mend.isEmpty())
        message += QStringLiteral(" %1%2").arg(words.mend.left(1).toUpper(), words.mend.mid(1));
    if (!message.endsWith(u'.'))
        message += u'.';
    m_parts.strips.show({QStringLiteral("file"), Weight::fault, message, {}});
}

} // namespace sumpwright::ui::window
