// PlacePumpTool: a click inside a vessel stands a pump there.
#pragma once

#include <memory>
#include <string>

#include "core/catalogue/catalogue.hpp"
#include "ui/tools/click_tool.hpp"

QT_BEGIN_NAMESPACE
class QComboBox;
QT_END_NAMESPACE

namespace sumpwright::ui::tools
{

class ToolStrip;

class PlacePumpTool final : public ClickTool
{
    Q_OBJECT

public:
    explicit PlacePumpTool(canvas::PlanView& view);
    void begin() override;
    void end() override;
    QString hint() const override;
    const std::string& model() const { return m_model; }
    void setModel(std::string catalogueId) { m_model = std::move(catalogueId); }

protected:
    void clicked(const canvas::CanvasPointer& pointer) override;
    void pointed(const canvas::CanvasPointer& pointer) override;

private:
    void offerPumps();

    std::string m_model;
    QComboBox* m_pumps = nullptr;
    std::shared_ptr<const catalogue::Catalogue> m_tables; // those the choice shows
    ToolStrip* m_strip = nullptr;
};

} // namespace sumpwright::ui::tools
