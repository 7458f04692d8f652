#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "core/analysis/context.h"

/// Power that both drives take from the bus in simulated moves. The moves are computed at the full
/// voltage, so what hangs on the bus (source, leads, fuse, capacitors, resistor) does not change
/// it.
namespace gazewright {

/// Moves of both axes, a value a row, with what the drives take while idle.
struct MovesPower {
  double row_s = 0;
  double settle_s = 0;  ///< of both; where that is not seen, until both are there (arrival_s)
  std::vector<double> power_W{};
};

/// The task's moves, begun together.
struct TaskPower {
  std::string because;  ///< why there is none; else empty
  MovesPower moves{};
};
const TaskPower& task_power(Context& context);

/// The rig's list of moves, one after the other.
struct DutyPower {
  std::string because;  ///< why there is none; else empty
  std::vector<MovesPower> moves{};
  std::vector<std::size_t> of_entry{};  ///< which of them each entry of the list is
};
const DutyPower& duty_power(Context& context);

/// Hands both to a context whose rig differs only in what hangs on the bus or in its pace, at this
/// path; see Check::lend.
void lend_power(Context& from, Context& to, std::string_view path);

double idle_W(const Rig& rig);  ///< of both drives

}  // namespace gazewright
