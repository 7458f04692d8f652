#pragma once

#include <QString>
#include <array>

#include "core/analysis/analysis.h"

/// The first steps: from the task to the sheet. Each is done or not by what the rig is, nothing is
/// kept beside it.
namespace gazewright {

enum class GuideStep { task, masses, parts, ratios, findings, sheet };
inline constexpr std::size_t kGuideSteps = 6;

struct GuideState {
  std::array<bool, kGuideSteps> done{};
  bool is_done(GuideStep step) const { return done[static_cast<std::size_t>(step)]; }
  int count() const;
  bool operator==(const GuideState&) const = default;
};

/// @param sample  the rig as a sample had it, or null: in a sample a step is done once its values
///   are the user's own, else once they are there
/// @param sheet_made  a sheet was written since the rig was opened
GuideState guide_state(const Rig& rig, const Rig* sample, const Analysis& analysis,
                       bool sheet_made);

QString step_title(GuideStep step);  ///< "Put in your masses"
QString step_help(GuideStep step);   ///< one sentence: what to do there

}  // namespace gazewright
