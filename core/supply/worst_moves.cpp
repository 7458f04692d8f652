#include "core/supply/worst_moves.h"

#include <algorithm>
#include <cmath>
#include <thread>

#include "core/supply/single_moves.h"

namespace gazewright {
namespace {

constexpr std::size_t kBest = 2;   // of each axis and measure
constexpr int kShifts = 41;        // over the time of both moves
constexpr double kAfter_s = 0.08;  // what a simulation goes on after both moves
constexpr double kSame_rad = 1e-9, kSame_s = 5e-4;

/// A move of each axis, tilt beginning `shift_s` after pan; null: the axis holds.
struct Pair {
  const SingleMove *pan, *tilt;
  double shift_s = 0;
};

std::vector<double> summed_W(const Pair& pair, double idle_W) {
  const auto rows = [](double s) {
    return static_cast<std::size_t>(std::lround(s / kSingleRow_s));
  };
  const std::size_t begin[]{rows(std::max(0.0, -pair.shift_s)), rows(std::max(0.0, pair.shift_s))};
  std::vector<double> sum_W;
  int lane = 0;
  for (const SingleMove* move : {pair.pan, pair.tilt}) {
    if (move != nullptr) {
      sum_W.resize(std::max(sum_W.size(), begin[lane] + move->power_W.size()), idle_W);
      for (std::size_t i = 0; i < move->power_W.size(); ++i)
        sum_W[begin[lane] + i] += move->power_W[i];
    }
    ++lane;
  }
  return sum_W;
}

double lifted_V(const WorstSearch& search, const Pair& pair) {
  return run_bus(search.bus, summed_W(pair, search.idle_W), kSingleRow_s, 1).most_V;
}

/// The shift at which the bus rises most, on a grid over all that overlap and once finer.
Pair best_shift(const WorstSearch& search, Pair pair) {
  double least_s = -pair.tilt->end_s(), most_s = pair.pan->end_s();
  double best_s = 0, best_V = lifted_V(search, pair);
  for (int round = 0; round < 2; ++round) {
    const double step_s = (most_s - least_s) / (kShifts - 1);
    for (int i = 0; i < kShifts; ++i) {
      pair.shift_s = least_s + i * step_s;
      const double now_V = lifted_V(search, pair);
      if (now_V > best_V) best_V = now_V, best_s = pair.shift_s;
    }
    least_s = best_s - step_s, most_s = best_s + step_s;
  }
  pair.shift_s = best_s;
  return pair;
}

/// The pairs worth a simulation of both axes.
class Pairs {
 public:
  void add(const Pair& pair) {
    const auto same = [](const SingleMove* a, const SingleMove* b) {
      if (a == nullptr || b == nullptr) return a == b;
      return std::abs(a->from_rad - b->from_rad) < kSame_rad &&
             std::abs(a->move_rad - b->move_rad) < kSame_rad && a->limit_radps == b->limit_radps;
    };
    for (const Pair& there : pairs_) {
      if (same(there.pan, pair.pan) && same(there.tilt, pair.tilt) &&
          std::abs(there.shift_s - pair.shift_s) < kSame_s)
        return;
    }
    pairs_.push_back(pair);
  }
  const std::vector<Pair>& all() const { return pairs_; }

