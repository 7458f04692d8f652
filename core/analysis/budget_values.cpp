#include "core/analysis/budget_values.h"

#include <algorithm>
#include <cmath>

#include "core/analysis/magnet_values.h"
#include "core/analysis/say.h"
#include "core/analysis/smooth_values.h"
#include "core/words/words.h"

namespace gazewright {
namespace {

using Half = std::optional<double>;
constexpr std::array<InputPath, 1> kBracket{"<axis>.bracket.stiffness"};
constexpr std::array<InputPath, 2> kGains{"<axis>.loop.position_gain", "<axis>.loop.speed_gain"};
constexpr auto kFriction = joined(kGains, std::array<InputPath, 1>{"<axis>.friction.coulomb"});
constexpr std::array<InputPath, 2> kPair{"<axis>.bearing.radial_play", "<axis>.bearing.spacing"};
constexpr std::array<InputPath, 2> kRing{"<axis>.bearing.axial_play",
                                         "<axis>.bearing.pitch_diameter"};
constexpr std::array<InputPath, 1> kMount{"pointing.mount_error"};
constexpr std::array<InputPath, 1> kCalibration{"pointing.calibration_error"};
constexpr auto kVision = joined(std::array<InputPath, 1>{"pointing.vision_noise"}, kScale);
constexpr const char* kSeen = "the encoder at the output sees it";

/// In the order of BudgetId.
const BudgetTerm kTerms[kBudgetTerms] = {
    {"backlash", "Backlash", Distribution::rectangular, {}, {}, {}},
    {"encoder", "Encoder", Distribution::arcsine, {}, {}, {}},
    {"windup", "Windup of the gear", Distribution::rectangular, {}, {}, {}},
    {"droop", "Droop of the loop", Distribution::rectangular, {}, {}, {}},
    {"friction", "Friction", Distribution::rectangular, {}, {}, {}},
    {"flex", "Bracket", Distribution::rectangular, {}, {}, {}},
    {"bearing", "Bearing play", Distribution::rectangular, {}, {}, {}},
    {"ripple", "Cogging", Distribution::arcsine, {}, {}, {}},
    {"mount", "Mounting", Distribution::rectangular, {}, {}, {}},
    {"calibration", "Calibration", Distribution::rectangular, {}, {}, {}},
    {"vision", "Vision noise", Distribution::normal, {}, {}, {}},
};

/// Writes the terms of one axis.
struct Terms {
  Context& c;
  Axis a;
  BudgetCase is;
  Budget budget;

  BudgetTerm& at(BudgetId id) { return budget.terms[static_cast<std::size_t>(id)]; }
  void clear(BudgetId id) { at(id) = kTerms[static_cast<std::size_t>(id)]; }
  void put(BudgetId id, double half_width_rad) {
    if (!std::isfinite(half_width_rad))
      return leave(id, words("has no finite value with these inputs"));
    at(id).half_width_rad = half_width_rad;
    at(id).deviation_rad = standard_deviation(at(id).distribution, half_width_rad);
  }
  void leave(BudgetId id, std::string_view because) { at(id).because = words(because); }
  /// Whether the inputs are there; else says what is missing, but not on every frame of a drag.
  /// @param values  the same fields' values
  bool has(BudgetId id, std::span<const InputPath> inputs,
           std::initializer_list<const Quantity*> values) {
    if (std::ranges::all_of(values, &Quantity::has_value)) return true;
    leave(id, c.is_quick() ? words("needs more") : say_needs(c.missing(inputs, a)));
    return false;
  }

  const Loop& loop() const { return c.rig().axis(a).loop; }
  const Bracket& bracket() const { return c.rig().axis(a).bracket; }

  void gear() {
    if (is.encoder_at_output) {
      leave(BudgetId::backlash, kSeen);
    } else if (is.teeth_held) {
      leave(BudgetId::backlash, words("the teeth are pressed together all the time"));
    } else {
      put(BudgetId::backlash, c.model(a).gear.backlash_rad / 2);
    }
  }

