// Widgets side by side, in pixels, that go on in a further line where the width ends.
#pragma once

#include <vector>

#include <QLayout>

namespace sumpwright::ui::charts
{

class FlowRow : public QLayout
{
public:
    explicit FlowRow(QWidget* parent) : QLayout(parent) {}
    ~FlowRow() override;

    void addItem(QLayoutItem* item) override;
    int count() const override { return static_cast<int>(m_items.size()); }
    QLayoutItem* itemAt(int index) const override;
    QLayoutItem* takeAt(int index) override;
    Qt::Orientations expandingDirections() const override { return Qt::Horizontal; }
    bool hasHeightForWidth() const override { return true; }
    int heightForWidth(int width) const override;
    QSize minimumSize() const override;
    QSize sizeHint() const override;
    void setGeometry(const QRect& room) override;

private:
    enum class Place { no, yes };
    struct Line {
        std::size_t first;
        std::size_t last; // one behind
        int used;         // items that are shown
        int width;
        int height;
    };
    int arrange(const QRect& room, Place how) const; // the height taken
    Line lineFrom(std::size_t first, int room) const;
    void place(const Line& line, const QRect& room) const;

    std::vector<QLayoutItem*> m_items;
};

} // namespace sumpwright::ui::charts
