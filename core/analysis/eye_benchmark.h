#pragma once

#include <array>
#include <optional>
#include <stop_token>
#include <vector>

/// Moves of several sizes, to be laid over what a human eye does.
namespace gazewright {

class Context;

struct EyeMove {
  double move_rad = 0;
  /// The quickest that the rigid train could do; empty where it cannot move that far.
  std::optional<double> shortest_s, shortest_peak_radps;
  /// The step of section 5; empty where it has not settled within 1.4 s.
  std::optional<double> settle_s, step_peak_radps;
};
/// By Axis; empty where inputs are missing or the analysis left it out.
using EyeBenchmark = std::array<std::vector<EyeMove>, 2>;

/// Simulates a step of every size: some tens of milliseconds.
EyeBenchmark eye_benchmark(Context& context, const std::stop_token& stop);

}  // namespace gazewright
