#include "ui/document/recent_plans.hpp"

#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QSaveFile>

namespace sumpwright::ui::document
{

RecentPlans::RecentPlans(const QString& stateFolder, QObject* parent)
    : QObject(parent), m_file(QDir(stateFolder).filePath(QStringLiteral("recent-plans")))
{
    read();
}

void RecentPlans::read()
{
    QFile file(m_file);
    if (file.open(QIODevice::ReadOnly))
        m_paths = QString::fromUtf8(file.readAll()).split(u'\n', Qt::SkipEmptyParts).mid(0, most);
}

void RecentPlans::add(const QString& path)
{
    const QString absolute = QFileInfo(path).absoluteFilePath();
    if (absolute.contains(u'\n'))
        return; // a line is a path in the list's file
    read();     // another window may have added its own
    m_paths.removeAll(absolute);
    m_paths.prepend(absolute);
    m_paths = m_paths.mid(0, most);
    write();
    Q_EMIT changed();
}

void RecentPlans::clear()
{
    m_paths.clear();
    write();
    Q_EMIT changed();
}

// A list that can't be written is no reason to disturb anybody: it is only a convenience.
void RecentPlans::write() const
{
    QDir().mkpath(QFileInfo(m_file).absolutePath());
    QSaveFile file(m_file);
    if (!file.open(QIODevice::WriteOnly))
        return;
    file.write(m_paths.join(u'\n').toUtf8());
    file.commit();
}

} // namespace sumpwright::ui::document
