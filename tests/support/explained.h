#pragma once

#include <gtest/gtest.h>

#include <cmath>
#include <cstdint>

#include "core/analysis/analysis.h"

namespace gazewright::tests {

/// Every figure is finite or says why it is not there; no finding has a number that is none.
/// @param rig  which one it is, for messages
inline void expect_finite_or_explained(const Analysis& analysis, std::uint64_t rig) {
  for (const Figure& figure : analysis.figures) {
    EXPECT_TRUE(figure.value ? std::isfinite(*figure.value) : !figure.because.empty())
        << figure.id << ' ' << rig;
  }
  for (const Finding& finding : analysis.findings) {
    EXPECT_FALSE(finding.demand && std::isnan(*finding.demand)) << finding.id << ' ' << rig;
    EXPECT_FALSE(finding.capacity && std::isnan(*finding.capacity)) << finding.id << ' ' << rig;
  }
}

}  // namespace gazewright::tests
