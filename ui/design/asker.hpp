// Asker: works out one question at a time on a thread of its own and brings the answer back to the window's thread.
// A newer question stops the one at work; its answer is never delivered. A fault of the program met on the way is
// told, not thrown.
#pragma once

#include <atomic>
#include <functional>
#include <memory>

#include <QObject>
#include <QThreadPool>

#include "core/base/stop.hpp"

namespace sumpwright::ui::design
{

class Asker : public QObject
{
    Q_OBJECT

public:
    using Deliver = std::function<void()>;                      // on the window's thread
    using Job = std::function<Deliver(const base::StopToken&)>; // on the other

    explicit Asker(QObject* parent = nullptr);
    ~Asker() override;

    void ask(Job job);
    void stop(); // nothing is delivered
    bool busy() const { return m_busy; }

Q_SIGNALS:
    void busyChanged();
    void faultMet(const QString& what);

private:
    void arrived(int number, const Deliver& deliver, const QString& fault);

    QThreadPool m_pool;
    std::shared_ptr<std::atomic<bool>> m_flag;
    int m_number = 0;
    bool m_busy = false;
};

} // namespace sumpwright::ui::design
