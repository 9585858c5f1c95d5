// QuietLabel: a wrapped line of words in a colour of the theme: a hint, a refusal, a result, a stale result.
// Its height can be kept from following its words: room for a longer text, and a height that only grows while held.
#pragma once

#include <QHash>
#include <QLabel>

namespace sumpwright::ui::properties
{

class QuietLabel : public QLabel
{
    Q_OBJECT

public:
    enum class Tone { plain, quiet, fault, caution, stale };

    explicit QuietLabel(Tone tone, QWidget* parent = nullptr);

    void setTone(Tone tone);
    Tone tone() const { return m_tone; }

    void setRoomFor(const QString& longest); // never lower than this text would be
    void holdHeight(bool hold);              // from now on never lower than it was, until let go

    int heightForWidth(int width) const override;

protected:
    void enterEvent(QEnterEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    void recolour();
    int measured(int width) const;

    Tone m_tone;
    QString m_longest;
    bool m_hold = false;
    mutable QString m_measured;         // the text whose heights are known
    mutable QHash<int, int> m_heightOf; // by width
    mutable QHash<int, int> m_heldAt;   // the greatest height so far, by width
};

} // namespace sumpwright::ui::properties
