// FoldColumn: the side charts in one scrolling column, each under a title that folds it away.
#pragma once

#include <QScrollArea>

QT_BEGIN_NAMESPACE
class QToolButton;
class QVBoxLayout;
QT_END_NAMESPACE

namespace sumpwright::ui::window
{

// One fold: a title line that is a button, and the content below.
class Fold : public QWidget
{
    Q_OBJECT

public:
    Fold(const QString& id, const QString& title, QWidget* content, QWidget* parent);

    const QString& id() const { return m_id; }
    bool open() const;
    void setOpen(bool open);
    QWidget* content() const { return m_content; }

Q_SIGNALS:
    void toggled(bool open);

private:
    QString m_id;
    QToolButton* m_title;
    QWidget* m_content;
};

class FoldColumn : public QScrollArea
{
    Q_OBJECT

public:
    explicit FoldColumn(QWidget* parent = nullptr);

    Fold* add(const QString& id, const QString& title, QWidget* content);
    void reveal(const QString& id); // unfolds, scrolls there and focuses the content
    QStringList foldedIds() const;
    void setFoldedIds(const QStringList& ids);

private:
    QVBoxLayout* m_rows;
    QList<Fold*> m_folds;
};

} // namespace sumpwright::ui::window
