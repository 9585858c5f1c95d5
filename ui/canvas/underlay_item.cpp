#include "ui/canvas/underlay_item.hpp"

#include <QCoreApplication>
#include <QDir>
#include <QImageReader>
#include <QPainter>

#include "ui/canvas/scene_point.hpp"

namespace sumpwright::ui::canvas
{

namespace
{
constexpr int largestSide = 6000;             // pixels kept of a larger picture
constexpr QSizeF missingSize(4000.0, 3000.0); // scene units of the frame drawn for a missing picture

struct Picture {
    QPixmap pixels;
    QSizeF fullSize;
};

Picture readPicture(const QString& path)
{
    QImageReader reader(path);
    reader.setAutoTransform(true);
    QSize size = reader.size();
    if (size.isValid() && (size.width() > largestSide || size.height() > largestSide))
        reader.setScaledSize(size.scaled(largestSide, largestSide, Qt::KeepAspectRatio));
    Picture picture{QPixmap::fromImage(reader.read()), {}};
    const bool onItsSide = reader.transformation().testFlag(QImageIOHandler::TransformationRotate90);
    picture.fullSize = !size.isValid() ? picture.pixels.size() : onItsSide ? size.transposed() : size;
    return picture;
}
} // namespace

void UnderlayItem::show(Pointer underlay)
{
    prepareGeometryChange();
    m_underlay = std::move(underlay);
    setVisible(m_underlay != nullptr);
    if (!m_underlay)
        return;
    const QString path = QDir(m_drawing.planFolder).filePath(QString::fromStdString(m_underlay->fileName));
    if (path != m_loaded) {
        m_loaded = path;
        auto picture = readPicture(path);
        m_picture = std::move(picture.pixels);
        m_fullSize = picture.fullSize;
    }
    setPos(toScene(m_underlay->corner));
    setRotation(sceneRotation(m_underlay->turn));
    setOpacity(qBound(0.05, m_underlay->opacity, 1.0));
    update();
}

QRectF UnderlayItem::boundingRect() const
{
    if (!m_underlay)
        return {};
    const double pixel = toScene(m_underlay->pixelSize);
    const QSizeF size = m_picture.isNull() ? missingSize : m_fullSize * pixel;
    return {0.0, -size.height(), size.width(), size.height()};
}

void UnderlayItem::paint(QPainter* painter, const QStyleOptionGraphicsItem*, QWidget*)
{
    if (!m_underlay)
        return;
    if (!m_picture.isNull()) {
        painter->setRenderHint(QPainter::SmoothPixmapTransform);
        painter->drawPixmap(boundingRect(), m_picture, QRectF(m_picture.rect()));
        return;
    }
    const Ink ink = m_drawing.ink();
    painter->setPen(ink.dashed(ink.pen(ink.theme->quiet, weight::thin), {6.0, 4.0}));
    painter->drawRect(boundingRect());
    const QString words = QCoreApplication::translate("UnderlayItem", "Picture not found: %1")
                              .arg(QString::fromStdString(m_underlay->fileName));
    inPixels(*painter, ink, boundingRect().topLeft(), 0.0, [&] {
        painter->setPen(ink.theme->quiet);
        painter->setFont(letterFont());
        painter->drawText(QPointF(8.0, 18.0), words);
    });
}

} // namespace sumpwright::ui::canvas
