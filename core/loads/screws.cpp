#include "core/loads/screws.h"

#include <algorithm>
#include <cmath>

#include "core/data/prepared.h"

namespace gazewright {
namespace {

Thread thread_of(const DataRow& row) {
  return {row.name, row.si("diameter"), row.si("pitch"), row.si("head_mean")};
}
ScrewClass class_of(const DataRow& row) { return {row.name, row.si("proof"), row.si("tensile")}; }

JointRules read_rules() {
  const DataRow& row = *data_table("joints").find("tightening");
  return {row.si("preload_scatter"), row.si("left_in_plastic"), row.si("share_of_proof"),
          row.si("share_of_pull_out")};
}

template <class Rows>
auto* find(const Rows& rows, std::string_view name) {
  const auto at =
      std::find_if(rows.begin(), rows.end(), [&](const auto& row) { return row.name == name; });
  return at == rows.end() ? nullptr : &*at;
}

/// Part of the tightening torque that twists the shank, per preload. [m]
double thread_torque_m(const Thread& thread, double friction) {
  return 0.159 * thread.pitch_m + 0.578 * thread.pitch_diameter_m() * friction;
}

}  // namespace

double Thread::stress_area_m2() const {
  const double d = diameter_m - 0.9382 * pitch_m;
  return M_PI / 4 * d * d;
}

const Thread* find_thread(std::string_view name) {
  static Prepared<std::vector<Thread>> threads([] { return rows_of("threads", thread_of); });
  return find(threads.get(), name);
}
const ScrewClass* find_screw_class(std::string_view name) {
  static Prepared<std::vector<ScrewClass>> classes([] { return rows_of("screws", class_of); });
  return find(classes.get(), name);
}
const JointRules& joint_rules() {
  static Prepared<JointRules> rules(read_rules);
  return rules.get();
}

double nut_factor(const Thread& thread, double friction) {
  return (thread_torque_m(thread, friction) + thread.head_mean_m / 2 * friction) /
         thread.diameter_m;
}

double preload_N(double torque_Nm, double nut_factor, double diameter_m) {
  return torque_Nm / (nut_factor * diameter_m);
}

double tightening_stress_Pa(const Thread& thread, double friction, double preload_N) {
  const double pull_Pa = preload_N / thread.stress_area_m2();
  const double core_m = (thread.pitch_diameter_m() + thread.minor_diameter_m()) / 2;
  const double twist_Pa =
      preload_N * thread_torque_m(thread, friction) / (M_PI / 16 * core_m * core_m * core_m);
  return std::sqrt(pull_Pa * pull_Pa + 3 * twist_Pa * twist_Pa);
}

double torque_for_stress_Nm(const Thread& thread, double friction, double stress_Pa) {
  const double preload = stress_Pa / tightening_stress_Pa(thread, friction, 1);
  return nut_factor(thread, friction) * thread.diameter_m * preload;
}

double slip_torque_Nm(double friction, double screws, double preload_N, double circle_diameter_m) {
  return friction * screws * preload_N * circle_diameter_m / 2;
}

double worst_screw_pull_N(double moment_Nm, double axial_N, double screws,
                          double circle_diameter_m) {
  return 4 * moment_Nm / (screws * circle_diameter_m) + axial_N / screws;
}

double thread_engagement_m(const Thread& thread) {
  return 2 * thread.stress_area_m2() / (0.5 * M_PI * thread.pitch_diameter_m());
}

double clamp_torque_Nm(double friction, double clamp_force_N, double diameter_m) {
  return friction * clamp_force_N * diameter_m;
}

double flat_torque_Nm(double pressure_Pa, double length_m, double diameter_m) {
  const double width_m = 0.6 * diameter_m;
  return pressure_Pa * length_m * width_m * width_m / 12;
}

double key_torque_Nm(double pressure_Pa, double length_m, double diameter_m) {
  return pressure_Pa * length_m * diameter_m / 8 * diameter_m / 2;
}

}  // namespace gazewright
