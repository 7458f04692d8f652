#include "core/motion/profile.h"

#include <algorithm>
#include <cmath>

#include "core/motion/rigid_move.h"
#include "core/words/words.h"

// Derivation: resources/handbook/profiles.md.
namespace gazewright {
namespace {

constexpr double kUsualAcceleration = 0.8;  // of the peak: some is left for the loop
constexpr double kUsualJerkPart = 0.25;     // of the time of speeding up
constexpr int kQuickestPoints = 400;
// Peaks of the minimum-jerk move in units of D/T, D/T² and D/T³.
const double kQuinticSpeed = 15.0 / 8, kQuinticAcceleration = 10 / std::sqrt(3.0),
             kQuinticJerk = 60;

/// Puts pieces of constant jerk one after another, from rest.
class Pieces {
 public:
  explicit Pieces(double sign) : sign_(sign) {}

  void add(double duration_s, double acceleration, double jerk) {
    if (!(duration_s > 0)) return;
    const double t = duration_s;
    pieces_.push_back(
        {time_s_,
         {sign_ * angle_, sign_ * speed_, sign_ * acceleration / 2, sign_ * jerk / 6, 0, 0}});
    angle_ += t * (speed_ + t * (acceleration / 2 + t * jerk / 6));
    speed_ += t * (acceleration + t * jerk / 2);
    time_s_ += t;
  }
  Profile take(ProfileKind kind, double move_rad) {
    return {kind, move_rad, time_s_, std::move(pieces_)};
  }

