// RowList: a section whose rows come and go with the plan: corners, vertices, ports, fittings. A row is told by its
// key and stays, with whatever is being typed in it, as long as its key does.
#pragma once

#include <map>
#include <string>
#include <vector>

#include "ui/properties/section.hpp"

namespace sumpwright::ui::properties
{

class RowList : public Section
{
    Q_OBJECT

public:
    RowList(Chosen chosen, const QString& title, QWidget* parent = nullptr);

    void refresh() override;
    void refreshResults() override;
    std::vector<Section*> sections() const; // the rows in order

protected:
    void addBelow(QWidget* widget); // under the last row
    using Keys = std::vector<std::string>;
    virtual Keys keysNow() const = 0; // in order, each once
    virtual Section* makeRow(const std::string& key, std::size_t index) = 0;

private:
    void settle();

    Keys m_keys;
    std::map<std::string, Section*> m_rowOf;
    QVBoxLayout* m_column;
};

} // namespace sumpwright::ui::properties
