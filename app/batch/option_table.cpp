#include "app/batch/option_table.h"

#include <algorithm>

namespace gazewright::batch {
namespace {

Problem set_form(Command& command, Form form) {
  if (command.form && *command.form != form)
    return UsageProblem{"--json and --csv exclude each other", "give one of the two"};
  command.form = form;
  return {};
}
Problem set_axis(std::optional<Axis>& place, std::string_view option, std::string_view text) {
  for (const Axis axis : kAxes)
    if (text == gazewright::name_of(axis)) {
      place = axis;
      return {};
    }
  const std::string name(option);
  return UsageProblem{"there is no axis " + quoted(text),
                      "write " + name + " pan or " + name + " tilt"};
}
Problem set_profile(Command& command, std::string_view text) {
  std::string words;
  for (const ProfileKind kind : kProfiles) {
    if (text == word_of(kind)) {
      command.profile = kind;
      return {};
    }
    words += (words.empty() ? "" : ", ") + std::string(word_of(kind));
  }
  return UsageProblem{"there is no profile " + quoted(text), "the profiles are " + words};
}
Problem set_duration(Command& command, std::string_view text) {
  const auto read = read_duration(text);
  if (const auto* problem = std::get_if<UsageProblem>(&read)) return *problem;
  command.duration_s = std::get<double>(read);
  return {};
}
Problem set_ratios(Command& command, std::string_view text) {
  auto read = read_ratios(text);
  if (const auto* problem = std::get_if<UsageProblem>(&read)) return *problem;
  command.ratios = std::move(std::get<std::vector<double>>(read));
  return {};
}
Problem set_step(Command& command, std::string_view text) {
  const auto read = read_step(text);
  if (const auto* problem = std::get_if<UsageProblem>(&read)) return *problem;
  command.step_rad = std::get<double>(read);
  return {};
}
Problem set_out(Command& command, std::string_view text) {
  if (text.empty())
    return UsageProblem{"--out has no file name", "write for example --out sheet.pdf"};
  command.out = text;
  return {};
}
Problem set_file(std::string& file, std::string_view option, std::string_view text) {
  if (text.empty())
    return UsageProblem{std::string(option) + " has no file name",
                        "write the name of a file after it"};
  file = text;
  return {};
}
Problem set_paper(Command& command, std::string_view text) {
  if (text != "a4" && text != "letter")
    return UsageProblem{"there is no paper " + quoted(text), "write --paper a4 or --paper letter"};
  command.paper = text == "a4" ? Paper::a4 : Paper::letter;
  return {};
}

constexpr Verb kFigures[] = {Verb::figures}, kSheet[] = {Verb::sheet}, kTrace[] = {Verb::trace},
               kSweep[] = {Verb::sweep}, kTravel[] = {Verb::travel},
               kOneAxis[] = {Verb::trace, Verb::sweep}, kTrack[] = {Verb::track},
               kCompare[] = {Verb::compare}, kTables[] = {Verb::figures, Verb::compare},
               kToFile[] = {Verb::travel, Verb::track, Verb::sheet};

const OptionRow kOptions[] = {
    {"--json", "", kTables, [](Command& c, std::string_view) { return set_form(c, Form::json); }},
    {"--csv", "", kTables, [](Command& c, std::string_view) { return set_form(c, Form::csv); }},
    {"--strict", "", kFigures,
     [](Command& c, std::string_view) {
       c.strict = true;
       return Problem{};
     }},
    {"--all", "", kCompare,
     [](Command& c, std::string_view) {
       c.all = true;
       return Problem{};
     }},
    {"--axis", "pan|tilt", kOneAxis,
     [](Command& c, std::string_view text) { return set_axis(c.axis, "--axis", text); }},
    {"--both", "", kTrace,
     [](Command& c, std::string_view) {
       c.both = true;
       return Problem{};
     }},
    {"--hold", "pan|tilt", kTrace,
     [](Command& c, std::string_view text) { return set_axis(c.hold, "--hold", text); }},
    {"--profile", "NAME", kTrace, set_profile},
    {"--for", "TIME", kTrace, set_duration},
    {"--ratio", "FROM:TO:STEP", kSweep, set_ratios},
    {"--step", "ANGLE", kTravel, set_step},
    {"--path", "FILE", kTrack,
     [](Command& c, std::string_view text) { return set_file(c.path, "--path", text); }},
    {"--save", "FILE", kTrack,
     [](Command& c, std::string_view text) { return set_file(c.save, "--save", text); }},
    {"--out", "FILE", kToFile, set_out},
    {"--paper", "a4|letter", kSheet, set_paper},
};

}  // namespace

std::string quoted(std::string_view text) { return '"' + std::string(text) + '"'; }

const OptionRow* option_named(std::string_view name) {
  const auto* row = std::ranges::find(kOptions, name, &OptionRow::name);
  return row == std::end(kOptions) ? nullptr : row;
}
bool belongs_to(const OptionRow& row, Verb verb) {
  return std::ranges::find(row.verbs, verb) != row.verbs.end();
}
std::string options_of(Verb verb) {
  std::string text;
  for (const OptionRow& row : kOptions)
    if (belongs_to(row, verb)) text += (text.empty() ? "" : ", ") + std::string(row.name);
  return std::string(name_of(verb)) + " takes " + text;
}

}  // namespace gazewright::batch
