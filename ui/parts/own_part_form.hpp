// OwnPartForm: the fields of one own part; each entry is one undo step, what is refused stands beneath its field.
#pragma once

#include <functional>
#include <optional>
#include <string>
#include <vector>

#include <QWidget>

#include "core/base/outcome.hpp"
#include "core/plan/edits/edit.hpp"
#include "core/plan/own_parts.hpp"
#include "ui/properties/choice_field.hpp"
#include "ui/text/display.hpp"

QT_BEGIN_NAMESPACE
class QFormLayout;
QT_END_NAMESPACE

namespace sumpwright::ui::document
{
class Document;
}

namespace sumpwright::ui::parts
{

class OwnPartForm : public QWidget
{
    Q_OBJECT

public:
    using Display = std::function<text::DisplaySettings()>;

    OwnPartForm(document::Document& document, Display display, QWidget* parent = nullptr);

    void showPart(const std::string& id); // hidden where there is no such own part
    void refresh();                       // the plan or the units changed
    void focusName();

    // For the rows in the .cpp, one set a kind of part.
    using Accept = std::function<std::optional<base::Refusal>(const QString& text)>;
    using Shown = std::function<QString()>;
    void addEntry(const QString& label, Accept accept, Shown shown, const QString& emptyWords = {});
    void addChoice(const QString& label, std::vector<properties::Choice> choices,
                   std::function<std::optional<base::Refusal>(const std::string& key)> accept,
                   std::function<std::string()> shown);
    const plan::OwnParts& parts() const;
    const std::string& id() const { return m_id; }
    text::DisplaySettings display() const { return m_display(); }
    std::optional<base::Refusal> commit(const plan::Edit& edit);

private:
    void rebuild();
    void addField(const QString& label, QWidget* field);

    document::Document& m_document;
    Display m_display;
    QFormLayout* m_rows;
    std::string m_id;
    std::string m_shape; // which rows stand there
    std::vector<std::function<void()>> m_refreshes;
};

} // namespace sumpwright::ui::parts
