#include "ui/tools/click_tool.hpp"

#include <utility>

namespace sumpwright::ui::tools
{

void ClickTool::pressed(const canvas::CanvasPointer& pointer)
{
    if (mayEdit())
        m_pressed = pointer;
}

void ClickTool::moved(const canvas::CanvasPointer& pointer)
{
    if (m_pressed && !(pointer.buttons & Qt::LeftButton))
        giveBack(); // let go where nobody saw it
    pointed(pointer);
}

void ClickTool::released(const canvas::CanvasPointer& pointer)
{
    if (!m_pressed)
        return;
    const auto pressed = *std::exchange(m_pressed, std::nullopt);
    if (!takenOut(pointer))
        clicked(pressed);
}

void ClickTool::giveBack()
{
    m_pressed.reset();
    show({});
}

} // namespace sumpwright::ui::tools
