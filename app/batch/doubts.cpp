#include "core/analysis/doubts.h"

#include <algorithm>

#include "app/batch/output.h"
#include "app/batch/verbs.h"
#include "core/analysis/compare.h"
#include "core/analysis/open_verdicts.h"

namespace gazewright::batch {
namespace {

/// A half-width or an uncertainty: kelvin of temperatures, points of percents.
std::string half_width(double width_si, std::string_view si_unit, std::string_view unit) {
  const std::string_view of_difference = unit_of_difference(unit);
  Shown width = shown(width_si, unit == of_difference ? si_unit : of_difference, of_difference);
  if (unit == "%") width.unit = "points";
  return "±" + with_unit(width);
}

std::string percent(double share) { return with_unit(shown(share, "1", "%")); }

std::string figure_label(const std::string& id, const FigureInfo& info) {
  const std::string axis = id.starts_with("pan.")    ? "Pan: "
                           : id.starts_with("tilt.") ? "Tilt: "
                                                     : "";
  return axis + std::string(info.label);
}

std::string open_rows(const Analysis& analysis, const Doubts& doubts) {
  Lines lines;
  for (const OpenVerdict& open : open_verdicts(analysis, doubts)) {
    const auto finding = std::ranges::find(analysis.findings, open.finding, &Finding::id);
    lines.push_back({gazewright::name_of(*finding->axis), finding->what, one_line(open.text)});
  }
  return lines.empty() ? "" : "\nVerdicts within the doubt\n" + in_columns(lines);
}

std::string doubts_table(const Rig& rig, const Analysis& analysis, const Doubts& doubts) {
  std::string text = one_line(rig.title) + "\n\nWorth measuring, the first one most\n";
  for (std::size_t i = 0; i < doubts.worth.size(); ++i)
    text += "  " + std::to_string(i + 1) + ". " + one_line(doubts.worth[i].text) + '\n';
  if (doubts.worth.empty()) text += "  none: " + why_none_worth(doubts) + '\n';
  text += open_rows(analysis, doubts);
  Lines figures;
  for (const DoubtedFigure& figure : doubts.figures) {
    const FigureInfo& info = *analysis.figure(figure.id)->info;
    const Shift& most = figure.shifts.front();
    figures.push_back({figure_label(figure.id, info),
                       with_unit(shown(figure.value, info.si_unit, info.unit)),
                       (figure.is_known_whole ? "" : "at least ") +
                           half_width(figure.uncertainty_si, info.si_unit, info.unit),
                       percent(most.share) + " " + one_line(doubts.unknowns[most.unknown].label)});
  }
  text += "\nFigures, expanded uncertainty (k = 2), the input that moves it most\n" +
          in_columns(figures);
  Lines unknowns;
  for (const Unknown& unknown : doubts.unknowns)
    unknowns.push_back(
        {one_line(unknown.label), with_unit(shown(unknown.value_si, unknown.si_unit, unknown.unit)),
         half_width(unknown.spread_si, unknown.si_unit, unknown.unit),
         unknown.is_stated ? "stated"
                           : std::string("usual, ") + gazewright::name_of(unknown.source)});
  return text + "\nInputs in doubt, half of their range\n" + in_columns(unknowns) + '\n' +
         say_exact(doubts) + '\n';
}

std::string doubts_csv(const Analysis& analysis, const Doubts& doubts) {
  std::string text = "figure,unit,value,uncertainty,unknown,low,high,share,because\n";
  for (const DoubtedFigure& figure : doubts.figures)
    for (const Shift& shift : figure.shifts)
      text += figure.id + ',' + csv_field(analysis.figure(figure.id)->info->si_unit) + ',' +
              number(figure.value) + ',' + number(figure.uncertainty_si) + ',' +
              csv_field(doubts.unknowns[shift.unknown].path) + ',' + cell(shift.low) + ',' +
              cell(shift.high) + ',' + number(shift.share) + ',' + csv_field(shift.because) + '\n';
  return text;
}

std::string json_bool(bool is) { return is ? "true" : "false"; }

/// Objects of a list, each on its own line.
template <class Part, class Text>
std::string json_list(const std::vector<Part>& parts, Text text_of) {
  std::string text = "[";
  for (const Part& part : parts)
    text += (&part == parts.data() ? "\n    {" : ",\n    {") + text_of(part) + "}";
  return text + "]";
}

std::string json_shifts(const Doubts& doubts, const DoubtedFigure& figure) {
  std::string text;
  for (const Shift& shift : figure.shifts)
    text += std::string(text.empty() ? "" : ", ") +
            "{\"unknown\": " + json_string(doubts.unknowns[shift.unknown].path) +
            ", \"low\": " + json_or_null(shift.low) + ", \"high\": " + json_or_null(shift.high) +
            ", \"because\": " + json_or_null(shift.because) +
            ", \"share\": " + number(shift.share) + "}";
  return "[" + text + "]";
}

std::string doubts_json(const Rig& rig, const Analysis& analysis, const Doubts& doubts) {
  const auto unknown_text = [](const Unknown& unknown) {
    return "\"path\": " + json_string(unknown.path) + ", \"label\": " + json_string(unknown.label) +
           ", \"unit\": " + json_string(unknown.si_unit) +
           ", \"value\": " + number(unknown.value_si) +
           ", \"spread\": " + number(unknown.spread_si) +
           ", \"stated\": " + json_bool(unknown.is_stated) +
           ", \"source\": " + json_string(gazewright::name_of(unknown.source));
  };
  const auto figure_text = [&](const DoubtedFigure& figure) {
    return "\"id\": " + json_string(figure.id) +
           ", \"unit\": " + json_string(analysis.figure(figure.id)->info->si_unit) +
           ", \"value\": " + number(figure.value) +
           ", \"uncertainty\": " + number(figure.uncertainty_si) +
           ", \"whole\": " + json_bool(figure.is_known_whole) +
           ", \"shifts\": " + json_shifts(doubts, figure);
  };
  const auto worth_text = [&](const Doubts::Worth& worth) {
    return "\"unknown\": " + json_string(doubts.unknowns[worth.unknown].path) +
           ", \"share\": " + number(worth.share) + ", \"most_of\": " + json_string(worth.most_of) +
           ", \"text\": " + json_string(worth.text);
  };
  const auto open_text = [&](const OpenVerdict& open) {
    std::string turned_by;
    for (const std::size_t unknown : open.turned_by)
      turned_by += (turned_by.empty() ? "" : ", ") + json_string(doubts.unknowns[unknown].path);
    return "\"finding\": " + json_string(open.finding) + ", \"text\": " + json_string(open.text) +
           ", \"turned_by\": [" + turned_by + "]";
  };
  return "{\n  \"rig\": " + json_string(rig.title) +
         ",\n  \"coverage\": 2,\n  \"exact\": " + std::to_string(doubts.exact) +
         ",\n  \"unknowns\": " + json_list(doubts.unknowns, unknown_text) +
         ",\n  \"figures\": " + json_list(doubts.figures, figure_text) +
         ",\n  \"worth\": " + json_list(doubts.worth, worth_text) +
         ",\n  \"open\": " + json_list(open_verdicts(analysis, doubts), open_text) + "\n}\n";
}

}  // namespace

int run_doubts(const Rig& rig, const Command& command) {
  const Analysis analysis = analyse(rig, {.remedies = false});
  const Doubts doubts = doubts_of(rig, analysis);
  if (doubts.unknowns.empty())
    return complain("no input of the rig is in doubt: " + std::to_string(doubts.exact) +
                        " values without a spread are taken as exact",
                    "say how far a value may be off, for example {value: 48 g.cm2, spread: 10 %}, "
                    "or where it is from, for example source: estimate",
                    kBadRig);
  switch (command.form.value_or(Form::table)) {
    case Form::json:
      return write_out(doubts_json(rig, analysis, doubts));
    case Form::csv:
      return write_out(doubts_csv(analysis, doubts));
    case Form::table:
      break;
  }
  return write_out(doubts_table(rig, analysis, doubts));
}

}  // namespace gazewright::batch
