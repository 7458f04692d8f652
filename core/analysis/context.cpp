#include "core/analysis/context.h"

#include <algorithm>
#include <cmath>
#include <thread>
#include <utility>

#include "core/analysis/fields_in_use.h"
#include "core/analysis/inputs.h"
#include "core/rig/fields.h"
#include "core/travel/cable_torque.h"

namespace gazewright {
namespace {

// Horizon of the step where no camera says how wide the settle band is: 2 % of the move
// (common practice, no source). The settling figure itself stays unknown then.
constexpr double kBandWithoutCamera = 0.02;

// Below the inertia of any speck of dust; what is less comes from points on the axis.
constexpr double kLeastInertia_kgm2 = 1e-30;

template <class Value, class Make>
const Value& kept(std::optional<Value>& place, Make make) {
  if (!place) place.emplace(make());
  return *place;
}

/// What the travel between stops of that kind follows from.
std::span<const InputPath> stop_geometry(const Stops& stops) {
  static constexpr std::array<InputPath, 4> kTab{"<axis>.stops.tab_width",
                                                 "<axis>.stops.post_width", "<axis>.stops.radius",
                                                 "<axis>.stops.centre"};
  static constexpr auto kTrailing =
      joined(kTab, std::array<InputPath, 2>{"<axis>.stops.trailers", "<axis>.stops.trailer_width"});
  static constexpr std::array<InputPath, 4> kWindow{"<axis>.stops.tab_width", "<axis>.stops.window",
                                                    "<axis>.stops.radius", "<axis>.stops.centre"};
  if (stops.kind.value == "trailing") return kTrailing;
  if (stops.kind.value == "window") return kWindow;
  return kTab;
}

bool is_below(std::string_view path, std::string_view part) {
  return path.starts_with(part) &&
         (path.size() == part.size() || path[part.size()] == '.' || path[part.size()] == '[');
}

}  // namespace

std::string for_axis(std::string_view pattern, Axis axis) {
  constexpr std::string_view kMark = "<axis>";
  std::string text(pattern);
  for (auto at = text.find(kMark); at != std::string::npos; at = text.find(kMark, at)) {
    text.replace(at, kMark.size(), name_of(axis));
  }
  return text;
}

Context::Context(const Rig& rig, std::stop_token stop)
    : rig_(with_defaults(rig)), stop_(std::move(stop)) {}

const RigBodies& Context::bodies() {
  return kept(bodies_, [&] { return rig_bodies(rig_); });
}

const AxisModel& Context::model(Axis axis) {
  return kept(of(axis).model, [&] { return axis_model(rig_, bodies(), axis); });
}

const Travel& Context::travel(Axis axis) {
  return kept(of(axis).travel, [&] { return travel_of(rig_.axis(axis)); });
}

const Clearance& Context::clearance() {
  return kept(clearance_, [&] { return clearance_of(rig_); });
}

const SettledStep& Context::step(Axis axis) {
  return kept(of(axis).step, [&] {
    const double band = band_rad();
    const double move = move_rad(axis);
    return simulate_until_settled(model(axis), move,
                                  std::isfinite(band) ? band : kBandWithoutCamera * move, stop_);
  });
}

const std::optional<FastestMove>& Context::fastest(Axis axis) {
  return kept(of(axis).fastest, [&] { return fastest_move(model(axis), move_rad(axis)); });
}

const LoopMargins& Context::speed_margins(Axis axis) {
  return kept(of(axis).speed_margins, [&] { return speed_loop_margins(model(axis)); });
}

const LoopMargins& Context::position_margins(Axis axis) {
  return kept(of(axis).position_margins, [&] { return position_loop_margins(model(axis)); });
}

const std::optional<double>& Context::best_time_ratio(Axis axis) {
  return kept(of(axis).best_time_ratio,
              [&] { return gazewright::best_time_ratio(model(axis), move_rad(axis)); });
}

const TrackingRuns& Context::tracking() {
  return kept(tracking_, [&] { return tracking_of(*this); });
}

void Context::prepare() {
  // What both threads read is made before they start; each then writes only its own axis.
  std::array<std::array<bool, 3>, 2> there{};
  for (const Axis axis : kAxes) {
    model(axis);
    there[static_cast<std::size_t>(axis)] = {missing(kRigidMove, axis).empty(),
                                             missing(kLoops, axis).empty(),
                                             missing(kStep, axis).empty()};
  }
  const auto run = [&](Axis axis) {
    const auto [moves, loops, steps] = there[static_cast<std::size_t>(axis)];
    prepare(axis, moves, loops, steps);
  };
  const std::jthread tilt([&] { run(Axis::tilt); });
  run(Axis::pan);
}

void Context::prepare(Axis axis, bool moves, bool loops, bool steps) {
  if (steps) step(axis);
  if (moves) fastest(axis), best_time_ratio(axis);
  if (loops) speed_margins(axis), position_margins(axis);
}

double Context::move_rad(Axis axis) const {
  return (axis == Axis::pan ? rig_.task.pan_move_rad : rig_.task.tilt_move_rad).value();
}

double Context::pixels_per_radian() const {
  return rig_.camera.columns.value() / 2 / std::tan(rig_.camera.horizontal_view_rad.value() / 2);
}

double Context::band_rad() const { return rig_.task.settle_band_px.value() / pixels_per_radian(); }

std::vector<std::string> Context::missing(std::span<const std::string_view> inputs, Axis axis) {
  std::vector<std::string> missing;
  for (const std::string_view input : inputs) {
    if (input.ends_with("<stops>")) {
      const Axis of = input == "pan.<stops>"    ? Axis::pan
                      : input == "tilt.<stops>" ? Axis::tilt
                                                : axis;
      for (const InputPath path : stop_geometry(rig_.axis(of).stops))
        add_missing(for_axis(path, of), missing);
      continue;
    }
    if (input == "<cable>") {
      if (is_spring(rig_.axis(axis).cable))
        add_missing(for_axis("<axis>.cable.free_length", axis), missing);
      continue;
    }
    if (input != "<load>") {
      const std::string path = for_axis(input, axis);
      const Axis of = path.starts_with(name_of(Axis::tilt)) ? Axis::tilt : Axis::pan;
      if (const auto fields = fields_in_use(path, rig_.axis(of))) {
        for (std::string& name : this->missing(*fields, of)) {
          if (std::ranges::find(missing, name) == missing.end()) missing.push_back(std::move(name));
        }
      } else {
        add_missing(path, missing);
      }
      continue;
    }
    add_missing("on_tilt", missing);
    add_missing("stand.lean", missing);
    if (axis == Axis::pan) {
      add_missing("on_pan", missing);
      add_missing("tilt.axis_at", missing);
    }
    // A point on the axis: nothing could be divided by its inertia.
    if (missing.empty() && !(model(axis).load.inertia_kgm2 > kLeastInertia_kgm2)) {
      missing.emplace_back("a size or a place off the axis for what turns (its inertia is 0)");
    }
  }
  return missing;
}

void Context::add_missing(const std::string& path, std::vector<std::string>& missing) {
  const auto& empty = kept(empty_paths_, [&] {
    std::set<std::string> paths;
    for (const FieldRef& field : all_fields(rig_)) {
      const auto* quantity = std::get_if<QuantityRef>(&field);
      if (quantity != nullptr && !quantity->quantity->has_value()) paths.insert(quantity->path);
    }
    if (rig_.on_tilt.empty()) paths.insert("on_tilt");
    if (rig_.on_pan.empty() && !rig_.on_pan_is_bare) paths.insert("on_pan");
    for (const Axis a : kAxes) {
      const AxisParts& parts = rig_.axis(a);
      if (parts.stops.presence == Presence::missing) paths.insert(for_axis("<axis>.stops", a));
      if (parts.cable.presence == Presence::missing) paths.insert(for_axis("<axis>.cable", a));
    }
    return paths;
  });
  const auto add = [&](const std::string& name) {
    if (std::find(missing.begin(), missing.end(), name) == missing.end()) missing.push_back(name);
  };
  for (auto at = empty.lower_bound(path); at != empty.end() && at->starts_with(path); ++at) {
    // The place of an axis is one entry of three numbers.
    if (is_below(*at, path)) add(path == "tilt.axis_at" ? path : *at);
  }
  // A field of a part that is not there at all is missing with its part.
  for (std::string part = path; part.find('.') != std::string::npos;) {
    part.resize(part.rfind('.'));
    if (empty.contains(part)) add(part);
  }
}

}  // namespace gazewright
