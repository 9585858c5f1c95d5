// Rows of label and field in two columns, in pixels: a row whose label or text has no room beside the other stands in
// two lines, hidden rows take none, and wrapped text always gets the height it needs at the width it has.
#pragma once

#include <vector>

#include <QLayout>

namespace sumpwright::ui::properties
{

class RowLayout : public QLayout
{
public:
    RowLayout(int columnGap, int rowGap) : m_columnGap(columnGap), m_rowGap(rowGap) {}
    ~RowLayout() override;

    void addRow(QWidget* label, QWidget* field);
    void addRow(QWidget* wide);
    void setRowVisible(QWidget* field, bool visible);

    void addItem(QLayoutItem* item) override;
    int count() const override;
    QLayoutItem* itemAt(int index) const override;
    QLayoutItem* takeAt(int index) override;
    Qt::Orientations expandingDirections() const override { return Qt::Horizontal; }
    bool hasHeightForWidth() const override;
    int heightForWidth(int width) const override;
    QSize minimumSize() const override;
    QSize sizeHint() const override;
    void setGeometry(const QRect& room) override;

private:
    struct Row {
        QLayoutItem* label{nullptr}; // none: the field is as wide as the form
        QLayoutItem* field{nullptr};
        bool shown() const { return field && !field->isEmpty(); }
        bool inTwo() const { return label && !label->isEmpty(); }
    };
    enum class Place { no, yes };

    int labelColumn(int width) const;
    bool fitsBeside(const Row& row, int column, int width) const;
    int arrange(const QRect& room, Place place) const; // the height taken
    int arrangeRow(const Row& row, const QRect& room, int column, Place place) const;
    void put(QLayoutItem& item, const QRect& room, const QRect& where) const;

    std::vector<Row> m_rows;
    int m_columnGap;
    int m_rowGap;
};

} // namespace sumpwright::ui::properties
