#include <algorithm>

#include "app/batch/output.h"
#include "app/batch/verbs.h"
#include "core/data/data_library.h"

namespace gazewright::batch {
namespace {

std::string in_text(const std::optional<double>& value_si, const Finding& finding) {
  if (!value_si) return "unknown";
  return with_unit(shown(*value_si, finding.si_unit, finding.unit));
}

std::string margin_in_text(double margin) {
  constexpr double kMost_percent = 999;
  const double percent = 100 * margin;
  if (percent > kMost_percent) return "> " + rounded(kMost_percent) + " %";
  return (margin >= 0 ? "+" : "") + rounded(percent) + " %";
}

const char* symbol_of(Verdict verdict) {
  switch (verdict) {
    case Verdict::holds:
      return "✓";
    case Verdict::tight:
      return "▲";
    case Verdict::fails:
      return "✕";
    case Verdict::unknown:
      return "?";
  }
  return "?";
}

std::string figure_rows(const Analysis& analysis) {
  std::size_t id_width = 0, value_width = 0;
  std::vector<std::pair<const Figure*, Shown>> rows;
  for (const Figure& figure : analysis.figures) {
    if (figure.is_aside) continue;
    rows.emplace_back(&figure, figure.value
                                   ? shown(*figure.value, figure.info->si_unit, figure.info->unit)
                                   : Shown{"–", ""});
    id_width = std::max(id_width, width(figure.id));
    value_width = std::max(value_width, width(rows.back().second.value));
  }
  std::string text;
  for (const auto& [figure, value] : rows) {
    text += "  " + padded(figure->id, id_width) + "  " + padded_left(value.value, value_width) +
            ' ' + padded(value.unit, 8) + "  " + std::string(figure->info->label);
    if (!figure->value) text += ": " + one_line(figure->because);
    text += '\n';
  }
  return text;
}

std::string plan_rows(const Analysis& analysis) {
  std::string text;
  for (const Axis axis : kAxes) {
    text += std::string("\nHoming plan, ") + name_of(axis) + '\n';
    int step = 0;
    for (const std::string& line : analysis.homing[static_cast<std::size_t>(axis)])
      text += "  " + std::to_string(++step) + ". " + one_line(line) + '\n';
  }
  return text;
}

std::string limit_rows(const Analysis& analysis) {
  std::string text;
  for (const Axis axis : kAxes) {
    const MoveLimits& limits = analysis.limits_of(axis);
    text += std::string("\nWhat limits the move, ") + name_of(axis) + '\n';
    for (const std::string& line : {limits.sentence, limits.fastest})
      if (!line.empty()) text += "  " + one_line(line) + '\n';
    for (const LimitGain& gain : limits.gains) text += "  remedy: " + one_line(gain.text()) + '\n';
  }
  return text;
}

std::string advice_rows(const Analysis& analysis) {
  std::string text;
  for (const Axis axis : kAxes) {
    const GainAdvice& advice = analysis.advice[static_cast<std::size_t>(axis)];
    text += std::string("\nGain advice, ") + name_of(axis);
    if (!advice.limited_by.empty()) text += ": limited by " + one_line(advice.limited_by);
    text += '\n';
    for (const std::string& line : advice.sentences) text += "  " + one_line(line) + '\n';
  }
  return text;
}

std::string profile_rows(const Analysis& analysis) {
  std::string text;
  for (const Axis axis : kAxes) {
    const std::string& advice = analysis.profiles[static_cast<std::size_t>(axis)].advice;
    if (!advice.empty()) text += std::string("  ") + name_of(axis) + ": " + advice + '\n';
  }
  return text.empty() ? text : "\nMove profiles\n" + text;
}

std::string finding_rows(const Finding& finding) {
  const std::string axis = finding.axis ? name_of(*finding.axis) : "both";
  std::string text = std::string("  ") + symbol_of(finding.verdict) + ' ' +
                     padded(name_of(finding.verdict), 7) + "  " + padded(axis, 4) + "  " +
                     finding.what;
  if (finding.demand || finding.capacity)
    text += ": demand " + in_text(finding.demand, finding) + ", capacity " +
            in_text(finding.capacity, finding);
  if (finding.margin) text += ", margin " + margin_in_text(*finding.margin);
  text += '\n';
  if (!finding.because.empty()) text += "      " + one_line(finding.because) + '\n';
  for (const Remedy& remedy : finding.remedies)
    text += "      remedy: " + one_line(remedy.text) + '\n';
  return text;
}

/// What the figures take from the user's own data files.
std::string own_data_rows(const Rig& rig) {
  std::string text;
  for (const OwnValue& value : own_values_of(rig))
    text += "  " +
            one_line(value.file + ": " + value.row + '.' + value.key + " = " + value.written +
                     ", " + value.source) +
            '\n';
  return text.empty() ? text : "\nFrom your own data files\n" + text;
}

}  // namespace

std::string figures_table(const Rig& rig, const Analysis& analysis) {
  std::string text = one_line(rig.title) + '\n' + missing_table(missing_inputs(analysis)) +
                     "\nFindings, worst first\n";
  for (const Finding& finding : analysis.findings) text += finding_rows(finding);
  text += "\nFigures\n" + figure_rows(analysis);
  text += profile_rows(analysis) + limit_rows(analysis);
  text += plan_rows(analysis) + advice_rows(analysis);
  if (!analysis.swap.text.empty())
    text += "\nThe two gearboxes exchanged\n  " + one_line(analysis.swap.text) + '\n';
  return text + own_data_rows(rig);
}

std::string figures_csv(const Analysis& analysis) {
  std::string text = "id,value,unit,because\n";
  for (const Figure& figure : analysis.figures)
    text += csv_field(figure.id) + ',' + cell(figure.value) + ',' +
            csv_field(figure.info->si_unit) + ',' + csv_field(figure.because) + '\n';
  return text;
}

int run_figures(const Rig& rig, const Command& command) {
  const Analysis analysis = analyse(rig);
  const bool fails = std::ranges::any_of(
      analysis.findings, [](const Finding& f) { return f.verdict == Verdict::fails; });
  const int status = command.strict && fails ? kFails : kDone;
  switch (command.form.value_or(Form::table)) {
    case Form::json:
      return write_out(figures_json(rig, analysis), status);
    case Form::csv:
      return write_out(figures_csv(analysis), status);
    case Form::table:
      break;
  }
  return write_out(figures_table(rig, analysis), status);
}

}  // namespace gazewright::batch
