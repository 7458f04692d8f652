#include "app/batch/output.h"
#include "app/batch/verbs.h"
#include "core/data/data_library.h"

namespace gazewright::batch {
namespace {

std::string value_or_null(const std::optional<double>& value) {
  const std::string text = cell(value);
  return text.empty() ? "null" : text;
}
std::string string_or_null(const std::string& text) {
  return text.empty() ? "null" : json_string(text);
}

std::string remedies_of(const Finding& finding) {
  std::string text;
  for (const Remedy& remedy : finding.remedies) text += (text.empty() ? "" : "; ") + remedy.text;
  return text;
}

std::string object_of(const Finding& finding) {
  std::string text = "{\"id\": " + json_string(finding.id);
  text += ", \"axis\": " + json_string(finding.axis ? name_of(*finding.axis) : "both");
  text += ", \"verdict\": " + json_string(name_of(finding.verdict));
  text += ", \"demand\": " + value_or_null(finding.demand);
  text += ", \"capacity\": " + value_or_null(finding.capacity);
  text += ", \"margin\": " + value_or_null(finding.margin);
  text += ", \"because\": " + string_or_null(finding.because);
  text += ", \"remedy\": " + string_or_null(remedies_of(finding));
  return text + '}';
}

/// Items with one line each between the brackets.
std::string lines(const std::vector<std::string>& items) {
  std::string text;
  for (const std::string& item : items) text += (text.empty() ? "\n    " : ",\n    ") + item;
  return text + (items.empty() ? "" : "\n  ");
}

/// What limits the move of an axis, without its samples.
std::string object_of(const MoveLimits& limits) {
  std::string gains;
  for (const LimitGain& gain : limits.gains) {
    gains += (gains.empty() ? "{" : ", {");
    gains += "\"limit\": " + json_string(name_of(gain.limit));
    gains += ", \"share\": " + value_or_null(gain.share);
    gains += ", \"saved\": " + value_or_null(gain.saved_s);
    gains += ", \"field\": " + json_string(gain.path);
    gains += ", \"value\": " + value_or_null(gain.value_si);
    gains += ", \"text\": " + json_string(gain.text()) + '}';
  }
  return "{\"step\": " + string_or_null(limits.sentence) +
         ", \"shortest\": " + string_or_null(limits.fastest) + ", \"gains\": [" + gains + "]}";
}

/// ",\n  "own_data": [...]" where figures rest on the user's own data files, else nothing.
std::string own_data_of(const Rig& rig) {
  std::vector<std::string> values;
  for (const OwnValue& value : own_values_of(rig))
    values.push_back(
        "{\"file\": " + json_string(value.file) + ", \"row\": " + json_string(value.row) +
        ", \"key\": " + json_string(value.key) + ", \"value\": " + json_string(value.written) +
        ", \"source\": " + json_string(value.source) + '}');
  return values.empty() ? std::string() : ",\n  \"own_data\": [" + lines(values) + ']';
}

}  // namespace

std::string figures_json(const Rig& rig, const Analysis& analysis) {
  std::vector<std::string> figures, findings;
  for (const Figure& figure : analysis.figures)
    figures.push_back(json_string(figure.id) + ": " + value_or_null(figure.value));
  for (const Finding& finding : analysis.findings) findings.push_back(object_of(finding));
  const auto plan = [&](Axis axis) {
    std::string steps;
    for (const std::string& step : analysis.homing[static_cast<std::size_t>(axis)])
      steps += (steps.empty() ? "" : ", ") + json_string(step);
    return json_string(name_of(axis)) + ": [" + steps + ']';
  };
  const auto limits = [&](Axis axis) {
    return json_string(name_of(axis)) + ": " + object_of(analysis.limits_of(axis));
  };
  const auto advice = [&](Axis axis) {
    const GainAdvice& of = analysis.advice[static_cast<std::size_t>(axis)];
    std::string reasons;
    for (const std::string& sentence : of.sentences)
      reasons += (reasons.empty() ? "" : ", ") + json_string(sentence);
    return json_string(name_of(axis)) + ": {\"limited_by\": " + string_or_null(of.limited_by) +
           ", \"reasons\": [" + reasons + "]}";
  };
  const auto of_both = [](const auto& part) { return lines({part(Axis::pan), part(Axis::tilt)}); };
  return "{\n  \"rig\": " + json_string(rig.title) + ",\n  \"figures\": {" + lines(figures) +
         "},\n  \"findings\": [" + lines(findings) + "],\n  \"homing\": {" + of_both(plan) +
         "},\n  \"limits\": {" + of_both(limits) + "},\n  \"advice\": {" + of_both(advice) +
         "},\n  \"missing\": " + missing_json(missing_inputs(analysis)) + own_data_of(rig) +
         "\n}\n";
}

}  // namespace gazewright::batch
