// LogFile: what the program and Qt had to say, in the state folder, for whoever is asked why something went wrong.
// Kept below one megabyte: a full log is put aside once as "log.old". Never leaves the machine by itself.
#pragma once

#include <QString>

namespace sumpwright::ui::window
{

// Sends Qt's messages to stateFolder/log from here on. A fatal message ends the program with exit code 1 and one line
// on standard error, not with a core dump.
void startLog(const QString& stateFolder);
void writeLog(const QString& line);
QString logPath(); // empty before startLog()

// Version, system and the last lines of the log, for pasting into a letter. Plan contents are not in it.
QString details();

} // namespace sumpwright::ui::window
