#pragma once

#include "core/motion/lane_work.h"
#include "core/motion/series_step.h"

/// Steps of several ratios at once, a ratio in each lane of a register. Every lane goes its own way
/// through samples and steps, exactly as SampleAdvance would go it, to the last bit: what one lane
/// waits for is only that the next attempt is of its kind.
namespace gazewright {

template <class Wide>
class LaneRun {
 public:
  explicit LaneRun(LaneWork& work) : work_(work) {}

  void run() {
    for (int lane = 0; lane < kLanes<Wide>; ++lane) start(lane);
    for (unsigned turns = 0; busy_ != 0; ++turns) {
      if (turns % 1024 == 0 && work_.stops()) return;
      attempt();
    }
  }

 private:
  using Pair = MotorAndLoadOf<Wide>;
  using Mask = MaskOf<Wide>;
  static constexpr int kPatience = 8;
  enum Phase { kSeries, kCut, kStiff };  ///< what a lane's next attempt is

  /// A series, until waiting for another kind has cost about as much as that would.
  void attempt() {
    const int series = __builtin_popcount(bits_of(phase_[kSeries]));
    const int cuts = __builtin_popcount(bits_of(phase_[kCut]));
    const int stiff = __builtin_popcount(bits_of(phase_[kStiff]));
    waited_ += cuts + stiff;
    if (series > 0 && waited_ < kPatience) {
      series_attempt(phase_[kSeries]);
      return;
    }
    waited_ = 0;
    if (cuts >= stiff)
      cut_attempt(phase_[kCut]);
    else
      stiff_attempt(phase_[kStiff]);
  }

  static Mask mask_of(unsigned bits) {
    Mask mask{};
    for (int lane = 0; lane < kLanes<Wide>; ++lane) set_lane(mask, lane, -long{bits >> lane & 1});
    return mask;
  }
  static Wide keep(Mask is, Wide yes, Wide no) { return select(is, yes, no); }

  void to_phase(Mask lanes, Phase phase) {
    for (Mask& of : phase_) of &= !lanes;
    phase_[phase] |= lanes;
  }

  [[gnu::noinline]] void start(int lane) {
    const unsigned bit = 1U << lane;
    busy_ &= ~bit;
    for (Mask& of : phase_) set_lane(of, lane, 0L);
    const LaneStart* one = work_.next();
    if (one == nullptr) return;
    busy_ |= bit;
    end_[lane] = {};
    end_[lane].index = one->index;
    dynamics_.set(lane, one->dynamics);
    control_.set(lane, one->control);
    const auto set = [lane](Wide& x, double value) { set_lane(x, lane, value); };
    set(move_rad_, one->move_rad), set(ratio_, one->ratio), set(sample_s_, one->sample_s);
    set(lag_1ps_, one->lag_1ps), set(far_rad_, one->far_rad), set(band_rad_, one->band_rad);
    set(most_steps_, one->most_steps);
    tolerance_ = StepTolerance<Wide>(move_rad_, ratio_);
    whole_end_ = LagParts<Wide>(lag_1ps_, sample_s_).end();
    for (Wide* x : {&angle_.motor, &angle_.load, &speed_.motor, &speed_.load, &torque_Nm_,
                    &command_Nm_, &next_Nm_, &cost_series_, &row_})
      set(*x, 0);
    set(cost_stiff_, 100);
    set(next_stiff_s_, one->sample_s);
    set_lane(is_stiff_, lane, 0L);
    // The first row is that of rest.
    const bool outside = __builtin_fabs(0 - one->move_rad) > one->band_rad;
    set(last_outside_, outside ? 0 : -1), set(outside_rad_, 0), set(next_rad_, 0);
    set_lane(was_outside_, lane, outside ? -1L : 0L);
    if (work_.shows()) work_.show(one->index, 0);
    sample(mask_of(bit));
  }

  /// Begins a sample: the controller takes its reading, the last command begins to act.
  void sample(Mask at) {
    const Wide next_Nm = control_.torque_command_Nm(angle_.motor, angle_.load, at);
    command_Nm_ = keep(at, next_Nm_, command_Nm_);
    next_Nm_ = keep(at, next_Nm, next_Nm_);
    start_gap_Nm_ = keep(at, torque_Nm_ - command_Nm_, start_gap_Nm_);
    gap_Nm_ = keep(at, start_gap_Nm_, gap_Nm_);
    done_s_ = keep(at, Wide{}, done_s_);
    steps_ = keep(at, all<Wide>(1), steps_);
    centre(at);
    const Mask stiff = at & is_stiff_;
    begin_series(at & !stiff);
    begin_stiff(stiff);
  }

