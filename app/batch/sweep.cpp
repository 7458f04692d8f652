#include "core/analysis/sweep.h"

#include "app/batch/output.h"
#include "app/batch/verbs.h"

namespace gazewright::batch {

int run_sweep(const LoadedRig& loaded, const Command& command) {
  const Rig& rig = *loaded.rig;
  const Axis axis = command.axis.value_or(Axis::pan);
  const RatioSweep sweep = sweep_ratio(rig, axis, command.ratios, {.is_whole = true});
  if (!sweep.because.empty())
    return complain_of_missing(std::string("a sweep of ") + name_of(axis), sweep.because, loaded,
                               command.file());
  std::string text =
      "ratio,shortest_time_s,settle_time_s,peak_torque_Nm,top_speed_rad_s,acceleration_rad_s2\n";
  for (std::size_t i = 0; i < sweep.ratio.size(); ++i)
    text += number(sweep.ratio[i]) + ',' + cell(sweep.shortest_time_s[i]) + ',' +
            cell(sweep.settle_time_s[i]) + ',' + cell(sweep.peak_torque_Nm[i]) + ',' +
            cell(sweep.top_speed_radps[i]) + ',' + cell(sweep.peak_acceleration_radps2[i]) + '\n';
  return write_out(text);
}

}  // namespace gazewright::batch
