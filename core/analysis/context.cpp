#include "core/analysis/context.h"

#include <algorithm>
#include <cmath>
#include <iterator>
#include <thread>
#include <utility>

#include "core/analysis/fields_in_use.h"
#include "core/analysis/inputs.h"
#include "core/analysis/stop_case.h"
#include "core/motion/slowing.h"
#include "core/rig/fields.h"
#include "core/travel/soft_limits.h"
#include "core/words/words.h"

namespace gazewright {
namespace {

// Horizon of the step where no camera says how wide the settle band is: 2 % of the move
// (common practice, no source). The settling figure itself stays unknown then.
constexpr double kBandWithoutCamera = 0.02;

// Below the inertia of any speck of dust; what is less comes from points on the axis.
constexpr double kLeastInertia_kgm2 = 1e-30;

template <class Value, class Make>
const Value& made(std::optional<Value>& place, Make make) {
  if (!place) place.emplace(make());
  return *place;
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

Context::Context(const Rig& rig, std::stop_token stop, bool is_quick)
    : rig_(with_defaults(rig)), stop_(std::move(stop)), is_quick_(is_quick) {}

const RigBodies& Context::bodies() {
  return made(bodies_, [&] { return rig_bodies(rig_); });
}

const AxisModel& Context::model(Axis axis) {
  return made(of(axis).model, [&] { return axis_model(rig_, bodies(), axis); });
}

const Travel& Context::travel(Axis axis) {
  return made(of(axis).travel, [&] { return travel_of(rig_.axis(axis)); });
}

const Clearance& Context::clearance() {
  return made(clearance_, [&] { return clearance_of(rig_); });
}

/// Null where there is none of the same numbers.
const SettledStep* Context::borrowed_step(Axis axis) {
  if (base_ == nullptr) return nullptr;
  const PerAxis& lender = base_->axis_[static_cast<std::size_t>(axis)];
  const bool is_there = lender.step && lender.model && is_same(*lender.model, model(axis)) &&
                        base_->move_rad(axis) == move_rad(axis) &&
                        base_->step_band_rad(axis) == step_band_rad(axis);
  return is_there ? &*lender.step : nullptr;
}

const SettledStep& Context::step(Axis axis) {
  return made(of(axis).step, [&] {
    if (const SettledStep* there = borrowed_step(axis)) return *there;
    return simulate_until_settled(model(axis), move_rad(axis), step_band_rad(axis), stop_);
  });
}

const CameraStill& Context::step_at_camera(Axis axis) {
  return made(of(axis).step_at_camera,
              [&] { return camera_still(*this, axis, step(axis), move_rad(axis), 0); });
}

const MoveBack& Context::move_back(Axis axis) {
  return made(of(axis).move_back, [&] { return move_back_within(*this, axis, kInfinity); });
}

const AxisProfiles& Context::profiles(Axis axis) {
  return made(of(axis).profiles,
              [&] { return is_quick_ ? AxisProfiles() : profiles_of(*this, axis, stop_); });
}

const std::optional<SlowLimits>& Context::slow_limits(Axis axis) {
  return made(of(axis).slow_limits,
              [&] { return gazewright::slow_limits(model(axis), slow_parts(rig_, axis)); });
}

const WorstRipple& Context::worst_cogging(Axis axis) {
  return made(of(axis).worst_cogging,
              [&] { return gazewright::worst_cogging(model(axis), slow_parts(rig_, axis)); });
}

const std::optional<FastestMove>& Context::fastest(Axis axis) {
  return made(of(axis).fastest, [&] { return fastest_move(model(axis), move_rad(axis)); });
}

const std::vector<LoopPoint>& Context::loop_points(Axis axis) {
  return made(of(axis).loop_points, [&] { return gazewright::loop_points(model(axis)); });
}

const LoopStudy& Context::loops(Axis axis) {
  return made(of(axis).loops, [&] { return study_loops(model(axis), loop_points(axis)); });
}

const std::optional<GapSwing>& Context::gap_swing(Axis axis) {
  return made(of(axis).gap_swing, [&]() -> std::optional<GapSwing> {
    if (!loops(axis).is_stable) return {};
    const AxisModel& model = this->model(axis);
    const auto swing = gazewright::gap_swing(model, loop_points(axis));
    if (!swing || !is_read(*swing, model) || is_held_together(*swing, model)) return {};
    return swing;
  });
}

const GainAdvice& Context::advice(Axis axis) {
  return made(of(axis).advice, [&] { return is_quick_ ? GainAdvice() : gain_advice(*this, axis); });
}

const std::optional<double>& Context::best_time_ratio(Axis axis) {
  return made(of(axis).best_time_ratio,
              [&] { return gazewright::best_time_ratio(model(axis), move_rad(axis)); });
}

const std::vector<MoveLimit>& Context::step_limits(Axis axis) {
  return made(of(axis).step_limits, [&] {
    const auto& [trace, figures] = step(axis);
    return limits_in_force(model(axis), trace, move_rad(axis),
                           figures.settle_time_s.value_or(kInfinity));
  });
}

const std::optional<LimitShares>& Context::step_limit_shares(Axis axis) {
  return made(of(axis).step_limit_shares, [&]() -> std::optional<LimitShares> {
    const auto& [trace, figures] = step(axis);
    if (!figures.settle_time_s) return std::nullopt;
    return limit_shares(step_limits(axis), trace.sample_time_s, *figures.settle_time_s);
  });
}

const std::optional<LimitShares>& Context::fastest_limit_shares(Axis axis) {
  return made(of(axis).fastest_limit_shares,
              [&] { return fastest_move_shares(model(axis), move_rad(axis)); });
}

const std::optional<double>& Context::braking_angle_rad(Axis axis) {
  return made(of(axis).braking_angle_rad, [&] {
    const AxisModel& m = model(axis);
    return stopping_angle_rad(m, Slowing::braking, fastest_asked_radps(m),
                              worst_pull_Nm(m.load, travel(axis)));
  });
}

double Context::speed_at_stop_radps(Axis axis) {
  return made(of(axis).speed_at_stop_radps, [&] {
    const AxisModel& m = model(axis);
    return speed_left_radps(m, Slowing::braking, fastest_asked_radps(m),
                            rig_.axis(axis).stops.soft_inset_rad.value(),
                            worst_pull_Nm(m.load, travel(axis)));
  });
}

const std::optional<SprungImpact>& Context::sprung_blow(Axis axis) {
  return made(of(axis).sprung_blow, [&] {
    const StopCase stop = stop_case(*this, axis);
    const SprungTrain train{stop.load_kgm2, stop.rotor_kgm2, model(axis).gear.stiffness_Nmprad};
    return sprung_impact(stop.spring, train, stop.top_radps, stop.push_Nm, stop.rebound);
  });
}

const Coupling* Context::coupling() {
  if (is_quick_ || !missing(kBothSteps, Axis::pan).empty()) return nullptr;
  return &made(coupling_, [&] {
    const PanTilt move_rad{this->move_rad(Axis::pan), this->move_rad(Axis::tilt)};
    const double band = band_rad();
    const double least_move_rad = std::min(std::abs(move_rad.pan), std::abs(move_rad.tilt));
    return coupling_of({{model(Axis::pan), model(Axis::tilt)}, bodies()}, move_rad,
                       std::isfinite(band) ? band : kBandWithoutCamera * least_move_rad, stop_);
  });
}

const TrackingRuns& Context::tracking() {
  return made(tracking_, [&] { return tracking_of(*this); });
}

void Context::prepare() {
  // What both threads read is made before they start; each then writes only its own axis.
  std::array<Wanted, 2> there{};
  for (const Axis axis : kAxes) {
    model(axis);
    there[static_cast<std::size_t>(axis)] = {
        .moves = missing(kRigidMove, axis).empty(),
        .loops = missing(kLoops, axis).empty(),
        .gap = missing(kGapSwing, axis).empty(),
        .steps = missing(kStep, axis).empty(),
        .settling = missing(kSettle, axis).empty(),
        .blow = missing(kSprungBlow, axis).empty() && missing_of_bumper(*this, axis).empty()};
  }
  const auto run = [&](Axis axis) { prepare(axis, there[static_cast<std::size_t>(axis)]); };
  is_preparing_ = true;
  {
    const std::jthread tilt([&] { run(Axis::tilt); });
    run(Axis::pan);
  }
  is_preparing_ = false;
}

void Context::prepare(Axis axis, const Wanted& wanted) {
  if (wanted.steps) step(axis), step_limit_shares(axis), profiles(axis);
  if (wanted.settling && step(axis).figures.settle_time_s) move_back(axis);
  if (wanted.moves) fastest(axis), best_time_ratio(axis), fastest_limit_shares(axis);
  if (wanted.loops) loops(axis);
  if (wanted.gap) gap_swing(axis);
  if (wanted.blow) sprung_blow(axis);
  advice(axis);
}

double Context::move_rad(Axis axis) const {
  return (axis == Axis::pan ? rig_.task.pan_move_rad : rig_.task.tilt_move_rad).value();
}

double Context::pixels_per_radian() const {
  return rig_.camera.columns.value() / 2 / std::tan(rig_.camera.horizontal_view_rad.value() / 2);
}

double Context::band_rad() const { return rig_.task.settle_band_px.value() / pixels_per_radian(); }

double Context::step_band_rad(Axis axis) const {
  const double band = band_rad();
  return std::isfinite(band) ? band : kBandWithoutCamera * move_rad(axis);
}

std::vector<std::string> Context::missing(std::span<const std::string_view> inputs, Axis axis) {
  std::vector<std::string> missing;
  for (const std::string_view input : inputs) {
    for (const std::string& name : missing_of(input, axis)) {
      if (std::ranges::find(missing, name) == missing.end()) missing.push_back(name);
    }
  }
  return missing;
}

const std::vector<std::string>& Context::missing_of(std::string_view input, Axis axis) {
  auto& known = of(axis).missing;
  if (const auto found = known.find(input.data()); found != known.end()) return found->second;
  std::vector<std::string> names;
  const std::string path = for_axis(input, axis);
  const Axis whose = path.starts_with(name_of(Axis::tilt)) ? Axis::tilt : Axis::pan;
  if (input == "<load>") {
    names = load_missing(axis);
  } else if (input == kWholeStep.front()) {
    names = missing(kStep, axis);
  } else if (input == kBothSteps.front()) {
    for (const Axis each : kAxes)
      std::ranges::copy(missing(kStep, each), std::back_inserter(names));
  } else if (const auto fields = fields_in_use(path, rig_.axis(whose))) {
    names = missing(*fields, whose);
  } else {
    add_missing(path, names);
  }
  return known.emplace(input.data(), std::move(names)).first->second;
}

std::vector<std::string> Context::load_missing(Axis axis) {
  std::vector<std::string> names;
  add_missing("on_tilt", names);
  add_missing("stand.lean", names);
  if (axis == Axis::pan) {
    add_missing("on_pan", names);
    add_missing("tilt.axis_at", names);
  }
  // A point on the axis: nothing could be divided by its inertia.
  if (names.empty() && !(model(axis).load.inertia_kgm2 > kLeastInertia_kgm2))
    names.emplace_back(words("a size or a place off the axis for what turns (its inertia is 0)"));
  return names;
}

void Context::add_missing(const std::string& path, std::vector<std::string>& missing) {
  const auto& empty = made(empty_paths_, [&] {
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
