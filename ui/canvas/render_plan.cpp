#include "ui/canvas/render_plan.hpp"

#include <algorithm>
#include <cmath>

#include "ui/canvas/grid.hpp"
#include "ui/canvas/legend.hpp"
#include "ui/canvas/plan_scene.hpp"
#include "ui/canvas/run_scale_plate.hpp"
#include "ui/canvas/scale_bar.hpp"
#include "ui/canvas/scene_point.hpp"
#include "ui/canvas/symbols.hpp"

namespace sumpwright::ui::canvas
{

namespace
{
constexpr double sheetPixels = 96.0 / 25.4; // pixels per millimetre of paper
constexpr double around = 44.0;             // pixels kept free around the drawing
const QRectF emptyPlan(-1000.0, -7000.0, 11000.0, 8000.0);

void paintFurniture(QPainter& painter, const style::Theme& theme, const QSizeF& sheet, double pixel,
                    const plan::Site& site, const RenderOptions& options)
{
    painter.save();
    painter.translate(14.0, sheet.height() - scaleBarHeight - 10.0);
    paintScaleBar(painter, theme, scaleBarFor(pixel, options.figures));
    painter.restore();
    const QPointF centre(sheet.width() - 38.0, 38.0);
    paintNorth(painter, Ink{&theme, 1.0}, centre, sceneRotation(site.north), 30.0);
    const double turn = units::inRadians(site.north);
    const QPointF letter = centre + QPointF(std::cos(turn), -std::sin(turn)) * 23.0;
    painter.setPen(theme.ink);
    painter.setFont(strongLetterFont());
    painter.drawText(QRectF(letter - QPointF(10.0, 8.0), QSizeF(20.0, 16.0)), Qt::AlignCenter, QStringLiteral("N"));
}

// Over the legend where both fit into its column, else over the scale bar.
void paintScaleOfRuns(QPainter& painter, const Drawing& drawing, const QSizeF& sheet, double legendWidth)
{
    const QSizeF scale = runScaleSize(drawing);
    if (scale.isEmpty())
        return;
    const bool beside = legendWidth > 0.0 && scale.height() + legendSize().height() + 36.0 <= sheet.height();
    painter.save();
    if (beside)
        painter.translate(sheet.width() - std::max(legendWidth, scale.width() + 12.0), 12.0);
    else
        painter.translate(14.0, sheet.height() - scale.height() - scaleBarHeight - 20.0);
    paintRunScale(painter, drawing);
    painter.restore();
}
} // namespace

double renderPlan(const plan::Plan& plan, const std::shared_ptr<const catalogue::Catalogue>& catalogue,
                  const assessment::Assessment* assessment, QPainter& painter, const QRectF& target,
                  const RenderOptions& options)
{
    const auto& theme = options.theme ? *options.theme : style::theme(style::Scheme::light);
    PlanScene scene(catalogue);
    scene.setTheme(theme);
    scene.setFigures(options.figures);
    scene.setPlanFolder(options.planFolder);
    scene.setLabelsShown(options.labels);
    scene.showPlan(plan);
    scene.setRunMeasure(options.runMeasure);
    if (assessment)
        scene.showWater(waterViewOf(*assessment, false));

    const QRectF content = scene.content().isNull() ? emptyPlan : scene.content();
    const QSizeF sheet = target.size() / options.unit; // pixels
    double legendWidth = options.legend ? legendSize().width() + 12.0 : 0.0;
    if (legendWidth > sheet.width() / 2.0 || (options.legend && legendSize().height() > sheet.height()))
        legendWidth = 0.0;
    const QSizeF room(std::max(20.0, sheet.width() - 2.0 * around - legendWidth),
                      std::max(20.0, sheet.height() - 2.0 * around));
    const double fit = std::max(content.width() / room.width(), content.height() / room.height());
    const double pixel = options.denominator > 0.0 ? options.denominator / sheetPixels : fit;
    scene.setPixel(pixel);
    scene.relabel();

    painter.save();
    painter.setRenderHints(QPainter::Antialiasing | QPainter::TextAntialiasing);
    painter.setClipRect(target, Qt::IntersectClip);
    painter.translate(target.topLeft());
    painter.scale(options.unit, options.unit);
    const QSizeF shown(sheet.width() - legendWidth, sheet.height());
    const QRectF source(content.center() - QPointF(shown.width(), shown.height()) * pixel / 2.0, shown * pixel);
    painter.save();
    painter.scale(1.0 / pixel, 1.0 / pixel);
    painter.translate(-source.topLeft());
    if (options.ground)
        scene.paintGround(painter, QRectF(source.topLeft(), sheet * pixel));
    if (options.grid)
        paintGrid(painter, scene.drawing().ink(), source, gridStepsFor(pixel, 100.0));
    painter.restore();
    scene.render(&painter, QRectF(QPointF(), shown), source, Qt::KeepAspectRatio);
    if (legendWidth > 0.0) {
        painter.save();
        painter.translate(sheet.width() - legendWidth, sheet.height() - legendSize().height() - 12.0);
        paintLegend(painter, theme);
        painter.restore();
    }
    paintScaleOfRuns(painter, scene.drawing(), sheet, legendWidth);
    if (options.furniture)
        paintFurniture(painter, theme, QSizeF(shown.width(), sheet.height()), pixel, *plan.site, options);
    painter.restore();
    return pixel * sheetPixels;
}

} // namespace sumpwright::ui::canvas
