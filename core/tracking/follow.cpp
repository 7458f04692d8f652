#include "core/tracking/follow.h"

#include <algorithm>
#include <cmath>
#include <deque>
#include <limits>

#include "core/tracking/chance.h"
#include "core/tracking/followed_motion.h"

namespace gazewright {
namespace {

constexpr double kShortestInterval_s = 0.5e-3;  // faster pictures change nothing that matters
constexpr double kLongestInterval_s = 1e9;      // in effect never
constexpr double kPatience_s = 0.25;            // without an answer the axes stop after this
constexpr double kSpeedMemory_s = 0.15;         // of the estimate of the target's speed
constexpr double kFarthest_rad = 1.5;
constexpr double kLeastCosine = 0.1;  // near straight up pan is not told better than this

/// What a picture told, on its way.
struct Sighting {
  double seen_s = 0, arrives_s = 0;
  bool found = false;
  PerAxis error_rad{}, place_rad{};
};

class Run {
 public:
  Run(const Target& target, const Vision& vision, const Following& following,
      const CameraPicture& picture)
      : target_(target),
        vision_(vision),
        following_(following),
        picture_(picture),
        interval_s_(std::clamp(vision.interval_s, kShortestInterval_s, kLongestInterval_s)),
        patience_s_(std::max(kPatience_s, 2 * interval_s_)),
        chance_(vision.seed) {
    const PerAxis start = target.angle_rad(0);
    for (std::size_t i = 0; i < 2; ++i) {
      motion_[i] = FollowedMotion(following.axis[i], start[i]);
      goal_[i].place_rad = start[i];
    }
  }

  FollowTrace run() {
    for (const double time_s : follow_times_s(target_.duration_s)) {
      advance_to(time_s);
      for (std::size_t i = 0; i < 2; ++i) trace_.angle_rad[i].push_back(motion_[i].angle_rad());
    }
    return std::move(trace_);
  }

 private:
  struct Goal {
    double speed_radps = 0;  ///< command where the loop acts on the error
    double place_rad = 0, speed_estimate_radps = 0, seen_s = 0;
  };

  void advance_to(double end_s) {
    while (true) {
      const double frame_s = static_cast<double>(frames_) * interval_s_;
      const double arrives_s = on_the_way_.empty() ? kInfinity : on_the_way_.front().arrives_s;
      const double next_s = std::min(frame_s, arrives_s);
      if (next_s > end_s) break;
      move_to(next_s);
      if (arrives_s <= frame_s)
        take_in();
      else
        look(frame_s);
    }
    move_to(end_s);
  }

  void move_to(double time_s) {
    const double lost_s = answered_s_ + patience_s_;
    if (now_s_ < lost_s && lost_s < time_s) move_on_to(lost_s, false);
    move_on_to(time_s, now_s_ >= lost_s);
  }

  void move_on_to(double time_s, bool lost) {
    const double from_s = now_s_, for_s = time_s - now_s_;
    if (for_s <= 0) return;
    for (std::size_t i = 0; i < 2; ++i) {
      const Goal& goal = goal_[i];
      if (!following_.acts_on_angle) {
        motion_[i].take_speed(lost ? 0 : goal.speed_radps, for_s);
      } else {
        const double fed_radps = lost ? 0 : following_.feed_forward * goal.speed_estimate_radps;
        motion_[i].take_place(goal.place_rad + fed_radps * (from_s - goal.seen_s), fed_radps,
                              for_s);
      }
    }
    now_s_ = time_s;
  }

