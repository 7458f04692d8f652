#include <filesystem>

#include "app/batch/output.h"
#include "app/batch/verbs.h"
#include "core/analysis/reach.h"
#include "core/files/rig_file.h"

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

int run_travel(const Rig& rig, const Command& command) {
  const ReachMap map = reach_of(rig, command.step_rad);
  if (!map.because.empty())
    return complain("the rig cannot give its travel: it " + map.because,
                    "add the missing values to the rig file", kBadRig);
  const std::string text = rows_of(map);
  if (command.out.empty()) return write_out(text);
  const auto problem = save_text(command.out, text);
  return problem ? complain(to_text(*problem), {}, kNotWritten) : kDone;
}

}  // namespace gazewright::batch
