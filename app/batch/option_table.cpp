#include "app/batch/option_table.h"

#include <algorithm>
#include <filesystem>

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
Problem set_data(Command& command, std::string_view text) {
  std::error_code ignored;
  if (!std::filesystem::is_directory(text, ignored))
    return UsageProblem{"--data: there is no folder " + quoted(text),
                        "name the folder that holds your data files"};
  command.data = text;
  return {};
}
Problem set_folder(std::string& folder, std::string_view text) {
  if (text.empty())
    return UsageProblem{"--shelf has no folder", "write the name of a folder after it"};
  folder = text;
  return {};
}
Problem set_most(Command& command, std::string_view text) {
  const auto read = read_most(text);
  if (const auto* problem = std::get_if<UsageProblem>(&read)) return *problem;
  command.most = std::get<std::size_t>(read);
  return {};
}
Problem set_paper(Command& command, std::string_view text) {
  if (text != "a4" && text != "letter")
    return UsageProblem{"there is no paper " + quoted(text), "write --paper a4 or --paper letter"};
  command.paper = text == "a4" ? Paper::a4 : Paper::letter;
  return {};
}

constexpr Verb kForms[] = {Verb::figures, Verb::fit,      Verb::compare,
                           Verb::doubts,  Verb::settings, Verb::parts},
               kFigures[] = {Verb::figures}, kSheet[] = {Verb::sheet}, kTrace[] = {Verb::trace},
               kSweep[] = {Verb::sweep}, kTravel[] = {Verb::travel},
               kOneAxis[] = {Verb::trace, Verb::sweep}, kTrack[] = {Verb::track},
               kToFile[] = {Verb::travel, Verb::track, Verb::sheet},
               kSaves[] = {Verb::track, Verb::fit}, kShelf[] = {Verb::shelf}, kFit[] = {Verb::fit},
               kOfShelf[] = {Verb::shelf, Verb::fit}, kCompare[] = {Verb::compare};

const OptionRow kOptions[] = {
    {"--json", "", kForms, [](Command& c, std::string_view) { return set_form(c, Form::json); }},
    {"--csv", "", kForms, [](Command& c, std::string_view) { return set_form(c, Form::csv); }},
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
    {"--save", "FILE", kSaves,
     [](Command& c, std::string_view text) { return set_file(c.save, "--save", text); }},
    {"--out", "FILE", kToFile, set_out},
    {"--paper", "a4|letter", kSheet, set_paper},
    {"--data", "FOLDER", kVerbs, set_data},
    {"--list", "", kShelf,
     [](Command& c, std::string_view) {
       c.list = true;
       return Problem{};
     }},
    {"--shelf", "DIR", kOfShelf,
     [](Command& c, std::string_view text) { return set_folder(c.shelf, text); }},
    {"--drives", "", kFit,
     [](Command& c, std::string_view) {
       c.drives = true;
       return Problem{};
     }},
    {"--most", "N", kFit, set_most},
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
