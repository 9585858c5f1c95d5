#include "ui/style/file_box.hpp"

#include <QCoreApplication>
#include <QFileDialog>
#include <QFileIconProvider>
#include <QFileInfo>

namespace sumpwright::ui::style
{

namespace
{

class KindIcons final : public QFileIconProvider
{
public:
    QIcon icon(IconType kind) const override { return QFileIconProvider::icon(kind); }
    QIcon icon(const QFileInfo& file) const override { return icon(file.isDir() ? Folder : File); }
    QString type(const QFileInfo& file) const override
    {
        return file.isDir() ? QCoreApplication::translate("FileBox", "Folder")
                            : QCoreApplication::translate("FileBox", "File");
    }
};

} // namespace

void showKindsOnly(QFileDialog& box)
{
    static KindIcons icons; // outlives every box and the thread that fills it
    box.setIconProvider(&icons);
}

QString askForFile(QWidget* parent, const QString& title, const QString& folder, const QString& kinds)
{
    QFileDialog box(parent, title, folder, kinds);
    showKindsOnly(box);
    box.setFileMode(QFileDialog::ExistingFile);
    return box.exec() == QDialog::Accepted ? box.selectedFiles().value(0) : QString();
}

} // namespace sumpwright::ui::style
