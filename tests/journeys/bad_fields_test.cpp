// Bad entries in every field of every form, by keys: refused beside the field with place and reason, or taken and
// undone; the old value stays, the file is as it was, and no text on view is no number.
#include <set>

#include <QApplication>
#include <QLabel>
#include <QLineEdit>
#include <QRegularExpression>

#include "tests/journeys/watched_window.hpp"
#include "ui/properties/form.hpp"
#include "ui/properties/properties_panel.hpp"
#include "ui/window/panels.hpp"

namespace sumpwright::tests
{
namespace
{

struct Entry {
    QString text;
    bool neverANumber; // of any kind, in any field
};

std::vector<Entry> badEntries()
{
    const auto words = [](const char* text) { return QString::fromLatin1(text); };
    return {{words("lots of water"), true}, {words("3 furlongs"), true},  {words("1.234,5"), true},
            {words("nan"), true},           {words("inf"), true},         {words("1e999"), true},
            {words("1/0"), true},           {words("0/0 m"), true},       {words("((((((1 m"), true},
            {QString(10000, u'('), true},   {QString(10000, u'x'), true}, {QString(10000, u'9') + words(" m"), true},
            {words("3 kg"), false},         {words("20 degC"), false},    {words("-1"), false},
            {words("-1 m"), false},         {words("0"), false},          {words("1e30"), false},
            {words("1e300 m"), false},      {words("1e-300 m"), false},   {QString(), false}};
}

// Fields of words take words; of everything else a number is asked.
bool takesWords(const QString& name)
{
    static const QRegularExpression words(
        QStringLiteral("\\b(tag|name|client|designer|text|note|words|label|place)\\b"),
        QRegularExpression::CaseInsensitiveOption);
    return words.match(name).hasMatch();
}

class BadFields : public WatchedWindow
{
protected:
    ui::properties::PropertiesPanel& form() const { return window.panels().properties(); }
    QLineEdit* field() const
    {
        auto* line = qobject_cast<QLineEdit*>(QApplication::focusWidget());
        return line && form().isAncestorOf(line) && !line->isReadOnly() ? line : nullptr;
    }
    bool saidOnScreen(const QString& words) const
    {
        for (const QLabel* label : form().findChildren<QLabel*>())
            if (label->isVisible() && label->text() == words)
                return true;
        return false;
    }

    void tryEntry(const Entry& entry, const QString& name, const QString& before)
    {
        const std::string what = name.toStdString() + " given '" + entry.text.left(30).toStdString() + "'";
        ++tried;
        press(Qt::Key_A, Qt::ControlModifier);
        entry.text.isEmpty() ? press(Qt::Key_Delete) : paste(entry.text);
        press(Qt::Key_Return);
        if (!keys.named(name)) { // a corner that came to lie on its neighbour is none: its row is gone
            press(Qt::Key_Z, Qt::ControlModifier);
            EXPECT_FALSE(modified()) << what << " is not undone in one step";
            ASSERT_TRUE(keys.named(name)) << what;
            keys.goTo(*keys.named(name));
            ASSERT_TRUE(field()) << what;
            return;
        }
        ASSERT_TRUE(field()) << what << ": the keyboard left the field";
        const QString said = field()->accessibleDescription();
        if (!said.isEmpty()) {
            ++refused;
            EXPECT_TRUE(saidOnScreen(said)) << what << ": told, but not shown: " << said.toStdString();
            EXPECT_GT(said.indexOf(QStringLiteral(": ")), 0) << what << ": no place: " << said.toStdString();
            EXPECT_GT(said.size(), 20) << what << ": no reason: " << said.toStdString();
            EXPECT_LT(said.size(), 700) << what << ": too long to read";
            EXPECT_FALSE(modified()) << what << ": refused, yet the plan changed";
            press(Qt::Key_Escape);
        } else {
            EXPECT_TRUE(!entry.neverANumber || takesWords(name)) << what << " was taken";
            if (modified()) {
                settle();
                if (!takesWords(name)) // which may be any words
                    expectSound(what, false);
                press(Qt::Key_Z, Qt::ControlModifier);
                EXPECT_FALSE(modified()) << what << " is not undone in one step";
            }
        }
        ASSERT_TRUE(field()) << what;
        EXPECT_EQ(field()->accessibleName(), name) << what;
        EXPECT_EQ(field()->text(), before) << what << ": the old value is gone";
        EXPECT_TRUE(field()->accessibleDescription().isEmpty()) << what;
    }

    void tryForm()
    {
        for (int i = 0; i < 8 && !form().isAncestorOf(QApplication::focusWidget()); ++i)
            press(Qt::Key_F6);
        std::set<QString> seen;
        for (int i = 0; i < 200 && !HasFatalFailure(); ++i) {
            if (QLineEdit* line = field(); line && seen.insert(line->accessibleName()).second) {
                const QString name = line->accessibleName();
                const QString before = line->text();
                for (const Entry& entry : badEntries()) {
                    if (entry.text.size() > 100 && fields % 10 > 0)
                        continue; // slow to lay out: in every tenth field
                    tryEntry(entry, name, before);
                    if (HasFatalFailure())
                        return;
                }
                ++fields;
            }
            press(Qt::Key_Tab);
        }
        expectSound("a form of bad entries");
        keys.backToPlan();
    }

    int fields = 0;
    int tried = 0;
    int refused = 0;
};

TEST_F(BadFields, OfEveryElementAreRefusedOrUndone)
{
    const QString path = openExample("back_garden");
    const QByteArray saved = bytesOf(path);
    const int width = window.width();
    std::set<QString> kinds; // of forms, by their captions
    for (int i = 0; i < 80; ++i) {
        press(Qt::Key_N);
        QString kind = QString::fromLatin1(form().form()->metaObject()->className());
        for (const auto id : work.document.selection())
            if (const auto* vessel = work.document.committed().vessels.find(id))
                kind += QString::number(static_cast<int>(vessel->kind));
        if (!kinds.insert(kind).second)
            continue;
        tryForm();
        if (HasFatalFailure())
            return;
    }
    EXPECT_GE(kinds.size(), 6u);
    EXPECT_GT(fields, 60);
    EXPECT_GT(refused, tried / 2);
    EXPECT_EQ(window.width(), width) << "an entry widened the window";
    EXPECT_EQ(bytesOf(path), saved);
    press(Qt::Key_S, Qt::ControlModifier);
    EXPECT_EQ(bytesOf(path), saved);
}

TEST_F(BadFields, OfSiteAndFloorAreRefusedOrUndone)
{
    const QString path = openExample("back_garden");
    const QByteArray saved = bytesOf(path);
    press(Qt::Key_Escape); // nothing chosen: the site
    tryForm();
    const int ofSite = fields;
    EXPECT_GT(ofSite, 5);
    for (int i = 0; i < 8 && !form().isAncestorOf(QApplication::focusWidget()); ++i)
        press(Qt::Key_F6);
    const QString site = QString::fromLatin1(form().form()->metaObject()->className());
    for (int i = 0; i < 60 && site == QLatin1String(form().form()->metaObject()->className()); ++i) {
        press(Qt::Key_Right); // on the tabs it goes to the next
        press(Qt::Key_Tab, Qt::NoModifier);
    }
    ASSERT_NE(site, QLatin1String(form().form()->metaObject()->className())) << "the floor is not reached by keys";
    tryForm();
    EXPECT_GT(fields, ofSite + 5);
    press(Qt::Key_S, Qt::ControlModifier);
    EXPECT_EQ(bytesOf(path), saved);
}

} // namespace
} // namespace sumpwright::tests