 private:
  double sign_, time_s_ = 0, angle_ = 0, speed_ = 0;
  std::vector<ProfilePiece> pieces_;
};

/// Time of speeding up under constant acceleration, to the speed limit or half way.
double speeding_up_s(double distance, double speed, double acceleration) {
  return std::min(speed / acceleration, std::sqrt(distance / acceleration));
}

Profile trapezoid(double move_rad, const ProfileLimits& limits) {
  const double distance = std::abs(move_rad), a = limits.acceleration_radps2;
  const double up_s = speeding_up_s(distance, limits.speed_radps, a);
  Pieces pieces(std::copysign(1, move_rad));
  pieces.add(up_s, a, 0);
  pieces.add(std::max(0.0, distance / (a * up_s) - up_s), 0, 0);
  pieces.add(up_s, -a, 0);
  return pieces.take(ProfileKind::trapezoid, move_rad);
}

/// Duration of the jerk and of all of speeding up.
struct SpeedingUp {
  double jerk_s, all_s;
};
SpeedingUp jerk_limited_times(double distance, const ProfileLimits& limits) {
  const double v = limits.speed_radps, a = limits.acceleration_radps2, j = limits.jerk_radps3;
  if (std::isfinite(v)) {
    const bool reaches_a = v * j >= a * a;
    const double jerk_s = reaches_a ? a / j : std::sqrt(v / j);
    const double all_s = reaches_a ? jerk_s + v / a : 2 * jerk_s;
    if (v * all_s <= distance) return {jerk_s, all_s};
  }
  if (distance * j * j >= 2 * a * a * a) {
    const double jerk_s = a / j;
    return {jerk_s, jerk_s / 2 + std::sqrt(jerk_s * jerk_s / 4 + distance / a)};
  }
  const double jerk_s = std::cbrt(distance / (2 * j));
  return {jerk_s, 2 * jerk_s};
}

Profile jerk_limited(double move_rad, const ProfileLimits& limits) {
  const double distance = std::abs(move_rad), j = limits.jerk_radps3;
  if (std::isinf(j)) {
    Profile profile = trapezoid(move_rad, limits);
    profile.kind = ProfileKind::jerk_limited;
    return profile;
  }
  const SpeedingUp times = jerk_limited_times(distance, limits);
  const double jerk_s = times.jerk_s, all_s = times.all_s;
  const double a = j * jerk_s, held_s = all_s - 2 * jerk_s, peak = a * (all_s - jerk_s);
  Pieces pieces(std::copysign(1, move_rad));
  const auto speed_change = [&](double sign) {
    pieces.add(jerk_s, 0, sign * j);
    pieces.add(held_s, sign * a, 0);
    pieces.add(jerk_s, sign * a, -sign * j);
  };
  speed_change(1);
  pieces.add(std::max(0.0, distance / peak - all_s), 0, 0);
  speed_change(-1);
  return pieces.take(ProfileKind::jerk_limited, move_rad);
}

/// D·(10·s³ − 15·s⁴ + 6·s⁵), s = t/T, as short as the three limits allow.
Profile minimum_jerk(double move_rad, const ProfileLimits& limits) {
  const double D = std::abs(move_rad);
  const double T = std::max({kQuinticSpeed * D / limits.speed_radps,
                             std::sqrt(kQuinticAcceleration * D / limits.acceleration_radps2),
                             std::cbrt(kQuinticJerk * D / limits.jerk_radps3)});
  const double per = move_rad / (T * T * T);
  return {ProfileKind::minimum_jerk,
          move_rad,
          T,
          {{0, {0, 0, 0, 10 * per, -15 * per / T, 6 * per / (T * T)}}}};
}

/// The cubic through both ends with their speeds.
ProfilePiece cubic(const MovePath& path, std::size_t i, double sign) {
  const double h = path.time_s[i + 1] - path.time_s[i];
  const double mean = (path.angle_rad[i + 1] - path.angle_rad[i]) / h;
  const double v0 = path.speed_radps[i], v1 = path.speed_radps[i + 1];
  return {path.time_s[i],
          {sign * path.angle_rad[i], sign * v0, sign * (3 * mean - 2 * v0 - v1) / h,
           sign * (v0 + v1 - 2 * mean) / (h * h), 0, 0}};
}

}  // namespace

std::string_view name_of(ProfileKind kind) {
  constexpr std::array<std::string_view, 5> kNames{"step", "trapezoid", "jerk_limited",
                                                   "minimum_jerk", "minimum_time"};
  return kNames[static_cast<std::size_t>(kind)];
}

std::string_view word_of(ProfileKind kind) {
  constexpr std::array<std::string_view, 5> kWords{
      for_words("step"), for_words("trapezoid"), for_words("jerk-limited"),
      for_words("minimum-jerk"), for_words("minimum-time")};
  return kWords[static_cast<std::size_t>(kind)];
}

ProfileLimits profile_limits(const AxisModel& model, double move_rad) {
  const AxisControl& control = model.control;
  ProfileLimits limits;
  limits.speed_radps = std::min(control.speed_limit_radps, top_speed_radps(model));
  limits.acceleration_radps2 = std::isnan(control.acceleration_limit_radps2)
                                   ? kUsualAcceleration * peak_acceleration_radps2(model)
                                   : control.acceleration_limit_radps2;
  const double a = limits.acceleration_radps2;
  limits.jerk_radps3 =
      std::isnan(control.jerk_limit_radps3)
          ? a / (kUsualJerkPart * speeding_up_s(std::abs(move_rad), limits.speed_radps, a))
          : control.jerk_limit_radps3;
  return limits;
}

ProfilePoint Profile::at(double t_s) const {
  if (t_s >= time_s || pieces.empty()) return {move_rad, 0, 0};
  if (t_s < 0) return {};
  const auto after =
      std::upper_bound(pieces.begin(), pieces.end(), t_s,
                       [](double t, const ProfilePiece& piece) { return t < piece.start_s; });
  const ProfilePiece& piece = *std::prev(after);
  const double x = t_s - piece.start_s;
  const auto& c = piece.coefficient;
  return {c[0] + x * (c[1] + x * (c[2] + x * (c[3] + x * (c[4] + x * c[5])))),
          c[1] + x * (2 * c[2] + x * (3 * c[3] + x * (4 * c[4] + x * 5 * c[5]))),
          2 * c[2] + x * (6 * c[3] + x * (12 * c[4] + x * 20 * c[5]))};
}

Profile plan_move(ProfileKind kind, double move_rad, const ProfileLimits& limits) {
  switch (kind) {
    case ProfileKind::trapezoid:
      return trapezoid(move_rad, limits);
    case ProfileKind::jerk_limited:
      return jerk_limited(move_rad, limits);
    case ProfileKind::minimum_jerk:
      return minimum_jerk(move_rad, limits);
    case ProfileKind::step:
    case ProfileKind::minimum_time:
      break;
  }
  return {ProfileKind::step, move_rad, 0, {}};
}

std::optional<Profile> plan_quickest(const AxisModel& model, double move_rad) {
  const auto path = fastest_move_path(model, move_rad, kQuickestPoints);
  if (!path) return std::nullopt;
  Profile profile{ProfileKind::minimum_time, move_rad, path->time_s.back(), {}};
  for (std::size_t i = 0; i + 1 < path->time_s.size(); ++i)
    profile.pieces.push_back(cubic(*path, i, std::copysign(1, move_rad)));
  return profile;
}

std::optional<Profile> plan(ProfileKind kind, const AxisModel& model, double move_rad) {
  if (kind == ProfileKind::minimum_time) return plan_quickest(model, move_rad);
  const ProfileLimits limits = profile_limits(model, move_rad);
  const bool moves = limits.acceleration_radps2 > 0 && limits.speed_radps > 0;
  if (kind != ProfileKind::step && !moves) return std::nullopt;
  return plan_move(kind, move_rad, limits);
}

}  // namespace gazewright