 private:
  std::vector<Pair> pairs_;
};

using Best = std::array<std::vector<SingleMove>, 2>;  // by Axis

void add_aligned(Pairs& pairs, const Best& best, double SingleMove::*at_s) {
  for (const auto& moves : best) {
    if (moves.empty()) continue;
    const bool is_pan = &moves == &best[0];
    pairs.add({is_pan ? &moves[0] : nullptr, is_pan ? nullptr : &moves[0], 0});
  }
  for (const SingleMove& pan : best[0]) {
    for (const SingleMove& tilt : best[1]) {
      pairs.add({&pan, &tilt, pan.*at_s - tilt.*at_s});
      pairs.add({&pan, &tilt, 0});
    }
  }
}

void add_best_shifts(Pairs& pairs, const WorstSearch& search, const Best& best) {
  for (const SingleMove& pan : best[0])
    for (const SingleMove& tilt : best[1]) pairs.add(best_shift(search, {&pan, &tilt}));
}

/// Where an axis stands that only holds: in the middle of its span.
double held_rad(const MoveSpan& span) { return (span.least_rad + span.most_rad) / 2; }

BusMoves simulated(const WorstSearch& search, const Pair& pair, const std::stop_token& stop) {
  BusMoves run;
  CoupledModel model = search.model;
  double end_s = 0;
  const auto tell = [&](std::size_t lane, const SingleMove* move, double begin_s, double& from_rad,
                        double& move_rad, double& limit_radps) {
    from_rad = move == nullptr ? held_rad(search.span[lane]) : move->from_rad;
    move_rad = move == nullptr ? 0 : move->move_rad;
    limit_radps = move == nullptr ? model.axis[lane].control.speed_limit_radps : move->limit_radps;
    model.axis[lane].control.speed_limit_radps = limit_radps;
    if (move != nullptr) end_s = std::max(end_s, begin_s + move->end_s());
  };
  BothMoves& moves = run.moves;
  moves.begin_s = {std::max(0.0, -pair.shift_s), std::max(0.0, pair.shift_s)};
  tell(0, pair.pan, moves.begin_s.pan, moves.from_rad.pan, moves.move_rad.pan, run.limit_radps.pan);
  tell(1, pair.tilt, moves.begin_s.tilt, moves.from_rad.tilt, moves.move_rad.tilt,
       run.limit_radps.tilt);
  const CoupledTrace trace = simulate_moves(model, moves, end_s + kAfter_s, stop);
  run.row_s = trace.axis[0].sample_time_s;
  for (const double bus_A : trace.bus_A)
    run.power_W.push_back(bus_A * model.axis[0].drive.bus_voltage_V + search.idle_W);
  const BusRun bus = run_bus(search.bus, run.power_W, run.row_s);
  run.most_A = bus.most_A;
  run.most_V = bus.most_V;
  const PowerSums sums = power_sums(run.power_W, run.row_s);
  run.most_returned_W = sums.most_returned_W;
  run.returned_J = sums.returned_J;
  run.lifted_J =
      gazewright::lifted_J(run.power_W, run.row_s, search.bus.absorbs_A * search.bus.voltage_V);
  const auto place = [&](const std::vector<double>& values, double& at_s, PanTilt& pose_rad) {
    const auto row = static_cast<std::size_t>(std::ranges::max_element(values) - values.begin());
    at_s = static_cast<double>(row) * run.row_s;
    pose_rad = moves.from_rad + PanTilt{trace.axis[0].angle_rad[row], trace.axis[1].angle_rad[row]};
  };
  place(bus.source_A, run.most_A_at_s, run.most_A_pose_rad);
  place(bus.voltage_V, run.most_V_at_s, run.most_V_pose_rad);
  return run;
}

}  // namespace

double WorstMoves::most_returned_W() const {
  double most_W = 0;
  for (const BusMoves& run : tried) most_W = std::max(most_W, run.most_returned_W);
  return most_W;
}

double WorstMoves::lifted_J() const {
  double most_J = 0;
  for (const BusMoves& run : tried) most_J = std::max(most_J, run.lifted_J);
  return most_J;
}

WorstMoves worst_moves(const WorstSearch& search, const std::stop_token& stop) {
  WorstMoves worst;
  std::array<std::vector<SingleMove>, 2> single;
  const auto look = [&](std::size_t lane) {
    single[lane] = single_moves(search.model.axis[lane], search.span[lane],
                                lane == 0 ? search.task_rad.pan : search.task_rad.tilt, stop);
  };
  {
    const std::jthread aside([&] { look(1); });
    look(0);
  }
  worst.single_moves = static_cast<int>(single[0].size() + single[1].size());
  const auto best = [&](double SingleMove::*by) -> Best {
    return {best_of(single[0], kBest, by), best_of(single[1], kBest, by)};
  };
  const Best drawing = best(&SingleMove::most_W), lifting = best(&SingleMove::lifted_J),
             returning = best(&SingleMove::most_returned_W);
  Pairs pairs;
  add_aligned(pairs, drawing, &SingleMove::most_at_s);
  if (search.by_voltage) {
    add_aligned(pairs, lifting, &SingleMove::lifted_at_s);
    add_aligned(pairs, returning, &SingleMove::most_returned_at_s);
    add_best_shifts(pairs, search, lifting);
  }
  if (stop.stop_requested()) return worst;
  std::vector<BusMoves> runs(pairs.all().size());
  const auto run = [&](std::size_t first) {
    for (std::size_t i = first; i < runs.size() && !stop.stop_requested(); i += 2)
      runs[i] = simulated(search, pairs.all()[i], stop);
  };
  {
    const std::jthread aside([&] { run(1); });
    run(0);
  }
  if (stop.stop_requested()) return worst;
  worst.tried = std::move(runs);
  for (std::size_t i = 1; i < worst.tried.size(); ++i) {
    if (worst.tried[i].most_A > worst.by_current().most_A * (1 + 1e-9)) worst.current = i;
    if (worst.tried[i].most_V > worst.by_voltage().most_V * (1 + 1e-9)) worst.voltage = i;
  }
  return worst;
}

}  // namespace gazewright
