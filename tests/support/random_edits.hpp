// RandomEdits: draws edits of every intent for a plan, sensible ones and senseless ones alike, the same for a seed.
#pragma once

#include <functional>
#include <random>
#include <string>
#include <vector>

#include "core/plan/edits/edit.hpp"
#include "core/plan/plan.hpp"

namespace sumpwright::test
{

class RandomEdits
{
public:
    explicit RandomEdits(unsigned seed) : m_random(seed) {}
    plan::Edit next(const plan::Plan& plan);

    // Draws used by the makers of edits.
    double between(double low, double high);
    int whole(int low, int high);
    bool oneIn(int count) { return whole(1, count) == 1; }
    plan::Point place();
    base::Id vessel(), pump(), run(), tee(), fixture(), note(), dimension(), element();
    std::vector<base::Id> some(const std::function<base::Id()>& draw);
    const plan::Plan& plan() const { return *m_plan; }

private:
    std::mt19937 m_random;
    const plan::Plan* m_plan = nullptr;
};

} // namespace sumpwright::test
