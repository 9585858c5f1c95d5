// FileCommands: the File menu - new, open, save, recover, export - and every question and message that belongs to it.
#pragma once

#include <functional>

#include <QObject>
#include <QString>

#include "core/base/outcome.hpp"

QT_BEGIN_NAMESPACE
class QMenu;
class QWidget;
QT_END_NAMESPACE

namespace sumpwright::ui::document
{
class Document;
class RecentPlans;
class Session;
struct RecoveryOffer;
} // namespace sumpwright::ui::document

namespace sumpwright::ui::window
{

class Commands;
class StripStack;
class WindowState;

class FileCommands : public QObject
{
    Q_OBJECT

public:
    struct Parts {
        document::Document& document;
        document::Session& session;
        document::RecentPlans& recent;
        WindowState& state;
        StripStack& strips;
        QWidget& window;
        std::function<void()> finishEntry;   // what is typed in a field counts before anything is saved or left
        std::function<void()> finishGesture; // what is half drawn ends before the plan is left
    };
    explicit FileCommands(const Parts& parts);

    void addTo(Commands& commands);
    void fillRecentMenu(QMenu& menu);
    void fillExampleMenu(QMenu& menu);

    // Asks Save / Discard / Cancel when there is something to lose. False: stay.
    bool mayLeave();
    bool openPath(const QString& path); // asks first; a refusal becomes a strip
    void offerRecovery();

Q_SIGNALS:
    void opened(); // another plan is on view

private:
    void startNew();
    void chooseAndOpen();
    void openExample(const QString& resource);
    bool save();
    bool saveAs();
    void revert();
    void recover(const document::RecoveryOffer& offer);
    void tellChangedOnDisk(bool missing);
    void tellHolder();
    void tellRefusal(const QString& before, const base::Refusal& refusal);

    Parts m_parts;
};

} // namespace sumpwright::ui::window
