#include "ui/window/picture.hpp"

#include <cmath>

#include <QFileInfo>
#include <QImage>
#include <QPainter>
#include <QSaveFile>
#include <QSvgGenerator>

#include "ui/canvas/render_plan.hpp"
#include "ui/window/empty_state.hpp"

namespace sumpwright::ui::window
{

namespace
{

constexpr int leastWidth = 200;
constexpr int mostWidth = 10'000;

base::Refusal notWritten(const PictureWish& wish, const QString& why)
{
    return {"picture.not-written", wish.path.toStdString(), "the picture could not be written: " + why.toStdString(),
            "choose a folder you may write to"};
}

void draw(QPainter& painter, const QSize& size, const assessment::Assessment& assessment, const PictureWish& wish)
{
    canvas::RenderOptions options;
    options.theme = &style::theme(wish.scheme);
    options.figures = {wish.system, wish.numbers};
    options.planFolder = wish.planFolder;
    options.legend = true;
    options.runMeasure = wish.runMeasure;
    painter.setRenderHints(QPainter::Antialiasing | QPainter::TextAntialiasing);
    canvas::renderPlan(assessment.plan, assessment.catalogue, &assessment, painter, QRectF(QPointF(0, 0), size),
                       options);
}

} // namespace

std::optional<base::Refusal> writePicture(const assessment::Assessment& assessment, const PictureWish& wish)
{
    const QString ending = QFileInfo(wish.path).suffix().toLower();
    if (ending != QStringLiteral("png") && ending != QStringLiteral("svg"))
        return base::Refusal{"picture.ending", wish.path.toStdString(), "the file's ending names no kind of picture",
                             "end it in .png or .svg"};
    if (wish.width < leastWidth || wish.width > mostWidth)
        return base::Refusal{"picture.width", wish.path.toStdString(),
                             "a width of " + std::to_string(wish.width) + " pixels", "200 to 10 000 pixels"};
    if (isBlank(assessment.plan))
        return base::Refusal{"picture.empty", wish.path.toStdString(), "the plan is empty: there is nothing to draw",
                             "draw the floor or place a vessel first"};
    const QSize size(wish.width, static_cast<int>(std::lround(wish.width / std::sqrt(2.0)))); // the shape of A paper
    QSaveFile file(wish.path);
    if (!file.open(QIODevice::WriteOnly))
        return notWritten(wish, file.errorString());
    if (ending == QStringLiteral("svg")) {
        QSvgGenerator generator;
        generator.setOutputDevice(&file);
        generator.setSize(size);
        generator.setViewBox(QRect(QPoint(0, 0), size));
        generator.setTitle(QString::fromStdString(assessment.plan.site->name));
        QPainter painter(&generator);
        draw(painter, size, assessment, wish);
    } else {
        QImage image(size, QImage::Format_RGB32);
        QPainter painter(&image);
        draw(painter, size, assessment, wish);
        painter.end();
        if (!image.save(&file, "PNG"))
            return notWritten(wish, file.errorString());
    }
    if (!file.commit())
        return notWritten(wish, file.errorString());
    return std::nullopt;
}

} // namespace sumpwright::ui::window
