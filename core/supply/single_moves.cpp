#include "core/supply/single_moves.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace gazewright {
namespace {

constexpr double kLongest_s = 1;   // of a move at its speed limit
constexpr double kStart_s = 0.25;  // for speeding up, braking and settling
constexpr double kQuiet = 0.02;    // of the peak: what comes after the last larger power is cut off
constexpr std::array kSizes{1.0, 0.5, 0.25};
constexpr std::array kSpeeds{1.0, 0.5};

double asked_radps(const AxisModel& model) {
  return std::min(model.control.speed_limit_radps, top_speed_radps(model));
}

bool is_pulled(const AxisLoad& load) {
  return load.gravity.cos_Nm != 0 || load.gravity.sin_Nm != 0 || load.gravity.constant_Nm != 0 ||
         load.cable_stiffness_Nmprad != 0;
}

/// Means over rows of kSingleRow_s, so that no energy is lost.
std::vector<double> coarse_power_W(const Trace& trace, double voltage_V) {
  std::vector<double> power_W;
  const double per_row = kSingleRow_s / trace.sample_time_s;
  std::size_t begin = 0;
  for (std::size_t row = 1; begin < trace.bus_A.size(); ++row) {
    const auto end =
        std::min(trace.bus_A.size(),
                 std::max(begin + 1, static_cast<std::size_t>(per_row * static_cast<double>(row))));
    double sum_A = 0;
    for (std::size_t i = begin; i < end; ++i) sum_A += trace.bus_A[i];
    power_W.push_back(voltage_V * sum_A / static_cast<double>(end - begin));
    begin = end;
  }
  return power_W;
}

void cut_quiet_end(std::vector<double>& power_W) {
  double most_W = 0;
  for (const double W : power_W) most_W = std::max(most_W, std::abs(W));
  const auto last = std::find_if(power_W.rbegin(), power_W.rend(),
                                 [&](double W) { return std::abs(W) > kQuiet * most_W; });
  power_W.erase(last.base(), power_W.end());
}

void measure(SingleMove& move) {
  double kept_J = 0;
  for (std::size_t row = 0; row < move.power_W.size(); ++row) {
    const double now_W = move.power_W[row], now_s = static_cast<double>(row) * kSingleRow_s;
    if (now_W > move.most_W) move.most_W = now_W, move.most_at_s = now_s;
    if (-now_W > move.most_returned_W)
      move.most_returned_W = -now_W, move.most_returned_at_s = now_s;
    kept_J = std::max(0.0, kept_J - now_W * kSingleRow_s);
    if (kept_J > move.lifted_J) move.lifted_J = kept_J, move.lifted_at_s = now_s;
  }
}

SingleMove simulated(AxisModel model, double from_rad, double move_rad, double limit_radps,
                     const std::stop_token& stop) {
  SingleMove move{.from_rad = from_rad, .move_rad = move_rad, .limit_radps = limit_radps};
  model.control.speed_limit_radps = limit_radps;
  const double duration_s = kStart_s + 1.2 * std::abs(move_rad) / limit_radps;
  const AxisModel there = counted_from(model, from_rad + move_rad / 2);
  move.power_W =
      coarse_power_W(simulate_step(there, move_rad, duration_s, stop), there.drive.bus_voltage_V);
  cut_quiet_end(move.power_W);
  measure(move);
  return move;
}

/// Sizes up to the span, and the task's.
std::vector<double> sizes_rad(const MoveSpan& span, double limit_radps, double task_rad) {
  const double longest_rad = std::min(span.most_rad - span.least_rad, kLongest_s * limit_radps);
  std::vector<double> sizes;
  if (std::abs(task_rad) <= 2 * kLongest_s * limit_radps && task_rad != 0)
    sizes.push_back(std::abs(task_rad));
  for (const double part : kSizes) {
    if (longest_rad > 0) sizes.push_back(part * longest_rad);
  }
  return sizes;
}

}  // namespace

double SingleMove::end_s() const { return static_cast<double>(power_W.size()) * kSingleRow_s; }

std::vector<SingleMove> single_moves(const AxisModel& model, const MoveSpan& span,
                                     double task_move_rad, const std::stop_token& stop) {
  std::vector<SingleMove> moves;
  const double full_radps = asked_radps(model);
  if (!(full_radps > 0) || !std::isfinite(full_radps)) return moves;
  const bool pulled = is_pulled(model.load);
  for (const double speed : kSpeeds) {
    for (const double size_rad : sizes_rad(span, speed * full_radps, task_move_rad)) {
      const double room_rad = std::max(0.0, span.most_rad - span.least_rad - size_rad);
      const double middle_rad = (span.least_rad + span.most_rad) / 2;
      for (const double place : {0.0, -0.5, 0.5}) {
        const double centre_rad = middle_rad + place * room_rad;
        for (const double way : {1.0, -1.0}) {
          if (stop.stop_requested()) return moves;
          moves.push_back(simulated(model, centre_rad - way * size_rad / 2, way * size_rad,
                                    speed * full_radps, stop));
          if (!pulled) break;
        }
        if (!pulled || room_rad == 0) break;
      }
    }
  }
  return moves;
}

std::vector<SingleMove> best_of(const std::vector<SingleMove>& moves, std::size_t count,
                                double SingleMove::*by) {
  std::vector<const SingleMove*> order;
  order.reserve(moves.size());
  for (const SingleMove& move : moves) order.push_back(&move);
  std::ranges::stable_sort(order, std::greater<>(), [by](const auto* move) { return move->*by; });
  std::vector<SingleMove> best;
  for (const SingleMove* move : order) {
    if (best.size() == count || !(move->*by > 0)) break;
    if (best.empty() || move->*by < best.back().*by * (1 - 1e-9)) best.push_back(*move);
  }
  return best;
}

}  // namespace gazewright
