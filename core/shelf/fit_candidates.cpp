#include <algorithm>
#include <cmath>

#include "core/analysis/context.h"
#include "core/analysis/inputs.h"
#include "core/shelf/fit_axis.h"

namespace gazewright {
namespace {

/// What single measures need beyond the move.
constexpr std::array<InputPath, 9> kMeasures{"task.within",
                                             "<axis>.gearbox.rated_torque",
                                             "<axis>.motor.thermal_resistance",
                                             "<axis>.motor.winding_limit",
                                             "surroundings.temperature",
                                             "<axis>.gearbox.backlash",
                                             "camera.columns",
                                             "camera.horizontal_view",
                                             "task.settle_band"};

void add_once(std::vector<std::string>& paths, std::string path) {
  if (std::ranges::find(paths, path) == paths.end()) paths.push_back(std::move(path));
}

/// Whether the missing field is one of a part that is tried.
bool is_of_part(const std::string& path, Axis axis, bool drives) {
  const std::string at = std::string(name_of(axis)) + ".";
  return path.starts_with(at + "motor.") || path.starts_with(at + "gearbox.") ||
         (drives && path.starts_with(at + "drive."));
}

Rig with_parts(const Rig& base, const Shelf& shelf, Axis axis, const FitParts& parts) {
  Rig rig = put_on(base, axis, shelf.entries[parts.motor].part);
  rig = put_on(std::move(rig), axis, shelf.entries[parts.gearbox].part);
  if (parts.drive) rig = put_on(std::move(rig), axis, shelf.entries[*parts.drive].part);
  return rig;
}

double moves_per_s(const Rig& rig) { return rig.task.moves_per_minute.value() / 60; }

double mean_dwell_s(const Rig& rig) {
  double sum_s = 0;
  for (const DutyMove& move : rig.duty) sum_s += move.dwell_s.value();
  return sum_s / static_cast<double>(rig.duty.size());  // NaN without moves
}

/// Limits that keep the gearbox whole.
void hold_back(FitCandidate& c, const Rig& rig, Axis axis) {
  const AxisModel& m = c.model;
  AxisModel uncapped = m;
  uncapped.gear.peak_torque_Nm = kInfinity;
  const double most_A = m.gear_torque_limit_Nm() / m.drive.torque_constant_NmpA;
  if (stall_torque_Nm(uncapped) > m.gear.peak_torque_Nm) c.held_A = most_A;
  c.current_A = std::min(driving_current_A(m.drive, 0), most_A);
  const double gear_radps = m.gear.input_speed_limit_radps / m.gear.ratio;
  const double free_radps =
      1.5 * m.drive.phase_voltage_V() / m.drive.torque_constant_NmpA / m.gear.ratio;
  double asked_radps = rig.axis(axis).loop.speed_limit_radps.si.value_or(kInfinity);
  asked_radps = std::min(asked_radps, m.drive_speed_limit_radps);
  if (std::min(free_radps, asked_radps) > gear_radps) c.held_radps = gear_radps;
  c.fastest_radps = std::min(asked_radps, gear_radps);
}

void take_numbers(FitCandidate& c, Context& context, Axis axis) {
  const Rig& rig = context.rig();
  const AxisParts& parts = rig.axis(axis);
  const Axis other = axis == Axis::pan ? Axis::tilt : Axis::pan;
  c.model = context.model(axis);
  c.other_load = context.model(other).load;
  c.within_s = rig.task.within_s.value();
  c.moves_per_s = moves_per_s(rig);
  c.dwell_s = mean_dwell_s(rig);
  c.air_K = rig.surroundings.temperature_K.value() + rig.surroundings.temperature_K.spread_si;
  c.winding_limit_K = parts.motor.winding_limit_K.value();
  c.thermal_resistance_KpW = parts.motor.thermal_resistance_KpW.value();
  c.rated_Nm = parts.gearbox.rated_torque_Nm.value();
  c.gap_px = c.model.gear.backlash_rad / 2 * context.pixels_per_radian();
  c.band_px = rig.task.settle_band_px.value();
  c.move_rad = std::abs(context.move_rad(axis));
  hold_back(c, rig, axis);
  c.unknown = context.missing(kMeasures, axis);
  if (std::isnan(c.moves_per_s) && std::isnan(c.dwell_s))
    c.unknown.emplace_back("task.duty.moves_per_minute");
}

FitCandidate candidate(const Rig& base, const Shelf& shelf, Axis axis, const FitParts& parts,
                       std::vector<std::string>& of_rig) {
  FitCandidate c;
  c.parts = parts;
  for (const std::size_t entry : {parts.motor, parts.gearbox}) {
    const ShelfPart& part = shelf.entries[entry].part;
    const Quantity mass = mass_of(part);
    if (!mass.si)
      c.needs.push_back(std::string(name_of(axis)) + "." + name_of(part.kind()) + ".mass");
    c.mass_kg += mass.si.value_or(0);
  }
  Context context(with_parts(base, shelf, axis, parts));
  bool is_whole = true;
  for (std::string& path : context.missing(kRigidMove, axis)) {
    const bool is_of_body = path.starts_with("on_");
    if (is_of_part(path, axis, parts.drive.has_value())) {
      c.needs.push_back(std::move(path));
    } else if (!is_of_body || c.needs.empty()) {
      is_whole = false;
      add_once(of_rig, std::move(path));
    }
  }
  if (is_whole && c.needs.empty()) take_numbers(c, context, axis);
  return c;
}

}  // namespace

std::vector<FitCandidate> fit_candidates(const Rig& base, const Shelf& shelf, Axis axis,
                                         bool drives, std::vector<std::string>& of_rig) {
  std::vector<std::optional<std::size_t>> choices;
  if (drives)
    for (const std::size_t drive : shelf.of(PartKind::drive)) choices.emplace_back(drive);
  if (choices.empty()) choices.emplace_back(std::nullopt);
  std::vector<FitCandidate> all;
  for (const std::size_t motor : shelf.of(PartKind::motor))
    for (const std::size_t gearbox : shelf.of(PartKind::gearbox))
      for (const auto& drive : choices)
        all.push_back(candidate(base, shelf, axis, {motor, gearbox, drive}, of_rig));
  return all;
}

std::vector<std::string> lacking_besides(const Rig& rig, const Shelf& shelf, Axis axis,
                                         bool drives) {
  const bool tries_drives = drives && !shelf.of(PartKind::drive).empty();
  Context context(rig);
  std::vector<std::string> lacking;
  for (const std::span<const InputPath> inputs :
       {std::span<const InputPath>(kMeasures), std::span<const InputPath>(kAdvisedSettle)})
    for (std::string& path : context.missing(inputs, axis))
      if (!is_of_part(path, axis, tries_drives)) add_once(lacking, std::move(path));
  if (std::isnan(moves_per_s(context.rig())) && rig.duty.empty())
    add_once(lacking, "task.duty.moves_per_minute");
  return lacking;
}

}  // namespace gazewright
