// Deleting. A vessel takes its pumps with it; run ends that met what is gone become open. A tee left with two runs of
// one pipe and service joins them again, the longer keeps id and tag; left with one, its end becomes open. Deleting a
// tee joins the two runs that lie straightest and opens the rest.
#pragma once

#include <vector>

#include "core/plan/edits/edit.hpp"

namespace sumpwright::plan
{

Edit deleteElements(std::vector<base::Id> elements);
// The runs that would be left with an end open, to be told to the person.
std::vector<base::Id> detachedBy(const Plan& plan, const std::vector<base::Id>& elements);

} // namespace sumpwright::plan
