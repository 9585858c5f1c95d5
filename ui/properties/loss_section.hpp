// One loss along a run: what it is, its K, the K entered by hand instead, and the source.
#pragma once

#include "core/assessment/run_result.hpp"
#include "ui/properties/section.hpp"

QT_BEGIN_NAMESPACE
class QPushButton;
QT_END_NAMESPACE

namespace sumpwright::ui::properties
{

// Which loss of the run is meant, whatever its numbers are.
struct LossPlace {
    assessment::FittingRole role = assessment::FittingRole::bend;
    assessment::FittingPlace place = assessment::FittingPlace::vertex;
    std::size_t vertex = 0;

    std::string key() const;
    bool isAt(const assessment::FittingLoss& loss) const;
};

class LossSection : public Section
{
    Q_OBJECT

public:
    LossSection(Chosen run, LossPlace place, QWidget* parent = nullptr);

    void refreshResults() override;

private:
    const assessment::FittingLoss* find(const assessment::Assessment& results) const;
    std::optional<double> overridden(const plan::Plan& plan) const;
    plan::Edit override(std::optional<double> k) const;
    QString label() const; // "Bend at vertex 2"
    void addBendRow();
    ResultField* addCounted(const QString& caption);
    QString sourceText(const assessment::Assessment& results) const;

    LossPlace m_place;
    EntryField* m_k = nullptr;
    QPushButton* m_reset = nullptr;
};

// "0.90, from the catalogue: Title of the source"
QString lossText(const text::DisplaySettings& display, const catalogue::Catalogue& catalogue,
                 const assessment::FittingLoss& loss);

} // namespace sumpwright::ui::properties
