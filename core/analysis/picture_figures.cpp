#include <cmath>

#include "core/analysis/figures.h"
#include "core/analysis/inputs.h"
#include "core/tracking/eye.h"

namespace gazewright {
namespace {

constexpr auto kBlur =
    joined(joined(kScale, std::array<InputPath, 1>{"camera.exposure"}), kTopSpeed);
constexpr std::array<InputPath, 1> kGap{"<axis>.gearbox.backlash"};
constexpr auto kGapPixels = joined(kGap, kScale);

const FigureRow kRows[] = {
    {{"camera.pixels_per_radian", "Picture scale at the centre", "px/rad", "px/rad",
      "(columns/2)/tan(view/2)", "pinhole camera, Hartley & Zisserman", kScale},
     Axes::rig,
     [](Context& c, Axis) -> Answer { return c.pixels_per_radian(); }},
    {{"camera.blur_px", "Smear at pan top speed", "1", "px",
      "pixels_per_radian · pan speed_top · exposure", "small-angle pinhole", kBlur},
     Axes::pan_only,
     [](Context& c, Axis a) -> Answer {
       return c.pixels_per_radian() * top_speed_radps(c.model(a)) *
              c.rig().camera.exposure_s.value();
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

std::span<const FigureRow> picture_figures() { return kRows; }

}  // namespace gazewright
