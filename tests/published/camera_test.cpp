#include <gtest/gtest.h>

#include "core/analysis/analysis.h"
#include "core/units/angle.h"
#include "tests/support/tol.h"

namespace gazewright {
namespace {

Rig camera_rig(double columns, double view_deg) {
  Rig rig;
  rig.camera.columns = si_quantity(columns);
  rig.camera.horizontal_view_rad = si_quantity(view_deg * kDegree_rad);
  return rig;
}

TEST(PictureScale, IsThePinholesFocalLength) {
  // Source: R. Hartley, A. Zisserman, Multiple View Geometry in Computer Vision, Cambridge 2004,
  // chapter 6: f = (W/2)/tan(view/2).
  const double scale = analyse(camera_rig(1920, 60)).value("camera.pixels_per_radian").value();
  EXPECT_NEAR(scale, 1662.77, tol(0.005));
  EXPECT_NEAR(scale * kDegree_rad, 29.021, tol(5e-4));
}

TEST(PictureScale, FitsAPublishedCalibration) {
  // Source: KITTI odometry benchmark, sequence 00: f = 718.856 px at 1241 columns, hence 81.60°
  // (recomputed). 0.01° are 0.17 px.
  const double scale = analyse(camera_rig(1241, 81.60)).value("camera.pixels_per_radian").value();
  EXPECT_NEAR(scale, 718.856, tol(0.17));
}

TEST(Blur, IsTheTurnDuringTheExposureInPixels) {
  // Small-angle pinhole: 100°/s for 10 ms at 29.021 px/° smear over 29.02 px.
  Rig rig = camera_rig(1920, 60);
  rig.camera.exposure_s = si_quantity(0.010);
  rig.supply.voltage_V = si_quantity(24);
  rig.pan.motor.speed_constant_radpsV = si_quantity(40);
  rig.pan.gearbox.ratio = si_quantity(10);
  rig.pan.drive.speed_limit_radps = si_quantity(100 * kDegree_rad);
  EXPECT_NEAR(analyse(rig).value("camera.blur_px").value(), 29.02, tol(0.005));
}

}  // namespace
}  // namespace gazewright