  void centre(Mask at) {
    // Lanes within a sample keep the series that they began it with.
    dynamics_.centre(keep(at, angle_.load, dynamics_.centre_rad()));
  }

  void begin_series(Mask at) {
    if (!any_of(at)) return;
    from_angle_ = select(at, angle_, from_angle_);
    from_speed_ = select(at, speed_, from_speed_);
    h_ = keep(at, sample_s_, h_);
    to_phase(at, kSeries);
  }

  void begin_stiff(Mask at) {
    if (!any_of(at)) return;
    done_s_ = keep(at, Wide{}, done_s_);
    steps_ = keep(at, Wide{}, steps_);
    allowed_ = keep(at, all<Wide>(1), allowed_);
    h_ = keep(at, least_of(next_stiff_s_, sample_s_), h_);
    to_phase(at, kStiff);
  }

  // Attempts at a step, each for the lanes of one kind: in lane_attempts.h.
  void series_attempt(Mask at);
  void cut_attempt(Mask at);
  /// Goes along the series as far as that part.
  void go(Mask at, Pair to_angle, Pair to_speed, Wide lag_part);
  /// One more series, or the stiff one after too many.
  void again(Mask at);
  void stiff_attempt(Mask at);
  void settle_costs(Mask at, Wide cost, Wide& used, Wide& other);

  /// Ends a sample: a row, and the next sample or the end of the run.
  void end_sample(Mask at) {
    torque_Nm_ = keep(at, command_Nm_ + start_gap_Nm_ * whole_end_, torque_Nm_);
    const Mask lost = at & !((magnitude(angle_.load) < far_rad_) & is_finite(speed_ + angle_));
    const Mask seen = at & !lost;
    row_ = keep(seen, row_ + 1, row_);
    const Wide angle = angle_.load;
    const Mask outside = magnitude(angle - move_rad_) > band_rad_;
    next_rad_ = keep(seen & was_outside_, angle, next_rad_);
    last_outside_ = keep(seen & outside, row_, last_outside_);
    outside_rad_ = keep(seen & outside, angle, outside_rad_);
    was_outside_ = select(seen, outside, was_outside_);
    const bool shows = work_.shows();
    Mask over = row_ >= work_.rows - 1;
    if (shows)
      show(bits_of(seen));
    else
      over |= last_outside_ >= work_.latest_row;
    over = lost | (seen & over);
    if (any_of(over)) finish(bits_of(over));
    const Mask goes_on = at & !over;
    if (any_of(goes_on)) sample(goes_on);
  }

  [[gnu::noinline]] void show(unsigned lanes) {
    for (int lane = 0; lane < kLanes<Wide>; ++lane)
      if ((lanes >> lane & 1) != 0) work_.show(end_[lane].index, angle_.load[lane]);
  }

  [[gnu::noinline]] void finish(unsigned lanes) {
    for (int lane = 0; lane < kLanes<Wide>; ++lane) {
      if ((lanes >> lane & 1) == 0) continue;
      LaneEnd& end = end_[lane];
      end.rows = row_[lane] + 1;
      end.last_outside = last_outside_[lane];
      end.outside_rad = outside_rad_[lane];
      end.next_rad = next_rad_[lane];
      work_.take(end);
      start(lane);
    }
  }

  LaneWork& work_;
  AxisDynamicsOf<Wide> dynamics_;
  StepControlOf<Wide> control_;
  StepTolerance<Wide> tolerance_;
  Wide whole_end_{};
  Wide move_rad_{}, ratio_{}, sample_s_{}, lag_1ps_{}, far_rad_{}, band_rad_{}, most_steps_{};

  Pair angle_, speed_, from_angle_, from_speed_;  ///< now, and at the start of the sample
  Wide torque_Nm_{}, command_Nm_{}, next_Nm_{}, start_gap_Nm_{}, gap_Nm_{};
  Wide done_s_{}, h_{}, steps_{}, allowed_{};
  Wide next_stiff_s_{}, cost_series_{}, cost_stiff_{};
  Mask is_stiff_{};
  Wide part_{};  ///< of a series

  Wide row_{}, last_outside_{}, outside_rad_{}, next_rad_{};
  Mask was_outside_{};
  LaneEnd end_[kLanes<Wide>];
  Mask phase_[3] = {};
  unsigned busy_ = 0;
  int waited_ = 0;  ///< lanes times attempts of another kind
};

}  // namespace gazewright
