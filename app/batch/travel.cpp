#include "app/batch/output.h"
#include "app/batch/verbs.h"
#include "core/analysis/reach.h"

namespace gazewright::batch {
namespace {

std::string rows_of(const ReachMap& map) {
  std::string text = "pan_rad,tilt_rad,reach,limit\n";
  for (std::size_t k = 0; k < map.tilt_rad.size(); ++k) {
    const std::string tilt = number(map.tilt_rad[k]);
    for (std::size_t i = 0; i < map.pan_rad.size(); ++i) {
      const PoseLimit limit = map.at(i, k);
      text += number(map.pan_rad[i]) + ',' + tilt + (limit == PoseLimit::none ? ",1," : ",0,") +
              gazewright::name_of(limit) + '\n';
    }
  }
  return text;
}

}  // namespace

int run_travel(const LoadedRig& loaded, const Command& command) {
  const Rig& rig = *loaded.rig;
  const ReachMap map = reach_of(rig, command.step_rad);
  if (!map.because.empty())
    return complain_of_missing("its travel", map.because, loaded, command.file());
  return write_text(command.out, rows_of(map));
}

}  // namespace gazewright::batch
