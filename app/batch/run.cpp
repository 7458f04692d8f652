#include <cstdio>
#include <filesystem>
#include <system_error>
#include <utility>

#include "app/batch/output.h"
#include "app/batch/verbs.h"
#include "core/data/data_library.h"
#include "core/files/rig_file.h"
#include "gazewright_version.h"

namespace gazewright::batch {
namespace {

/// One byte more than a rig file may have is enough for the reader to refuse it.
constexpr std::size_t kMostInput = (1 << 20) + 1;

LoadedRig load(const std::string& name) {
  if (name != "-") return load_rig(name);
  std::string text(kMostInput, '\0');
  text.resize(std::fread(text.data(), 1, text.size(), stdin));
  if (std::ferror(stdin))
    return {.rig = {},
            .text = {},
            .diagnostics = {{.file = kStandardInput,
                             .problem = "cannot be read",
                             .fix = "check what is piped in, or name a file"}}};
  return parse_rig(text, kStandardInput);
}

int run_verb(const LoadedRig& loaded, const Command& command) {
  const Rig& rig = *loaded.rig;
  switch (command.verb) {
    case Verb::figures:
      return run_figures(rig, command);
    case Verb::trace:
      return run_trace(loaded, command);
    case Verb::sweep:
      return run_sweep(loaded, command);
    case Verb::travel:
      return run_travel(loaded, command);
    case Verb::track:
      return run_track(loaded, command);
    case Verb::compare:
      return run_compare(rig, command);
    case Verb::doubts:
      return run_doubts(rig, command);
    case Verb::settings:
      return run_settings(rig, command);
    case Verb::parts:
      return run_parts(rig, command);
    case Verb::sheet:
      return run_sheet(rig, command);
    case Verb::fit:
      return run_fit(loaded, command);
    case Verb::shelf:
      return run_shelf(command);
  }
  return kUsage;
}

/// A result may not take the place of the rig that it is made from. Done: it does not.
int refuse_to_overwrite(const Command& command) {
  for (const auto& [option, file] : {std::pair{"--save", &command.save}, {"--out", &command.out}}) {
    std::error_code ignored;
    if (std::filesystem::equivalent(command.rig, *file, ignored))
      return complain(std::string(option) + " names the rig file itself: " + one_line(*file),
                      "write to another file; once you have looked at it, move it over the rig",
                      kUsage);
  }
  return kDone;
}

int run_command(const Command& command) {
  if (const int status = refuse_to_overwrite(command); status != kDone) return status;
  const OwnData own =
      load_own_data(command.data.empty() ? own_data_folder() : std::filesystem::path(command.data));
  use_own_data(own);
  tell(own.faults);
  if (command.verb == Verb::shelf) return run_shelf(command);
  const LoadedRig loaded = load(command.rig);
  tell(loaded.diagnostics);
  return loaded.rig ? run_verb(loaded, command) : kBadRig;
}

}  // namespace

int run(std::span<const std::string_view> arguments) {
  const Request request = read_command_line(arguments);
  if (const auto* problem = std::get_if<UsageProblem>(&request))
    return complain(problem->problem, problem->fix, kUsage);
  if (const auto* help = std::get_if<HelpWanted>(&request)) return write_out(help_text(help->verb));
  if (std::holds_alternative<VersionWanted>(request))
    return write_out("gazewright-batch " + std::string(kVersion) + '\n');
  return run_command(std::get<Command>(request));
}

}  // namespace gazewright::batch
