// EntryLine: one typed value of a question; empty is a value too. Text that cannot be read is told by the page and the
// value before stays the one that counts; Esc gives it back.
#pragma once

#include <functional>
#include <optional>

#include <QLineEdit>

#include "core/base/outcome.hpp"

namespace sumpwright::ui::design
{

class EntryLine : public QLineEdit
{
    Q_OBJECT

public:
    // Takes the text, or refuses it.
    using Accept = std::function<std::optional<base::Refusal>(const QString& text)>;

    EntryLine(const QString& name, const QString& whenEmpty, Accept accept, QWidget* parent = nullptr);
    void setShown(const QString& text);

Q_SIGNALS:
    void accepted();
    void refused(const QString& sentence);

protected:
    void keyPressEvent(QKeyEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;

private:
    void handOver();

    Accept m_accept;
    QString m_shown;
};

} // namespace sumpwright::ui::design
