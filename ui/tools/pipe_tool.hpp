// PipeTool: draws a run from a port, pump, tee, run, vessel or from nowhere, corner by corner, to where it ends.
//
// A click on a free port, pump, tee or run ends it there; Enter or a double click ends it where it is, inside a vessel
// as a new inlet. L types the level (a vertical leg), a number fixes the length of the next leg, J walks the crosshair
// over the connections, Backspace drops the last corner, Esc the whole run. What the run starts from is no place for
// it to end, so that legs shorter than the reach of snapping can be drawn. Another tool's letter or a right press
// ends the run at its last corner.
#pragma once

#include <memory>

#include "core/catalogue/catalogue.hpp"
#include "ui/tools/pipe_sketch.hpp"
#include "ui/tools/tool.hpp"
#include "ui/tools/typed_lengths.hpp"

QT_BEGIN_NAMESPACE
class QComboBox;
class QLineEdit;
QT_END_NAMESPACE

namespace sumpwright::ui::tools
{

class ToolStrip;

class PipeTool final : public PointingTool
{
    Q_OBJECT

public:
    explicit PipeTool(canvas::PlanView& view);
    void begin() override;
    void end() override;
    QString hint() const override;
    bool busy() const override { return m_sketch.begun(); }
    void giveBack() override;
    void doubleClick(const canvas::CanvasPointer& pointer) override;

    const PipeSketch& sketch() const { return m_sketch; }
    QLineEdit* levelField() const { return m_level; }
    QComboBox* pipeChoice() const { return m_pipe; }
    QComboBox* serviceChoice() const { return m_service; }

protected:
    void pressed(const canvas::CanvasPointer& pointer) override;
    void moved(const canvas::CanvasPointer& pointer) override;
    void released(const canvas::CanvasPointer& pointer) override;
    bool otherKey(QKeyEvent& event) override;
    bool ownLetter(int key) const override;
    bool typing() const override { return !m_typed.empty(); }
    void keepFinished() override { finishHere(); }

private:
    Snapped meant(const canvas::CanvasPointer& pointer) const;
    Snapped offered(plan::Point raw, SnapRules rules) const;
    Snapped ontoStraight(const Snapped& found, plan::Point raw, const SnapRules& rules) const;
    Snapped atTyped(units::Length length, plan::Point raw, const SnapRules& rules) const;
    void noteStart(const plan::Target& from);
    void addTyped(const canvas::CanvasPointer& pointer);
    void startAt(const Snapped& found);
    void finishAt(const Snapped& found);
    void finishHere();
    void commit(plan::RunWish wish);
    void showSketch();
    void jump(int step);
    std::optional<int> nearCrosshair(const std::vector<Connection>& all) const;
    std::optional<canvas::SnapCue> cueOf(const Snapped& found) const;
    QString levelEntered(const QString& text);
    void showLevel();
    void offerPipes();
    std::optional<plan::Service> chosenService() const; // absent: told by what is met

    PipeSketch m_sketch;
    std::vector<base::Id> m_startIds;  // the port, pump or tee the run starts from
    std::vector<base::Id> m_startRuns; // the runs that pass there
    TypedLengths m_typed;
    std::optional<QPoint> m_pressView;
    std::optional<units::Elevation> m_wantedLevel; // typed before the start
    std::vector<std::string> m_pipeIds;
    std::shared_ptr<const catalogue::Catalogue> m_tables; // those the choice of pipes shows
    int m_jump = -1;
    ToolStrip* m_strip = nullptr;
    QLineEdit* m_level = nullptr;
    QComboBox* m_pipe = nullptr;
    QComboBox* m_service = nullptr;
};

} // namespace sumpwright::ui::tools