  /// Takes a picture: where the target is in it, if it is in it.
  void look(double time_s) {
    const PerAxis at = target_.angle_rad(time_s);
    const PerAxis error{at[0] - motion_[0].angle_rad(), at[1] - motion_[1].angle_rad()};
    remember_slip(time_s);
    Sighting sighting{.seen_s = time_s, .arrives_s = time_s + vision_.delay_s};
    const auto count = static_cast<std::uint64_t>(5 * frames_);
    sighting.found = picture_.holds(picture_.place_px(error, at[1])) &&
                     chance_.uniform(count) > vision_.drop_outs;
    const double noise_rad = vision_.noise_px / picture_.pixels_per_radian;
    const PerAxis noise{noise_rad / std::max(std::cos(at[1]), kLeastCosine), noise_rad};
    for (std::size_t i = 0; i < 2; ++i) {
      sighting.error_rad[i] = error[i];
      if (noise_rad > 0) sighting.error_rad[i] += noise[i] * chance_.normal(count + 1 + 2 * i);
      sighting.place_rad[i] = motion_[i].angle_rad() + sighting.error_rad[i];
    }
    if (sighting.found) on_the_way_.push_back(sighting);
    ++frames_;
  }

  void remember_slip(double time_s) {
    const double half_s = picture_.exposure_s / 2;
    const PerAxis before = target_.angle_rad(time_s - half_s);
    const PerAxis after = target_.angle_rad(time_s + half_s);
    trace_.frame_s.push_back(time_s);
    for (std::size_t i = 0; i < 2; ++i) {
      const double speed_radps = motion_[i].speed_radps();
      trace_.at_frame_radps[i].push_back(speed_radps);
      trace_.slip_radps[i].push_back((after[i] - before[i]) / picture_.exposure_s - speed_radps);
    }
  }

  /// An answer has arrived: new commands.
  void take_in() {
    const Sighting sighting = on_the_way_.front();
    on_the_way_.pop_front();
    const double apart_s = sighting.seen_s - last_.seen_s;
    const double blend = -std::expm1(-apart_s / kSpeedMemory_s);
    for (std::size_t i = 0; i < 2; ++i) {
      Goal& goal = goal_[i];
      if (has_last_) {
        const double speed_radps = (sighting.place_rad[i] - last_.place_rad[i]) / apart_s;
        goal.speed_estimate_radps += blend * (speed_radps - goal.speed_estimate_radps);
      }
      goal.place_rad = sighting.place_rad[i];
      goal.seen_s = sighting.seen_s;
      goal.speed_radps = following_.axis[i].gain_1ps * sighting.error_rad[i] +
                         following_.feed_forward * goal.speed_estimate_radps;
    }
    last_ = sighting;
    has_last_ = true;
    answered_s_ = sighting.arrives_s;
  }

  const Target& target_;
  Vision vision_;
  Following following_;
  CameraPicture picture_;
  double interval_s_, patience_s_;
  Chance chance_;
  std::array<FollowedMotion, 2> motion_;
  std::array<Goal, 2> goal_;
  std::deque<Sighting> on_the_way_;
  Sighting last_;
  bool has_last_ = false;
  double now_s_ = 0, answered_s_ = 0;
  std::size_t frames_ = 0;
  FollowTrace trace_;
};

}  // namespace

PerAxis CameraPicture::place_px(const PerAxis& error_rad, double tilt_rad) const {
  const auto place = [this](double angle_rad) {
    return pixels_per_radian * std::tan(std::clamp(angle_rad, -kFarthest_rad, kFarthest_rad));
  };
  return {place(error_rad[0] * std::cos(tilt_rad)), place(error_rad[1])};
}

bool CameraPicture::holds(const PerAxis& place_px, double part) const {
  return std::abs(place_px[0]) <= part * half_width_px &&
         std::abs(place_px[1]) <= part * half_height_px;
}

std::vector<double> follow_times_s(double duration_s) {
  constexpr double kMostRows = 2000;
  double rate_Hz = 10;
  for (const double rate : {1000.0, 500.0, 200.0, 100.0, 50.0, 20.0})
    if (duration_s * rate <= kMostRows) rate_Hz = std::max(rate, rate_Hz);
  std::vector<double> times_s;
  for (int row = 0; row <= duration_s * rate_Hz + 1e-9; ++row) times_s.push_back(row / rate_Hz);
  return times_s;
}

FollowTrace follow(const Target& target, const Vision& vision, const Following& following,
                   const CameraPicture& picture) {
  return Run(target, vision, following, picture).run();
}

}  // namespace gazewright
