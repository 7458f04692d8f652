#pragma once

#include <cstddef>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

#include "app/sheet/write_sheet.h"
#include "core/analysis/reach.h"
#include "core/motion/profile.h"
#include "core/rig/rig.h"

/// The command line of gazewright-batch: `VERB [options] RIG`, options before or after the rig.
namespace gazewright::batch {

enum class Verb {
  figures,
  trace,
  sweep,
  travel,
  track,
  compare,
  doubts,
  settings,
  parts,
  sheet,
  shelf,
  fit
};
inline constexpr Verb kVerbs[] = {Verb::figures, Verb::trace,   Verb::sweep,  Verb::travel,
                                  Verb::track,   Verb::compare, Verb::doubts, Verb::settings,
                                  Verb::parts,   Verb::sheet,   Verb::shelf,  Verb::fit};
const char* name_of(Verb verb);

enum class Form { table, json, csv };

inline constexpr const char* kStandardInput = "standard input";  ///< in place of its file's name

/// What is to be done, checked.
struct Command {
  Verb verb = Verb::figures;
  std::string rig;  ///< file name; "-" is standard input
  std::string file() const { return rig == "-" ? kStandardInput : rig; }  ///< as messages call it
  std::optional<Form> form;
  bool strict = false;
  bool all = false;  ///< of compare: all figures
  std::optional<Axis> axis;
  bool both = false;                        ///< of a trace: both axes at once
  std::optional<Axis> hold;                 ///< of a trace of both: the axis that holds its place
  ProfileKind profile = ProfileKind::step;  ///< of a trace of one axis
  double duration_s = 0.6;
  std::vector<double> ratios;        ///< of a sweep
  double step_rad = kReachStep_rad;  ///< of travel
  std::string out;                   ///< of a sheet; of travel and track, empty: standard output
  std::string path;                  ///< of track: CSV that takes the place of the target
  std::string save;  ///< of track: the rig with that path; of fit: with the best parts
  Paper paper = Paper::a4;
  std::string data;       ///< folder of own data files; empty: the user's
  bool list = false;      ///< of shelf: every part
  std::string shelf;      ///< folder of parts; empty: the user's own
  bool drives = false;    ///< of fit: the shelf's drives too
  std::size_t most = 20;  ///< rows of fit
};
/// A question about the program itself.
struct HelpWanted {
  std::optional<Verb> verb;  ///< empty: the whole program
};
struct VersionWanted {};
/// Wrong usage: what is wrong and what to do.
struct UsageProblem {
  std::string problem, fix;
};

using Request = std::variant<Command, HelpWanted, VersionWanted, UsageProblem>;

/// Reads the arguments after the program's name. `--` ends options; `--name value` and
/// `--name=value` are the same.
Request read_command_line(std::span<const std::string_view> arguments);

/// FROM:TO:STEP as ratios, both ends included where the step meets them; at most
/// kMostSweepPoints.
inline constexpr std::size_t kMostSweepPoints = 10000;
std::variant<std::vector<double>, UsageProblem> read_ratios(std::string_view text);
/// "0.6" (seconds) or "600 ms"; above 0, at most 60 s.
std::variant<double, UsageProblem> read_duration(std::string_view text);
/// A whole number from 1 to 1000.
std::variant<std::size_t, UsageProblem> read_most(std::string_view text);
/// "2 deg" as radians; 0.25 to 30 deg.
std::variant<double, UsageProblem> read_step(std::string_view text);

}  // namespace gazewright::batch
