#include <gtest/gtest.h>

#include <cmath>
#include <numbers>

#include "core/travel/magnet.h"

namespace gazewright {
namespace {

TEST(Eccentricity, OfScalesIsThatOfTheEncoderMakersTable) {
  // Source: a public encoder article's table of scale eccentricity, ±412.53·e[µm]/D[mm] arcsec,
  // printed in whole arcsec; the same constant 412.5 stands in an encoder maker's questions and
  // answers.
  const struct {
    double diameter_mm, offset_um, error_arcsec;
  } rows[]{{100, 10, 41}, {100, 25, 103}, {100, 100, 412},
           {50, 25, 206}, {25, 10, 165},  {25, 5, 83}};
  for (const auto& row : rows) {
    const double rad = eccentricity_error_rad(row.offset_um * 1e-6, row.diameter_mm * 1e-3 / 2);
    EXPECT_NEAR(rad * 180 * 3600 / std::numbers::pi, row.error_arcsec, 0.01 * row.error_arcsec);
  }
}

}  // namespace
}  // namespace gazewright
