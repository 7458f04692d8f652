#include "app/batch/output.h"
#include "app/batch/verbs.h"

#ifdef GAZEWRIGHT_HAS_SHEET
#include "core/analysis/sweep.h"
#include "core/files/rig_file.h"
#endif

namespace gazewright::batch {

#ifdef GAZEWRIGHT_HAS_SHEET

int run_sheet(const Rig& rig, const Command& command) {
  const std::vector<double> ratios = usual_ratios();
  const std::array<RatioSweep, 2> sweeps{sweep_ratio(rig, Axis::pan, ratios),
                                         sweep_ratio(rig, Axis::tilt, ratios)};
  SheetOptions options;
  options.paper = command.paper;
  if (command.rig != "-")
    options.file_name = std::filesystem::path(command.rig).filename().string();
  const Analysis analysis = analyse(rig);
  if (!rig.variants.empty()) options.comparison = compare_variants(rig, analysis);
  options.doubts = doubts_of(rig, analysis);
  const auto problem = write_sheet(rig, analysis, &sweeps, command.out, options);
  if (!problem) return kDone;
  return complain(to_text(*problem), {}, kNotWritten);
}

#else

int run_sheet(const Rig&, const Command&) {
  return complain("this build has no design sheet: Qt was not found when it was built",
                  "build with the Qt 6 packages, or use figures, trace, sweep, travel, track, "
                  "compare and doubts",
                  kUsage);
}

#endif

}  // namespace gazewright::batch
