// QuietLabel: a wrapped line of words in a colour of the theme: a hint, a refusal, a result, a stale result.
#pragma once

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

protected:
    void enterEvent(QEnterEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    void recolour();

    Tone m_tone;
};

} // namespace sumpwright::ui::properties
