#include "core/supply/supply_rules.h"

#include "core/data/prepared.h"

namespace gazewright {

const SupplyRules& supply_rules() {
  static Prepared<SupplyRules> prepared([] {
    const DataRow& row = *data_table("supply").find("bus");
    return SupplyRules{row.si("most_sag"), row.si("chopper_of_trip")};
  });
  return prepared.get();
}

}  // namespace gazewright
