#include "core/travel/wire.h"

#include <cmath>
#include <numbers>

#include "core/data/prepared.h"

namespace gazewright {
namespace {

constexpr double kMil_m = 25.4e-6;

WireRules read_rules() {
  const DataTable& table = data_table("wires");
  const DataRow &copper = *table.find("copper"), &wire = *table.find("wire"),
                &fuse = *table.find("fuse");
  // In m/(ohm·mm²) first, as the standard states it.
  return {1e-6 / (copper.si("conductivity") / 1e6),
          copper.si("rise"),
          wire.si("circular_mil_per_ampere"),
          wire.si("most_drop"),
          fuse.si("lasting_share"),
          fuse.si("short_factor"),
          fuse.si("circular_mil_per_ampere")};
}

double circular_mils(double diameter_m) { return std::pow(diameter_m / kMil_m, 2); }

}  // namespace

const WireRules& wire_rules() {
  static Prepared<WireRules> prepared(read_rules);
  return prepared.get();
}

double wire_resistance_ohmpm(double copper_diameter_m, double temperature_K) {
  const WireRules& rules = wire_rules();
  const double area_m2 = std::numbers::pi / 4 * copper_diameter_m * copper_diameter_m;
  return rules.copper_ohmm * (1 + rules.copper_1pK * (temperature_K - kCopperReference_K)) /
         area_m2;
}

double wire_drop_V(double current_A, double resistance_ohmpm, double one_way_m) {
  return 2 * current_A * resistance_ohmpm * one_way_m;
}

double wire_rating_A(double copper_diameter_m) {
  return circular_mils(copper_diameter_m) / wire_rules().circular_mil_per_A;
}

double largest_fuse_A(double copper_diameter_m) {
  return circular_mils(copper_diameter_m) / wire_rules().fuse_circular_mil_per_A;
}

}  // namespace gazewright
