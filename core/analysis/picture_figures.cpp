#include <cmath>

#include "core/analysis/figures.h"
#include "core/analysis/inputs.h"
#include "core/pointing/picture.h"
#include "core/tracking/eye.h"

namespace gazewright {
namespace {

constexpr auto kBlur =
    joined(joined(kScale, std::array<InputPath, 1>{"camera.exposure"}), kTopSpeed);
constexpr auto kSkew =
    joined(joined(kScale, std::array<InputPath, 1>{"camera.readout"}), kTopSpeed);
constexpr auto kSharp = joined(kScale, std::array<InputPath, 1>{"camera.exposure"});
constexpr auto kStraight = joined(kScale, std::array<InputPath, 1>{"camera.readout"});
constexpr auto kSharpAtTop = joined(kScale, kTopSpeed);
constexpr const char* kGlobal = "the shutter is global: camera.readout is 0";

Answer top_blur_px(Context& c, Axis a) {
  return blur_px(top_speed_radps(c.model(a)), c.rig().camera.exposure_s.value(),
                 c.pixels_per_radian());
}
Answer top_skew_px(Context& c, Axis a) {
  const double readout_s = c.rig().camera.readout_s.value();
  if (readout_s == 0) return Answer::aside(kGlobal);
  return skew_px(top_speed_radps(c.model(a)), readout_s, c.pixels_per_radian());
}

constexpr std::array<InputPath, 1> kGap{"<axis>.gearbox.backlash"};
constexpr auto kGapPixels = joined(kGap, kScale);

const FigureRow kPictureFigures[] = {
    {{"camera.pixels_per_radian", "Picture scale at the centre", "px/rad", "px/rad",
      "(columns/2)/tan(view/2)", "pinhole camera, Hartley & Zisserman", kScale},
     Axes::rig,
     [](Context& c, Axis) -> Answer { return c.pixels_per_radian(); }},
    {{"camera.blur_px", "Smear at pan top speed", "1", "px",
      "pixels_per_radian · pan speed_top · exposure", "small-angle pinhole", kBlur},
     Axes::pan_only,
     top_blur_px},
    {{"camera.blur_tilt_px", "Smear at tilt top speed", "1", "px",
      "pixels_per_radian · tilt speed_top · exposure", "small-angle pinhole", kBlur},
     Axes::tilt_only,
     top_blur_px},
    {{"camera.skew_px", "Lean of upright lines at pan top speed", "1", "px",
      "pixels_per_radian · pan speed_top · readout", "rolling shutter, row by row", kSkew},
     Axes::pan_only,
     top_skew_px,
     true},
    {{"camera.skew_tilt_px", "Stretch of the picture at tilt top speed", "1", "px",
      "pixels_per_radian · tilt speed_top · readout", "rolling shutter, row by row", kSkew},
     Axes::tilt_only,
     top_skew_px,
     true},
    {{"camera.sharp_speed", "Fastest speed with a smear of one pixel", "rad/s", "deg/s",
      "1/(pixels_per_radian · exposure)", "small-angle pinhole", kSharp},
     Axes::rig,
     [](Context& c, Axis) -> Answer {
       return one_pixel_speed_radps(c.rig().camera.exposure_s.value(), c.pixels_per_radian());
     }},
    {{"camera.straight_speed", "Fastest speed with a lean of one pixel", "rad/s", "deg/s",
      "1/(pixels_per_radian · readout)", "rolling shutter, row by row", kStraight},
     Axes::rig,
     [](Context& c, Axis) -> Answer {
       const double readout_s = c.rig().camera.readout_s.value();
       if (readout_s == 0) return Answer::aside(kGlobal);
       return one_pixel_speed_radps(readout_s, c.pixels_per_radian());
     },
     true},
    {{"camera.sharp_exposure", "Longest exposure with a smear of one pixel at pan top speed", "s",
      "us", "1/(pixels_per_radian · pan speed_top)", "small-angle pinhole", kSharpAtTop},
     Axes::pan_only,
     [](Context& c, Axis a) -> Answer {
       return 1 / (c.pixels_per_radian() * top_speed_radps(c.model(a)));
     }},
    {{"<axis>.pointing.backlash", "Pointing error in the gap", "rad", "arcmin", "backlash/2",
      "geometry: the load rests anywhere in the gap", kGap},
     Axes::both,
     [](Context& c, Axis a) -> Answer { return c.model(a).gear.backlash_rad / 2; }},
    {{"<axis>.pointing.gap_px", "The whole gap in the picture", "1", "px",
      "backlash · pixels_per_radian", "small-angle pinhole", kGapPixels},
     Axes::both,
     [](Context& c, Axis a) -> Answer {
       return c.model(a).gear.backlash_rad * c.pixels_per_radian();
     }},
    {{"eye.duration_ratio", "Pan against a human saccade", "1", "1",
      "pan settle_time / (2.2 ms/° · move + 21 ms)",
      "Carpenter, Movements of the Eyes, 1988 (attribution from memory); people scatter ±20 %",
      kSettle},
     Axes::pan_only,
     [](Context& c, Axis a) -> Answer {
       const auto& settle = c.step(a).figures.settle_time_s;
       return settle ? Answer(*settle / saccade_time_s(c.move_rad(a)))
                     : Answer::none(why_never_settles(c, a));
     }},
};

}  // namespace

std::span<const FigureRow> picture_figures() { return kPictureFigures; }

}  // namespace gazewright
