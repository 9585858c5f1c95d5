#include "ui/canvas/accessibility.hpp"

#include <QAccessibleObject>
#include <QAccessibleWidget>

#include <algorithm>

#include "ui/canvas/element_item.hpp"
#include "ui/canvas/plan_scene.hpp"
#include "ui/canvas/plan_view.hpp"
#include "ui/document/document.hpp"

namespace sumpwright::ui::canvas
{

namespace
{
PlanView* viewOf(const ElementItem& item)
{
    if (!item.scene())
        return nullptr;
    for (auto* view : item.scene()->views())
        if (auto* found = qobject_cast<PlanView*>(view))
            return found;
    return nullptr;
}

class ElementAccess final : public QAccessibleObject, public QAccessibleActionInterface
{
public:
    using QAccessibleObject::QAccessibleObject;

    ElementItem* item() const { return qobject_cast<ElementItem*>(object()); }
    QAccessibleInterface* parent() const override
    {
        auto* view = item() ? viewOf(*item()) : nullptr;
        return view ? QAccessible::queryAccessibleInterface(view) : nullptr;
    }
    QAccessibleInterface* child(int) const override { return nullptr; }
    int childCount() const override { return 0; }
    int indexOfChild(const QAccessibleInterface*) const override { return -1; }
    QAccessible::Role role() const override { return QAccessible::ListItem; }
    QString text(QAccessible::Text kind) const override
    {
        if (!item())
            return {};
        if (kind == QAccessible::Name)
            return item()->name();
        return kind == QAccessible::Description ? item()->description() : QString();
    }
    QRect rect() const override
    {
        const auto* view = item() ? viewOf(*item()) : nullptr;
        if (!view)
            return {};
        const QRect inView = view->mapFromScene(item()->extent()).boundingRect();
        return {view->viewport()->mapToGlobal(inView.topLeft()), inView.size()};
    }
    QAccessible::State state() const override
    {
        QAccessible::State state;
        state.selectable = true;
        state.focusable = true;
        state.selected = item() && item()->chosen();
        const auto* view = item() ? viewOf(*item()) : nullptr;
        state.focused = state.selected && view && view->hasFocus() && view->document().selection().size() == 1;
        return state;
    }
    void* interface_cast(QAccessible::InterfaceType type) override
    {
        return type == QAccessible::ActionInterface ? static_cast<QAccessibleActionInterface*>(this) : nullptr;
    }
    QStringList actionNames() const override { return {pressAction(), setFocusAction()}; }
    void doAction(const QString&) override
    {
        if (auto* view = item() ? viewOf(*item()) : nullptr) {
            view->document().select({item()->id()});
            view->showElements({item()->id()});
        }
    }
    QStringList keyBindingsForAction(const QString&) const override { return {}; }
};

class PlanAccess final : public QAccessibleWidget
{
public:
    explicit PlanAccess(QWidget* widget) : QAccessibleWidget(widget, QAccessible::List) {}

    std::vector<ElementItem*> items() const { return static_cast<PlanView*>(widget())->planScene().elements(); }
    int childCount() const override { return static_cast<int>(items().size()); }
    QAccessibleInterface* child(int index) const override
    {
        const auto all = items();
        const auto at = static_cast<std::size_t>(index);
        return index >= 0 && at < all.size() ? QAccessible::queryAccessibleInterface(all[at]) : nullptr;
    }
    int indexOfChild(const QAccessibleInterface* child) const override
    {
        const auto all = items();
        const auto at = std::find(all.begin(), all.end(), qobject_cast<ElementItem*>(child->object()));
        return at == all.end() ? -1 : static_cast<int>(at - all.begin());
    }
    QAccessibleInterface* focusChild() const override
    {
        for (auto* item : items())
            if (item->chosen() && widget()->hasFocus())
                return QAccessible::queryAccessibleInterface(item);
        return QAccessibleWidget::focusChild();
    }
};

QAccessibleInterface* make(const QString& className, QObject* object)
{
    if (className == QLatin1String(PlanView::staticMetaObject.className()))
        return new PlanAccess(static_cast<QWidget*>(object));
    if (className == QLatin1String(ElementItem::staticMetaObject.className()))
        return new ElementAccess(object);
    return nullptr;
}
} // namespace

void installAccessibility()
{
    QAccessible::removeFactory(make);
    QAccessible::installFactory(make);
}

} // namespace sumpwright::ui::canvas
