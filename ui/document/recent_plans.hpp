// RecentPlans: the last ten plans opened or saved, newest first, kept in the state folder.
#pragma once

#include <QObject>
#include <QString>
#include <QStringList>

namespace sumpwright::ui::document
{

class RecentPlans : public QObject
{
    Q_OBJECT

public:
    static constexpr int most = 10;

    explicit RecentPlans(const QString& stateFolder, QObject* parent = nullptr);

    QStringList paths() const { return m_paths; } // missing files stay listed
    void add(const QString& path);
    void clear();

Q_SIGNALS:
    void changed();

private:
    void read();
    void write() const;

    QString m_file;
    QStringList m_paths;
};

} // namespace sumpwright::ui::document
