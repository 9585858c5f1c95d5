// EngineBridge: carries the shown plan to the engine and its results back to the window's thread.
//
// At most one delivery per frame (16 ms); results older than the ones shown are dropped; the window never waits.
#pragma once

#include <chrono>
#include <memory>

#include <QObject>

#include "core/assessment/assessment.hpp"
#include "core/catalogue/catalogue.hpp"
#include "core/plan/plan.hpp"

namespace sumpwright::ui::document
{

class Document;

class EngineBridge : public QObject
{
    Q_OBJECT

public:
    static constexpr std::chrono::milliseconds frame{16};

    EngineBridge(Document& document, std::shared_ptr<const catalogue::Catalogue> catalogue);
    ~EngineBridge() override; // stops the worker first

    void submit(const plan::Plan& plan, quint64 revision);

private:
    struct Worker; // owns the engine and the slot its results wait in
    void deliver();

    Document& m_document;
    std::unique_ptr<Worker> m_worker;
};

} // namespace sumpwright::ui::document
