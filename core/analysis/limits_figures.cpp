#include "core/analysis/figures.h"
#include "core/analysis/inputs.h"
#include "core/words/words.h"

/// Which part of a move's time each limit is in force.
namespace gazewright {
namespace {

constexpr const char* kStepShare = "samples in which it is the limit in force / settle_time";
constexpr const char* kStepSource =
    "simulation of design section 5, sample by sample; handbook: motion";
constexpr const char* kFastestShare = "time on that end of the envelope / shortest_time";
constexpr const char* kFastestSource = "envelope along the shortest move; handbook: motion";

template <MoveLimit limit>
Answer step_share(Context& c, Axis a) {
  const auto& shares = c.step_limit_shares(a);
  if (shares) return share_of(*shares, limit);
  return Answer::none(c.step(a).figures.settle_time_s
                          ? words("the move is inside the settle band from the start")
                          : why_never_settles(c, a));
}

template <MoveLimit limit>
Answer fastest_share(Context& c, Axis a) {
  const auto& shares = c.fastest_limit_shares(a);
  if (shares) return share_of(*shares, limit);
  return Answer::none(words("cannot make the move: torque below friction, gravity and cable"));
}

template <MoveLimit limit>
constexpr FigureRow of_step(const char* id, const char* label) {
  return {{id, label, "1", "%", kStepShare, kStepSource, kSettle}, Axes::both, step_share<limit>};
}
template <MoveLimit limit>
constexpr FigureRow of_fastest(const char* id, const char* label) {
  return {{id, label, "1", "%", kFastestShare, kFastestSource, kRigidMove},
          Axes::both,
          fastest_share<limit>};
}

constexpr FigureRow kLimitsFigures[] = {
    of_step<MoveLimit::drive_current>("<axis>.limits.current",
                                      "Step limited by the drive's current"),
    of_step<MoveLimit::motor_current>("<axis>.limits.motor_current",
                                      "Step limited by the motor's current"),
    of_step<MoveLimit::gear_torque>("<axis>.limits.gear_torque",
                                    "Step limited by the gearbox's torque"),
    of_step<MoveLimit::voltage>("<axis>.limits.voltage", "Step limited by the bus voltage"),
    of_step<MoveLimit::supply>("<axis>.limits.supply", "Step limited by the supply's current"),
    of_step<MoveLimit::speed>("<axis>.limits.speed", "Step limited by the loop's speed limit"),
    of_step<MoveLimit::loop>("<axis>.limits.loop", "Step limited by the loop itself"),
    of_step<MoveLimit::gap>("<axis>.limits.gap", "Step in the gap of the gearbox"),
    of_fastest<MoveLimit::drive_current>("<axis>.limits.shortest_current",
                                         "Shortest move limited by the drive's current"),
    of_fastest<MoveLimit::motor_current>("<axis>.limits.shortest_motor_current",
                                         "Shortest move limited by the motor's current"),
    of_fastest<MoveLimit::gear_torque>("<axis>.limits.shortest_gear_torque",
                                       "Shortest move limited by the gearbox's torque"),
    of_fastest<MoveLimit::voltage>("<axis>.limits.shortest_voltage",
                                   "Shortest move limited by the bus voltage"),
    of_fastest<MoveLimit::supply>("<axis>.limits.shortest_supply",
                                  "Shortest move limited by the supply's current"),
};

}  // namespace

std::span<const FigureRow> limits_figures() { return kLimitsFigures; }

}  // namespace gazewright
