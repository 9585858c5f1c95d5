#include "ui/charts/chart_picture.hpp"

#include <QPainter>
#include <QSaveFile>
#include <QSvgGenerator>

#include "ui/charts/readable_view.hpp"
#include "ui/style/palette.hpp"
#include "ui/style/type.hpp"

namespace sumpwright::ui::charts
{

namespace
{

constexpr int edge = 2 * style::step; // around the picture

struct Heading {
    const ChartWords& words;

    int sentenceHeight(int width) const
    {
        return QFontMetrics(style::bodyFont())
            .boundingRect(0, 0, width, 10000, Qt::TextWordWrap, words.sentence)
            .height();
    }
    int questionHeight() const { return QFontMetrics(style::titleFont()).height() + style::halfStep; }
    int height(int width) const { return questionHeight() + sentenceHeight(width) + style::step; }
};

QSize pictureSize(const Heading& heading, const ReadableView& view)
{
    return view.size() + QSize(2 * edge, 2 * edge + heading.height(view.width()));
}

void paintInto(QPaintDevice& device, const Heading& heading, ReadableView& view, const style::Theme& theme)
{
    QPainter painter(&device);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.fillRect(QRect(QPoint(), pictureSize(heading, view)), theme.paper);
    painter.translate(edge, edge);
    painter.setPen(theme.ink);
    const int wide = view.width();
    painter.setFont(style::titleFont());
    painter.drawText(QRect(0, 0, wide, heading.questionHeight()), Qt::AlignLeft | Qt::AlignTop, heading.words.question);
    painter.setFont(style::bodyFont());
    painter.drawText(QRect(0, heading.questionHeight(), wide, heading.sentenceHeight(wide)), Qt::TextWordWrap,
                     heading.words.sentence);
    view.render(&painter, QRectF(QPointF(0, heading.height(wide)), QSizeF(view.size())), QRect(QPoint(), view.size()));
}

} // namespace

bool saveChartPicture(const QString& path, const ChartWords& words, ReadableView& view, const style::Theme& theme)
{
    const Heading heading{words};
    const QSize size = pictureSize(heading, view);
    QSaveFile file(path);
    if (!file.open(QIODevice::WriteOnly))
        return false;
    if (path.endsWith(QStringLiteral(".svg"), Qt::CaseInsensitive)) {
        QSvgGenerator vector;
        vector.setOutputDevice(&file);
        vector.setSize(size);
        vector.setViewBox(QRect(QPoint(), size));
        vector.setTitle(words.question);
        vector.setDescription(words.sentence);
        paintInto(vector, heading, view, theme);
    } else {
        QImage picture(size * 2, QImage::Format_RGB32);
        picture.setDevicePixelRatio(2.0);
        paintInto(picture, heading, view, theme);
        if (!picture.save(&file, "PNG"))
            return false;
    }
    return file.commit();
}

} // namespace sumpwright::ui::charts
