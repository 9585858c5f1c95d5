// TypedLengths: numbers typed while a gesture lasts; each fixes one length. "1.2", "1200 mm", "4 ft 2 in"; a bare
// number is metres, in US units feet. The letter x goes on to the next length, Backspace takes back.
#pragma once

#include <QString>
#include <QStringList>

#include <optional>

#include "core/units/measures.hpp"
#include "ui/canvas/figures.hpp"

QT_BEGIN_NAMESPACE
class QKeyEvent;
QT_END_NAMESPACE

namespace sumpwright::ui::tools
{

class TypedLengths
{
public:
    explicit TypedLengths(int count = 1) : m_texts(count) {}
    bool key(const QKeyEvent& event); // true: taken
    void clear();
    bool empty() const;
    // What was typed for one of the lengths, where it reads as a positive length.
    std::optional<units::Length> length(int index, const canvas::Figures& figures) const;
    std::optional<units::Length> coordinate(int index, const canvas::Figures& figures) const; // may be zero
    QString text() const; // "1.2 x 0.6", for the read-out

private:
    QStringList m_texts;
    int m_at = 0;
};

} // namespace sumpwright::ui::tools
