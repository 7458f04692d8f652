#include "core/supply/bus.h"

#include <algorithm>
#include <cmath>

namespace gazewright {
namespace {

constexpr double kInfinite = std::numeric_limits<double>::infinity();

/// One step: a·V² + fixed = V·I_source(V) − P_resistor(V), whose left side grows faster with V than
/// the right one, so there is one solution (the upper of two where the source sags).
class BusStep {
 public:
  BusStep(const Bus& bus, double from_V, double power_W, double step_s)
      : bus_(bus),
        per_V2_(std::isinf(step_s) ? 0 : bus.capacitance_F / (2 * step_s)),
        fixed_W_(power_W - per_V2_ * from_V * from_V) {}

  BusPoint solve() const {
    BusPoint point = without_resistor(per_V2_);
    if (point.voltage_V > bus_.chopper_V && std::isfinite(bus_.resistor_ohm)) return chopped();
    return point;
  }

 private:
  BusPoint without_resistor(double per_V2) const {
    if (bus_.resistance_ohm > 0) return behind_resistance(per_V2);
    const double V = bus_.voltage_V, source_A = (per_V2 * V * V + fixed_W_) / V;
    if (source_A >= -bus_.absorbs_A || fixed_W_ >= 0) return {V, source_A, 0, false};
    return filling(per_V2);
  }

  BusPoint behind_resistance(double per_V2) const {
    const double R = bus_.resistance_ohm, a = per_V2 + 1 / R, b = bus_.voltage_V / R;
    const double under_root = b * b - 4 * a * fixed_W_;
    const double V = (b + std::sqrt(std::max(under_root, 0.0))) / (2 * a);
    const double source_A = (bus_.voltage_V - V) / R;
    // Where nothing comes back a negative current is rounding.
    if (source_A >= -bus_.absorbs_A || fixed_W_ >= 0)
      return {V, std::max(source_A, -bus_.absorbs_A), 0, under_root < 0};
    return filling(per_V2);
  }

  /// The source takes all it can and the rest fills the capacitors.
  BusPoint filling(double per_V2) const {
    const double b = bus_.absorbs_A;
    const double below = b + std::sqrt(std::max(b * b - 4 * per_V2 * fixed_W_, 0.0));
    return {below > 0 ? -2 * fixed_W_ / below : kInfinite, -b, 0, false};
  }

  BusPoint chopped() const {
    const double V = bus_.chopper_V, most_W = V * V / bus_.resistor_ohm;
    const double R = bus_.resistance_ohm;
    const double source_A =
        R > 0 ? std::max(-bus_.absorbs_A, (bus_.voltage_V - V) / R) : -bus_.absorbs_A;
    const double burnt_W = V * source_A - per_V2_ * V * V - fixed_W_;
    if (burnt_W <= most_W) return {V, source_A, std::max(burnt_W, 0.0), false};
    BusPoint point = without_resistor(per_V2_ + 1 / bus_.resistor_ohm);
    point.resistor_W = point.voltage_V * point.voltage_V / bus_.resistor_ohm;
    return point;
  }

