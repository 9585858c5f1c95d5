#include "ui/design/asker.hpp"

#include <exception>
#include <utility>

namespace sumpwright::ui::design
{

Asker::Asker(QObject* parent) : QObject(parent) { m_pool.setMaxThreadCount(1); }

Asker::~Asker()
{
    if (m_flag)
        m_flag->store(true);
    m_pool.waitForDone();
}

void Asker::ask(Job job)
{
    if (m_flag)
        m_flag->store(true);
    m_flag = std::make_shared<std::atomic<bool>>(false);
    const int number = ++m_number;
    m_busy = true;
    Q_EMIT busyChanged();
    m_pool.start([this, number, job = std::move(job), token = base::StopToken(m_flag)] {
        Deliver deliver;
        QString fault;
        try {
            deliver = job(token);
        } catch (const base::Stopped&) {
            return;
        } catch (const std::exception& met) {
            fault = QString::fromUtf8(met.what());
        }
        QMetaObject::invokeMethod(
            this, [this, number, deliver, fault] { arrived(number, deliver, fault); }, Qt::QueuedConnection);
    });
}

void Asker::stop()
{
    if (!m_busy)
        return;
    m_flag->store(true);
    ++m_number;
    m_busy = false;
    Q_EMIT busyChanged();
}

void Asker::arrived(int number, const Deliver& deliver, const QString& fault)
{
    if (number != m_number)
        return;
    m_busy = false;
    if (fault.isEmpty())
        deliver();
    else
        Q_EMIT faultMet(fault);
    Q_EMIT busyChanged();
}

} // namespace sumpwright::ui::design