  void reading() {
    const Encoder& encoder = c.rig().axis(a).encoder;
    double error_rad = encoder.error_rad.value();
    if (encoder.magnet_offset_m.has_value() && c.missing(kOffAxis, a).empty())
      error_rad = std::max(error_rad, magnet_error_rad(c, a).value_or(0));
    const ReadingError error = reading_error(c.model(a), error_rad, is.encoder_at_output);
    put(BudgetId::encoder, error.half_width_rad());
    at(BudgetId::encoder).deviation_rad = error.deviation_rad();
  }

  void windup() {
    const auto& pull = pull_over_travel(c, a);
    if (is.encoder_at_output) return leave(BudgetId::windup, kSeen);
    if (!pull) return leave(BudgetId::windup, kNeedsTravel);
    put(BudgetId::windup, pull->largest_Nm() / c.model(a).gear.stiffness_Nmprad);
  }

  void droop() {
    const auto& pull = pull_over_travel(c, a);
    if (c.model(a).control.speed_integral_gain_Nmprad > 0)
      return leave(BudgetId::droop, words("the speed loop's integral takes it away"));
    if (!has(BudgetId::droop, kGains, {&loop().position_gain_1ps, &loop().speed_gain_Nmsprad}))
      return;
    if (!pull) return leave(BudgetId::droop, kNeedsTravel);
    put(BudgetId::droop, loop_droop_rad(c.model(a), pull->largest_Nm()));
  }

  void flex() {
    const auto& pull = pull_over_travel(c, a);
    if (!has(BudgetId::flex, kBracket, {&bracket().stiffness_Nmprad})) return;
    if (!pull) return leave(BudgetId::flex, kNeedsTravel);
    put(BudgetId::flex, pull->largest_Nm() / bracket().stiffness_Nmprad.value());
  }

  void friction() {
    const Friction& friction = c.rig().axis(a).friction;
    if (!has(BudgetId::friction, kFriction,
             {&loop().position_gain_1ps, &loop().speed_gain_Nmsprad, &friction.coulomb_Nm}))
      return;
    const bool has_integral = c.model(a).control.speed_integral_gain_Nmprad > 0;
    if (has_integral && friction.breakaway_Nm.source == Source::by_default)
      return leave(BudgetId::friction, for_axis(words("needs %1", "<axis>.friction.breakaway"), a));
    const FrictionError error = friction_error(c.model(a), slow_parts(c.rig(), a).falling_Nm);
    put(BudgetId::friction, error.stuck_rad + (is.encoder_at_output ? 0 : error.windup_rad));
  }

  void bearing() {
    const Bearing& bearing = c.rig().axis(a).bearing;
    if (bearing.kind.value == "gearbox") {
      leave(BudgetId::bearing,
            words("the gearbox's own bearings carry it, and their play is not stated"));
    } else if (bearing.kind.value == "single") {
      if (has(BudgetId::bearing, kRing, {&bearing.axial_play_m, &bearing.pitch_diameter_m}))
        put(BudgetId::bearing,
            ring_tilt_rad(bearing.axial_play_m.value(), bearing.pitch_diameter_m.value()));
    } else if (has(BudgetId::bearing, kPair, {&bearing.radial_play_m, &bearing.spacing_m})) {
      put(BudgetId::bearing,
          pair_tilt_rad(bearing.radial_play_m.value(), bearing.spacing_m.value()));
    }
  }

  void ripple() {
    const double cogging_Nm = c.rig().axis(a).motor.cogging_torque_Nm.value();
    if (!(cogging_Nm > 0)) return leave(BudgetId::ripple, words("no cogging torque is entered"));
    if (const auto missing = c.missing(kSlow, a); !missing.empty())
      return leave(BudgetId::ripple, say_needs(missing));
    if (const auto why = why_not_slow(c, a)) return leave(BudgetId::ripple, *why);
    put(BudgetId::ripple, c.worst_cogging(a).ripple_rad);
  }

