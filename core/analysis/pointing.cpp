#include "core/analysis/pointing.h"

#include <algorithm>

#include "core/analysis/budget_values.h"
#include "core/analysis/say.h"
#include "core/words/words.h"

namespace gazewright {

PointingBudget pointing_budget(Context& context, Axis axis) {
  PointingBudget all;
  if (const auto missing = context.missing(kBudget, axis); !missing.empty()) {
    all.missing.push_back(say_needs(missing));
    return all;
  }
  const Budget& own = budget(context, axis);
  for (const BudgetTerm& term : own.terms) {
    const std::string name = words(term.name);
    if (!term.half_width_rad) {
      all.missing.push_back(name + ": " + term.because);
      continue;
    }
    std::string distribution = name_of(term.distribution);
    if (term.id == "encoder") distribution += words(", its count rectangular");
    all.terms.push_back({std::string(term.id), name, *term.half_width_rad, *term.deviation_rad,
                         std::move(distribution)});
  }
  std::ranges::stable_sort(all.terms, std::ranges::greater(), &PointingTerm::deviation_rad);
  all.rss_rad = rss_rad(own);
  all.worst_rad = worst_rad(own);
  return all;
}

}  // namespace gazewright
