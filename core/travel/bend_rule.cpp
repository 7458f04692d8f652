#include "core/travel/bend_rule.h"

#include "core/data/prepared.h"

namespace gazewright {
namespace {

struct BendRules {
  BendRule round, ribbon;
};
BendRule rule_of(std::string_view name) {
  const DataRow& row = *data_table("cables").find(name);
  return {row.si("lasting"), row.si("still")};
}

}  // namespace

const BendRule& bend_rule(bool is_ribbon) {
  static Prepared<BendRules> prepared([] {
    return BendRules{rule_of("round"), rule_of("ribbon")};
  });
  return is_ribbon ? prepared.get().ribbon : prepared.get().round;
}

}  // namespace gazewright
