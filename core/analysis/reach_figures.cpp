#include <algorithm>
#include <cmath>

#include "core/analysis/figures.h"
#include "core/analysis/inputs.h"
#include "core/analysis/left_out.h"
#include "core/analysis/reach.h"
#include "core/words/words.h"

namespace gazewright {
namespace {

constexpr const char* kReachSource = "geometry; handbook: reach";
constexpr const char* kNoTravel = "needs the usable travel of pan and tilt: stops and cable";
constexpr std::array<InputPath, 3> kBodies{"on_tilt", "on_pan", "tilt.axis_at"};
constexpr std::array<InputPath, 3> kCamera{"camera.horizontal_view", "camera.columns",
                                           "camera.rows"};
constexpr auto kView = joined(kBodies, kCamera);
constexpr auto kLongWay =
    joined(joined(kRigidTrain, kTopSpeed), std::array<InputPath, 1>{"<axis>.loop.speed_limit"});

Answer first_contact(const std::optional<Contact>& contact) {
  if (!contact) return Answer::none(words("nothing is met within half a turn"));
  return contact->tilt_rad;
}

Answer sphere_share(Context& c, Axis) {
  const auto usable = usable_window(c);
  if (!usable) return Answer::none(kNoTravel);
  return axis_share(looked_at(c, *usable));
}

Answer seen_share(Context& c, Axis) {
  if (c.is_quick()) return left_out_of_drag();
  const auto usable = usable_window(c);
  if (!usable) return Answer::none(kNoTravel);
  const Camera& camera = c.rig().camera;
  const double across = *camera.horizontal_view_rad.si;
  return view_share(looked_at(c, *usable), across,
                    vertical_view_rad(across, *camera.columns.si, *camera.rows.si));
}

Answer long_way(Context& c, Axis a) {
  const auto& usable_rad = c.travel(a).usable_rad;
  if (!usable_rad) return Answer::none(words("needs the usable travel: stops and cable"));
  if (*usable_rad >= 2 * M_PI)
    return Answer::aside(words("there is no blind sector: every direction is near"));
  return {long_way_s(c, a), words("it cannot make a move as long as its travel")};
}

const FigureRow kReachFigures[] = {
    {{"<axis>.travel.collision_least", "First collision looking down", "rad", "deg",
      "first tilt below 0 at which a body that tilts is within 0.1 mm of another", kReachSource,
      kBodies},
     Axes::tilt_only,
     [](Context& c, Axis) { return first_contact(c.clearance().down); }},
    {{"<axis>.travel.collision_most", "First collision looking up", "rad", "deg",
      "first tilt above 0 at which a body that tilts is within 0.1 mm of another", kReachSource,
      kBodies},
     Axes::tilt_only,
     [](Context& c, Axis) { return first_contact(c.clearance().up); }},
    {{"<axis>.travel.long_way_time", "Time of the long way round", "s", "ms",
      "shortest move over the usable travel, no faster than the speed limits; the slower way",
      "handbook: reach", kLongWay},
     Axes::pan_only,
     long_way},
    {{"reach.sphere_share", "Share of the sphere it can point at", "1", "%",
      "Σ Δpan·(sin b − sin a)/4π over the usable poses", kReachSource, kBodies},
     Axes::rig,
     sphere_share},
    {{"reach.view_share", "Share of the sphere it can see", "1", "%",
      "directions in the picture at some usable pose, in rings of a quarter degree", kReachSource,
      kView},
     Axes::rig,
     seen_share},
};

}  // namespace

std::span<const FigureRow> reach_figures() { return kReachFigures; }

}  // namespace gazewright
