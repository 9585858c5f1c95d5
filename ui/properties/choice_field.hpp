// ChoiceField: one of several words, with what was refused beneath it. Each choice is one undo step; the wheel
// scrolls the form and never the choice.
#pragma once

#include <functional>
#include <optional>
#include <string>
#include <vector>

#include <QWidget>

#include "core/base/outcome.hpp"

QT_BEGIN_NAMESPACE
class QComboBox;
QT_END_NAMESPACE

namespace sumpwright::ui::properties
{

class RefusalLine;

struct Choice {
    std::string key;
    QString words;
    QString tip; // may be empty
    friend bool operator==(const Choice&, const Choice&) = default;
};

class ChoiceField : public QWidget
{
    Q_OBJECT

public:
    using Accept = std::function<std::optional<base::Refusal>(const std::string& key)>;

    ChoiceField(const QString& name, std::vector<Choice> choices, Accept accept, QWidget* parent = nullptr);

    void setChoices(std::vector<Choice> choices); // unchanged ones are left alone
    void setShown(const std::string& key);        // a key that is no choice is shown as it is
    void setMixed();
    void setReadOnly(bool readOnly);

    QComboBox& box() { return *m_box; }
    QString refusalText() const;

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void handOver(int index);
    void showKey();

    QComboBox* m_box;
    RefusalLine* m_refusal;
    Accept m_accept;
    std::vector<Choice> m_choices;
    std::string m_key;
    bool m_mixed = false;
};

} // namespace sumpwright::ui::properties
