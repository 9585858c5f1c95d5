#include "ui/window/commands.hpp"

#include <QWidget>

#include "core/base/ensure.hpp"

namespace sumpwright::ui::window
{

namespace
{

QString withoutMnemonic(QString text)
{
    text.remove(u'&');
    if (text.endsWith(u'…'))
        text.chop(1);
    return text;
}

QKeySequence keysOf(const CommandSpec& spec)
{
    return QKeySequence(QString::fromLatin1(spec.key), QKeySequence::PortableText);
}

} // namespace

QString tipWithKey(const QAction& action, const QString& tip)
{
    QString first = withoutMnemonic(action.text());
    if (!action.shortcut().isEmpty())
        first += QStringLiteral(" (%1)").arg(action.shortcut().toString(QKeySequence::NativeText));
    return QStringLiteral("<b>%1</b><br>%2").arg(first.toHtmlEscaped(), tip.toHtmlEscaped());
}

Commands::Commands(QWidget* window, QWidget* planView) : QObject(window), m_window(window), m_planView(planView) {}

QAction* Commands::make(const CommandSpec& spec)
{
    base::ensure(!m_actions.contains(spec.id), "a command is added once");
    auto* action = new QAction(spec.text, this);
    action->setObjectName(QString::fromStdString(spec.id));
    action->setCheckable(spec.checkable);
    if (!spec.barText.isEmpty())
        action->setIconText(spec.barText);
    action->setShortcut(keysOf(spec));
    action->setToolTip(tipWithKey(*action, spec.tip));
    action->setStatusTip(spec.tip);
    if (spec.scope == Scope::planView) {
        action->setShortcutContext(Qt::WidgetWithChildrenShortcut);
        m_planView->addAction(action);
    } else {
        m_window->addAction(action);
    }
    m_order.push_back(spec.id);
    m_specs.emplace(spec.id, spec);
    m_actions.emplace(spec.id, action);
    return action;
}

QAction* Commands::add(const CommandSpec& spec, std::function<void()> run)
{
    QAction* action = make(spec);
    connect(action, &QAction::triggered, this, [run = std::move(run)] { run(); });
    return action;
}

QAction* Commands::addCheckable(const CommandSpec& spec, std::function<void(bool)> run)
{
    CommandSpec checkable = spec;
    checkable.checkable = true;
    QAction* action = make(checkable);
    connect(action, &QAction::triggered, this, [run = std::move(run)](bool on) { run(on); });
    return action;
}

QAction* Commands::find(const std::string& id) const
{
    const auto found = m_actions.find(id);
    base::ensure(found != m_actions.end(), "a command is asked for by an id that exists");
    return found->second;
}

const CommandSpec& Commands::spec(const std::string& id) const
{
    const auto found = m_specs.find(id);
    base::ensure(found != m_specs.end(), "a command is asked for by an id that exists");
    return found->second;
}

void Commands::setLetterKeys(bool on)
{
    for (const auto& [id, spec] : m_specs) {
        if (spec.scope != Scope::planView)
            continue;
        QAction* action = find(id);
        action->setShortcut(on ? keysOf(spec) : QKeySequence());
        action->setToolTip(tipWithKey(*action, spec.tip));
    }
}

void Commands::markChanging(const std::string& id) { m_changing.insert(id); }

void Commands::setReadOnly(bool readOnly)
{
    for (const std::string& id : m_changing)
        find(id)->setEnabled(!readOnly);
}

} // namespace sumpwright::ui::window
