#include "core/heat/limits.h"

#include <algorithm>
#include <vector>

#include "core/data/prepared.h"

namespace gazewright {
namespace {

struct ThermalClass {
  std::string_view name;
  double limit_K;
};
ThermalClass class_of(const DataRow& row) { return {row.name, row.si("limit")}; }

}  // namespace

std::optional<double> insulation_limit_K(std::string_view name) {
  static Prepared<std::vector<ThermalClass>> prepared(
      [] { return rows_of("insulation", class_of); });
  const auto& classes = prepared.get();
  const auto found = std::ranges::find(classes, name, &ThermalClass::name);
  return found == classes.end() ? std::nullopt : std::optional(found->limit_K);
}

const MotorHabits& motor_habits() {
  static Prepared<MotorHabits> prepared([] {
    const DataRow& row = *data_table("duty").find("motor");
    return MotorHabits{row.si("winding_part"), row.si("winding_time"), row.si("part_into_mount")};
  });
  return prepared.get();
}

}  // namespace gazewright
