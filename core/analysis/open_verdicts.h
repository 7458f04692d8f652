#pragma once

#include <string>
#include <vector>

#include "core/analysis/analysis.h"
#include "core/analysis/doubts.h"

/// Findings whose verdict the doubt about the inputs may turn.
namespace gazewright {

/// The figure that a finding compares lies within its expanded uncertainty (k = 2) of the limit, or
/// is not there at all with an input at its end.
struct OpenVerdict {
  std::string finding;  ///< its id
  std::string text;     ///< "holds, but within the doubt: 42 ms left, ±393 ms"
  std::vector<std::size_t>
      turned_by;  ///< Doubts::unknowns that turn it alone, at one of their ends
};

/// Of the findings that compare a headline figure, in their order. What else they compare (a wanted
/// time, a rating) counts as exact.
std::vector<OpenVerdict> open_verdicts(const Analysis& analysis, const Doubts& doubts);

/// Puts those unknowns first that turn a verdict alone, and says which.
void rank_by_verdicts(std::vector<Doubts::Worth>& worth, const Analysis& analysis,
                      const Doubts& doubts);

}  // namespace gazewright