  const Bus& bus_;
  double per_V2_, fixed_W_;
};

/// Parts of a straight line between two values, above and below zero, over a length of 1.
struct Halves {
  double above, below;
};
Halves halves(double from, double to) {
  if (from >= 0 && to >= 0) return {(from + to) / 2, 0};
  if (from <= 0 && to <= 0) return {0, -(from + to) / 2};
  const double span = std::abs(from) + std::abs(to);
  const double up = std::max(from, to), down = -std::min(from, to);
  return {up * up / span / 2, down * down / span / 2};
}

double mean_of(std::span<const double> values, double (*of)(double)) {
  if (values.size() < 2) return values.empty() ? 0 : of(values.front());
  double sum = 0;
  for (std::size_t i = 1; i < values.size(); ++i) sum += (of(values[i - 1]) + of(values[i])) / 2;
  return sum / static_cast<double>(values.size() - 1);
}

}  // namespace

BusPoint steady_bus(const Bus& bus, double power_W) {
  return BusStep(bus, bus.voltage_V, power_W, kInfinite).solve();
}

BusRun run_bus(const Bus& bus, std::span<const double> power_W, double row_s, int substeps) {
  BusRun run;
  if (power_W.empty()) return run;
  run.least_V = kInfinite;
  BusPoint point = steady_bus(bus, std::max(power_W.front(), 0.0));
  const auto add = [&] {
    run.voltage_V.push_back(point.voltage_V);
    run.source_A.push_back(point.source_A);
    run.resistor_W.push_back(point.resistor_W);
  };
  const auto note = [&] {
    run.least_V = std::min(run.least_V, point.voltage_V);
    run.most_V = std::max(run.most_V, point.voltage_V);
    run.most_A = std::max(run.most_A, point.source_A);
    run.starved |= point.starved;
    if (point.resistor_W > 0)
      run.most_resistor_W =
          std::max(run.most_resistor_W, point.voltage_V * point.voltage_V / bus.resistor_ohm);
  };
  add(), note();
  for (std::size_t row = 1; row < power_W.size(); ++row) {
    for (int part = 1; part <= substeps; ++part) {
      const double at = static_cast<double>(part) / substeps;
      const double now_W = power_W[row - 1] + at * (power_W[row] - power_W[row - 1]);
      // What an endless voltage stands for has no successor.
      const double from_V = std::isfinite(point.voltage_V) ? point.voltage_V : bus.voltage_V;
      point = BusStep(bus, from_V, now_W, row_s / substeps).solve();
      run.resistor_J += point.resistor_W * row_s / substeps;
      note();
    }
    add();
  }
  return run;
}

double BusRun::source_mean_A() const {
  return mean_of(source_A, [](double x) { return x; });
}
double BusRun::source_rms_A() const {
  return std::sqrt(mean_of(source_A, [](double x) { return x * x; }));
}

PowerSums power_sums(std::span<const double> power_W, double row_s) {
  PowerSums sums;
  for (std::size_t row = 0; row < power_W.size(); ++row) {
    sums.most_W = std::max(sums.most_W, power_W[row]);
    sums.most_returned_W = std::max(sums.most_returned_W, -power_W[row]);
    if (row == 0) continue;
    const Halves parts = halves(power_W[row - 1], power_W[row]);
    sums.drawn_J += parts.above * row_s;
    sums.returned_J += parts.below * row_s;
  }
  return sums;
}

double integral(std::span<const double> value, double row_s, double until_s) {
  if (value.empty() || until_s <= 0) return 0;
  double sum = 0;
  for (std::size_t row = 1; row < value.size(); ++row) {
    const double begin_s = static_cast<double>(row - 1) * row_s;
    if (begin_s >= until_s) return sum;
    const double part = std::min(1.0, (until_s - begin_s) / row_s);
    const double end = value[row - 1] + part * (value[row] - value[row - 1]);
    sum += part * row_s * (value[row - 1] + end) / 2;
  }
  const double last_s = static_cast<double>(value.size() - 1) * row_s;
  return sum + value.back() * std::max(0.0, until_s - last_s);
}

double lifted_J(std::span<const double> power_W, double row_s, double absorbed_W) {
  double kept_J = 0, most_J = 0;
  for (std::size_t row = 1; row < power_W.size(); ++row) {
    const double flow_W = -(power_W[row - 1] + power_W[row]) / 2 - absorbed_W;
    kept_J = std::max(0.0, kept_J + flow_W * row_s);
    most_J = std::max(most_J, kept_J);
  }
  return most_J;
}

double capacitor_energy_J(double capacitance_F, double voltage_V) {
  return capacitance_F * voltage_V * voltage_V / 2;
}

double lifted_voltage_V(double voltage_V, double energy_J, double capacitance_F) {
  return std::sqrt(voltage_V * voltage_V + 2 * energy_J / capacitance_F);
}

double needed_capacitance_F(double energy_J, double lower_V, double upper_V) {
  return 2 * energy_J / ((upper_V - lower_V) * (upper_V + lower_V));
}

double brake_resistor_ohm(double voltage_V, double current_A, double in_series_ohm) {
  return voltage_V / current_A - in_series_ohm;
}

}  // namespace gazewright
