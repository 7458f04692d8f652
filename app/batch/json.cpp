#include "app/batch/output.h"
#include "app/batch/verbs.h"

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
  const auto advice = [&](Axis axis) {
    const GainAdvice& of = analysis.advice[static_cast<std::size_t>(axis)];
    std::string reasons;
    for (const std::string& sentence : of.sentences)
      reasons += (reasons.empty() ? "" : ", ") + json_string(sentence);
    return json_string(name_of(axis)) + ": {\"limited_by\": " + string_or_null(of.limited_by) +
           ", \"reasons\": [" + reasons + "]}";
  };
  return "{\n  \"rig\": " + json_string(rig.title) + ",\n  \"figures\": {" + lines(figures) +
         "},\n  \"findings\": [" + lines(findings) + "],\n  \"homing\": {" +
         lines({plan(Axis::pan), plan(Axis::tilt)}) + "},\n  \"advice\": {" +
         lines({advice(Axis::pan), advice(Axis::tilt)}) + "}\n}\n";
}

}  // namespace gazewright::batch
