#include <fstream>

#include "app/batch/output.h"
#include "app/batch/verbs.h"
#include "core/files/path_csv.h"
#include "core/files/rig_file.h"
#include "core/files/text_check.h"

namespace gazewright::batch {
namespace {

std::string rows_of(const TrackingRuns& runs) {
  std::string text = "time_s,target_pan_rad,target_tilt_rad";
  for (std::size_t i = 1; i <= runs.detectors.size(); ++i) {
    const std::string of = '_' + std::to_string(i);
    text += ",pan_rad" + of + ",tilt_rad" + of + ",pan_error_px" + of + ",tilt_error_px" + of;
  }
  text += '\n';
  for (std::size_t row = 0; row < runs.time_s.size(); ++row) {
    std::vector<double> values{runs.time_s[row], runs.target_rad[0][row], runs.target_rad[1][row]};
    for (const DetectorRun& run : runs.detectors)
      for (const auto* columns : {&run.angle_rad, &run.place_px})
        for (const std::vector<double>& column : *columns) values.push_back(column[row]);
    text += csv_line(values);
  }
  return text;
}

/// The file's text, one byte too many where it is longer than a path may be; empty: unreadable.
std::optional<std::string> text_of(const std::string& name) {
  std::ifstream in(name, std::ios::binary);
  if (!in) return std::nullopt;
  std::string text(kLargestFile_bytes + 1, '\0');
  in.read(text.data(), static_cast<std::streamsize>(text.size()));
  if (in.bad()) return std::nullopt;
  text.resize(static_cast<std::size_t>(in.gcount()));
  return text;
}

/// Puts the path into the rig, and saves it where asked for; an exit status.
/// @param original  text of the rig
int take_path(Rig& rig, std::string_view original, const Command& command) {
  const auto text = text_of(command.path);
  if (!text)
    return complain(command.path + " cannot be read", "check its name and its rights", kBadRig);
  auto read = read_path_csv(*text, command.path);
  if (const auto* problem = std::get_if<Diagnostic>(&read))
    return complain(to_text(*problem), {}, kBadRig);
  rig = with_path(std::move(rig), std::move(std::get<std::vector<PathPoint>>(read)));
  return command.save.empty() ? kDone : write_text(command.save, write_rig(rig, original));
}

}  // namespace

int run_track(const LoadedRig& loaded, const Command& command) {
  Rig followed = *loaded.rig;
  if (!command.path.empty())
    if (const int status = take_path(followed, loaded.text, command); status != kDone)
      return status;
  const TrackingRuns runs = analyse(followed, {.remedies = false}).tracking;
  if (!runs.because.empty())
    return complain_of_missing("a track", runs.because, loaded, command.file());
  return write_text(command.out, rows_of(runs));
}

}  // namespace gazewright::batch
