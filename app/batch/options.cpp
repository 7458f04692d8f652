#include "app/batch/options.h"

#include <algorithm>

#include "app/batch/option_table.h"

namespace gazewright::batch {
namespace {

/// The arguments sorted into words and options; values still as written.
struct Sorted {
  struct Given {
    const OptionRow* row;
    std::string_view value;
  };
  std::vector<std::string_view> words;
  std::vector<Given> options;
  bool help = false, version = false;
};

std::variant<Sorted, UsageProblem> sort_arguments(std::span<const std::string_view> arguments) {
  Sorted sorted;
  for (std::size_t i = 0; i < arguments.size(); ++i) {
    const std::string_view word = arguments[i];
    if (word == "--") {
      sorted.words.insert(sorted.words.end(), arguments.begin() + std::ptrdiff_t(i) + 1,
                          arguments.end());
      break;
    }
    if (word == "--help" || word == "-h") {
      sorted.help = true;
    } else if (word == "--version") {
      sorted.version = true;
    } else if (word.size() < 2 || word[0] != '-') {
      sorted.words.push_back(word);
    } else {
      const std::size_t equals = word.find('=');
      const OptionRow* row = option_named(word.substr(0, equals));
      if (!row)
        return UsageProblem{"there is no option " + quoted(word.substr(0, equals)),
                            "gazewright-batch --help lists them; a file whose name begins with - "
                            "goes after --"};
      Sorted::Given given{row, {}};
      if (row->value.empty() && equals != std::string_view::npos)
        return UsageProblem{std::string(row->name) + " takes no value",
                            "write " + std::string(row->name) + " alone"};
      if (!row->value.empty() && equals == std::string_view::npos && i + 1 == arguments.size())
        return UsageProblem{std::string(row->name) + " needs a value",
                            "write " + std::string(row->name) + " " + std::string(row->value)};
      if (!row->value.empty())
        given.value = equals == std::string_view::npos ? arguments[++i] : word.substr(equals + 1);
      sorted.options.push_back(given);
    }
  }
  return sorted;
}

Problem apply_options(Command& command, const Sorted& sorted) {
  std::vector<const OptionRow*> seen;
  for (const auto& [row, value] : sorted.options) {
    if (!belongs_to(*row, command.verb))
      return UsageProblem{
          std::string(row->name) + " does not belong to the verb " + name_of(command.verb),
          options_of(command.verb)};
    if (std::ranges::find(seen, row) != seen.end())
      return UsageProblem{std::string(row->name) + " is given twice", "give it once"};
    seen.push_back(row);
    if (auto problem = row->apply(command, value)) return problem;
  }
  return {};
}

Problem missing_part(const Command& command) {
  const std::string verb = name_of(command.verb);
  if (command.verb == Verb::trace && command.both && command.axis)
    return UsageProblem{"--axis and --both exclude each other", "give one of the two"};
  if (command.both && command.profile != ProfileKind::step)
    return UsageProblem{"--profile belongs to a trace of one axis",
                        "give --axis instead of --both"};
  if (command.hold && !command.both)
    return UsageProblem{"--hold belongs to a trace of both axes", "add --both"};
  if (command.verb == Verb::trace && !command.axis && !command.both)
    return UsageProblem{"trace needs an axis", "add --axis pan, --axis tilt or --both"};
  if (command.verb == Verb::sweep && !command.axis)
    return UsageProblem{verb + " needs an axis", "add --axis pan or --axis tilt"};
  if (command.verb == Verb::sweep && command.ratios.empty())
    return UsageProblem{"sweep needs the ratios", "add for example --ratio 4:40:1"};
  if (command.verb == Verb::sheet && command.out.empty())
    return UsageProblem{"sheet needs a file to write", "add for example --out sheet.pdf"};
  if (command.verb == Verb::track && !command.save.empty() && command.path.empty())
    return UsageProblem{"--save has no path to put into the rig",
                        "add for example --path walk.csv"};
  return {};
}

}  // namespace

const char* name_of(Verb verb) {
  switch (verb) {
    case Verb::figures:
      return "figures";
    case Verb::trace:
      return "trace";
    case Verb::sweep:
      return "sweep";
    case Verb::travel:
      return "travel";
    case Verb::track:
      return "track";
    case Verb::compare:
      return "compare";
    case Verb::doubts:
      return "doubts";
    case Verb::settings:
      return "settings";
    case Verb::parts:
      return "parts";
    case Verb::sheet:
      return "sheet";
    case Verb::shelf:
      return "shelf";
    case Verb::fit:
      return "fit";
  }
  return "figures";
}

Request read_command_line(std::span<const std::string_view> arguments) {
  const auto read = sort_arguments(arguments);
  if (const auto* problem = std::get_if<UsageProblem>(&read)) return *problem;
  const Sorted& sorted = std::get<Sorted>(read);
  if (sorted.version) return VersionWanted{};
  if (sorted.words.empty()) {
    if (sorted.help) return HelpWanted{};
    return UsageProblem{"no verb is given",
                        "write for example gazewright-batch figures RIG; gazewright-batch --help "
                        "says more"};
  }
  const auto* verb = std::ranges::find(kVerbs, sorted.words[0],
                                       [](Verb v) { return std::string_view(name_of(v)); });
  if (verb == std::end(kVerbs))
    return UsageProblem{"there is no verb " + quoted(sorted.words[0]),
                        "the verbs are figures, trace, sweep, travel, track, compare, doubts, "
                        "settings, parts, sheet, shelf and fit; "
                        "gazewright-batch --help explains them"};
  if (sorted.help) return HelpWanted{*verb};

  Command command;
  command.verb = *verb;
  if (auto problem = apply_options(command, sorted)) return *problem;
  if (command.verb == Verb::shelf) {
    if (sorted.words.size() < 2) return command;
    return UsageProblem{"shelf takes no file: " + quoted(sorted.words[1]) + " is one too many",
                        "name the folder of parts after --shelf"};
  }
  if (sorted.words.size() < 2)
    return UsageProblem{std::string(name_of(*verb)) + " needs a rig file",
                        "write its name, or - to read it from standard input"};
  if (sorted.words.size() > 2)
    return UsageProblem{"one rig at a time: " + quoted(sorted.words[2]) + " is one too many",
                        "run the program once for each rig"};
  if (auto problem = missing_part(command)) return *problem;
  command.rig = sorted.words[1];
  return command;
}

}  // namespace gazewright::batch
