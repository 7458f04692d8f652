#pragma once

#include <algorithm>
#include <string_view>

#include "core/analysis/analysis.h"

namespace gazewright::tests {

/// Null where the analysis has no finding of that id.
inline const Finding* finding(const Analysis& analysis, std::string_view id) {
  const auto found = std::ranges::find(analysis.findings, id, &Finding::id);
  return found == analysis.findings.end() ? nullptr : &*found;
}

}  // namespace gazewright::tests