  void outside() {
    const Pointing& pointing = c.rig().pointing;
    if (has(BudgetId::mount, kMount, {&pointing.mount_error_rad}))
      put(BudgetId::mount, pointing.mount_error_rad.value());
    if (has(BudgetId::calibration, kCalibration, {&pointing.calibration_error_rad}))
      put(BudgetId::calibration, pointing.calibration_error_rad.value());
    const Camera& camera = c.rig().camera;
    if (has(BudgetId::vision, kVision,
            {&pointing.vision_noise_px, &camera.columns, &camera.horizontal_view_rad}))
      put(BudgetId::vision,
          kNormalReach * pointing.vision_noise_px.value() / c.pixels_per_radian());
  }
};

/// What the same weight does, in one direction.
constexpr Correlation kSameWeight[] = {
    {static_cast<std::size_t>(BudgetId::windup), static_cast<std::size_t>(BudgetId::droop), 1},
    {static_cast<std::size_t>(BudgetId::windup), static_cast<std::size_t>(BudgetId::flex), 1},
    {static_cast<std::size_t>(BudgetId::droop), static_cast<std::size_t>(BudgetId::flex), 1}};

std::array<double, kBudgetTerms> parts_of(const Budget& budget, Half BudgetTerm::*part) {
  std::array<double, kBudgetTerms> parts{};
  for (std::size_t i = 0; i < kBudgetTerms; ++i) parts[i] = (budget.terms[i].*part).value_or(0);
  return parts;
}

/// The usable travel, no longer than a turn.
std::optional<PullRange> pull_of(Context& c, Axis a) {
  const auto own = usable_interval(c, a);
  const auto other = usable_interval(c, a == Axis::pan ? Axis::tilt : Axis::pan);
  if (!own || !other) return std::nullopt;
  std::optional<PullRange> all;
  AxisLoad load = c.model(a).load;
  for (const double pose : telling_poses_rad(c.bodies(), a, other->least, other->most)) {
    load.gravity = gravity_curve(c.bodies(), a, pose);
    const PullRange one = pull_range(load, own->least, own->most);
    if (!all) all = one;
    all = PullRange{std::min(all->least_Nm, one.least_Nm), std::max(all->most_Nm, one.most_Nm)};
  }
  return all;
}

struct PullOverTravel {
  std::optional<PullRange> range;
};

}  // namespace

const std::optional<PullRange>& pull_over_travel(Context& c, Axis a) {
  return c.kept<PullOverTravel>(a, [&] { return PullOverTravel{pull_of(c, a)}; }).range;
}

double gap_friction_Nm(Context& c, Axis a) {
  return c.model(a).load.coulomb_Nm + slow_parts(c.rig(), a).falling_Nm;
}

BudgetCase budget_case(Context& c, Axis a) {
  const auto& pull = pull_over_travel(c, a);
  return {.encoder_at_output = c.model(a).control.encoder_at_output,
          .teeth_held = pull && pull->steady_Nm() > gap_friction_Nm(c, a)};
}

const Budget& budget(Context& c, Axis a) {
  return c.kept<Budget>(a, [&] {
    Terms terms{c, a, budget_case(c, a), {}};
    std::ranges::copy(kTerms, terms.budget.terms.begin());
    terms.gear();
    terms.reading();
    terms.windup();
    terms.droop();
    terms.flex();
    terms.friction();
    terms.bearing();
    terms.ripple();
    terms.outside();
    return std::move(terms.budget);
  });
}

Budget budget_of(Context& c, Axis a, const BudgetCase& budget_case) {
  Terms terms{c, a, budget_case, budget(c, a)};
  for (const BudgetId id : {BudgetId::backlash, BudgetId::windup, BudgetId::friction})
    terms.clear(id);
  terms.gear();
  terms.reading();
  terms.windup();
  terms.friction();
  return std::move(terms.budget);
}

double rss_rad(const Budget& budget) {
  return combined(parts_of(budget, &BudgetTerm::half_width_rad), kSameWeight);
}
double worst_rad(const Budget& budget) {
  return worst_case(parts_of(budget, &BudgetTerm::half_width_rad));
}
double deviation_rad(const Budget& budget) {
  return combined(parts_of(budget, &BudgetTerm::deviation_rad), kSameWeight);
}

}  // namespace gazewright
