// QuietLabel: a wrapped line of words in a colour of the theme: a hint, a refusal, a result, a stale result.
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

    int heightForWidth(int width) const override;

protected:
    void enterEvent(QEnterEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    void recolour();

    Tone m_tone;
    mutable QString m_measured;         // the text whose heights are known
    mutable QHash<int, int> m_heightOf; // by width
};

} // namespace sumpwright::ui::properties
