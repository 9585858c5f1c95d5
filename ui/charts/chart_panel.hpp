// ChartPanel: what every side chart is: the answer in one sentence, the chart, and the value read under the pointer or
// by arrow keys. Left and Right read from value to value, Home and End jump, Enter shows the element in plan.
// Results that come while the panel is hidden only mark it; it draws when it is shown, at most once per results.
#pragma once

#include <functional>
#include <memory>
#include <vector>

#include <QWidget>

#include "ui/charts/reading.hpp"
#include "ui/document/document.hpp"
#include "ui/style/palette.hpp"
#include "ui/text/display.hpp"

QT_BEGIN_NAMESPACE
class QChart;
class QLabel;
class QMenu;
class QPushButton;
QT_END_NAMESPACE

namespace sumpwright::ui::charts
{

class ReadableView;

using DisplayNow = std::function<text::DisplaySettings()>;

class ChartPanel : public QWidget
{
    Q_OBJECT

public:
    ChartPanel(document::Document& document, DisplayNow display, const QString& question, QWidget* parent = nullptr);
    ~ChartPanel() override;

    const QString& question() const { return m_question; } // the title: "Where does the head go?"
    QString sentence() const;                              // the answer, to be read aloud
    const std::vector<Reading>& readings() const { return m_readings; }
    const ChartTable& table() const { return m_table; }
    QString readOut() const; // the value last read
    int readIndex() const { return m_read; }
    void read(int index); // out of range: nothing is read

    bool savePicture(const QString& path); // .png or .svg; false: could not be written
    bool saveNumbers(const QString& path); // .csv
    void askPicture();                     // asks for the file first
    void askNumbers();
    void copyNumbers(); // as comma-separated values
    void copySentence();
    void askWorking(); // opens it where there is one, says so where there is none
    void refresh(); // the display settings changed

    // The working of the value last read; of the sentence's first figure while none is. Nothing where there is none.
    std::optional<assessment::Working> working() const;

Q_SIGNALS:
    void workingWanted(const sumpwright::assessment::Working& working);

public:
    QSize sizeHint() const override { return {400, 320}; }
    QSize minimumSizeHint() const override { return {280, 310}; }

protected:
    // Fills chart, readings and table from results; called with results present.
    virtual void draw(const assessment::Assessment& results, const style::Theme& theme) = 0;

    void setSentence(const QString& sentence);
    void setReadings(std::vector<Reading> readings) { m_readings = std::move(readings); }
    void setWorking(WorkingOf working) { m_working = std::move(working); }
    void setTable(ChartTable table) { m_table = std::move(table); }
    QChart& chart() { return *m_chart; }
    text::DisplaySettings display() const { return m_display(); }
    document::Document& document() { return m_document; }
    void addControl(QWidget* control); // above the chart

    bool event(QEvent* event) override;
    void showEvent(QShowEvent* event) override;
    void contextMenuEvent(QContextMenuEvent* event) override;

private:
    void resultsCame();
    void redraw();
    void keyRead(int key);
    void offerWorking();

    document::Document& m_document;
    DisplayNow m_display;
    QString fileName(const QString& ending) const;

    QString m_question;
    QLabel* m_sentence;
    QLabel* m_readOut;
    QPushButton* m_workingButton;
    WorkingOf m_working; // of the sentence
    QChart* m_chart;
    ReadableView* m_view;
    std::vector<Reading> m_readings;
    ChartTable m_table;
    int m_read = -1;
    bool m_dirty = true;
    bool m_redrawing = false;
    std::shared_ptr<const assessment::Assessment> m_drawn;
    const style::Theme* m_dressed = nullptr; // dressing a chart lays it out anew
};

// Dresses a chart for paper in the theme's colours and the body font; once per theme.
void dress(QChart& chart, const style::Theme& theme);

} // namespace sumpwright::ui::charts
