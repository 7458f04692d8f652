#include "core/analysis/compare.h"

#include <algorithm>
#include <cmath>

#include "app/batch/output.h"
#include "app/batch/verbs.h"

namespace gazewright::batch {
namespace {

std::string value_text(const CompareRow& row, const CompareCell& cell) {
  if (row.is_words()) return cell.word.empty() ? "–" : one_line(cell.word);
  if (!cell.value) return "–";
  return std::isinf(*cell.value) ? "none" : with_unit(shown(*cell.value, row.si_unit, row.unit));
}

/// "−12 ms", with its sign; empty where there is no number for it.
std::string difference_text(const CompareRow& row, const CompareCell& cell) {
  const CompareCell& present = row.cells.front();
  if (row.is_words() || !cell.value || !present.value) return "differs";
  const double by = *cell.value - *present.value;
  if (!std::isfinite(by) || by == 0) return "differs";
  const std::string_view unit = unit_of_difference(row.unit);
  Shown difference = shown(by, row.unit == unit ? row.si_unit : unit, unit);
  if (row.unit == "%") difference.unit = "points";
  return (by > 0 ? "+" : "") + with_unit(difference);
}

std::string cell_text(const CompareRow& row, const CompareCell& cell) {
  std::string text = value_text(row, cell);
  if (!row.is_words() && !cell.word.empty()) text += " " + one_line(cell.word);
  if (cell.differs) text += " (" + difference_text(row, cell) + ")";
  return cell.is_best ? text + " best" : text;
}

void add_rows(Lines& lines, const char* title, const std::vector<CompareRow>& rows) {
  lines.push_back({title});
  if (rows.empty()) lines.push_back({"  none"});
  for (const CompareRow& row : rows) {
    std::vector<std::string> line{"  " + one_line(row.label)};
    for (const CompareCell& cell : row.cells) line.push_back(cell_text(row, cell));
    lines.push_back(std::move(line));
  }
}

std::string titled_columns(const Lines& lines) {
  std::vector<std::size_t> widths(lines.front().size());
  for (const auto& line : lines)
    for (std::size_t i = 0; i < line.size(); ++i) widths[i] = std::max(widths[i], width(line[i]));
  std::string text;
  for (const auto& line : lines) {
    std::string row;
    for (std::size_t i = 0; i < line.size(); ++i)
      row += i + 1 < line.size() ? padded(line[i], widths[i]) + "  " : line[i];
    text += row + '\n';
  }
  return text;
}

std::string compare_table(const Rig& rig, const Comparison& comparison) {
  Lines lines{{""}};
  for (const std::string& name : comparison.names) lines.front().push_back(one_line(name));
  add_rows(lines, "Inputs that differ", comparison.inputs);
  add_rows(lines, "Figures", comparison.figures);
  add_rows(lines, "Findings", comparison.findings);
  std::string text = one_line(rig.title) + "\n\n" + titled_columns(lines);
  for (const Variant& variant : rig.variants)
    if (!variant.note.empty())
      text += "\n" + one_line(variant.name) + ": " + one_line(variant.note) + "\n";
  return text;
}

void add_csv(std::string& text, const char* part, const std::vector<CompareRow>& rows) {
  for (const CompareRow& row : rows) {
    text += std::string(part) + ',' + csv_field(row.id) + ',' + csv_field(row.si_unit);
    for (const CompareCell& cell : row.cells)
      text += ',' + (row.is_words()                          ? csv_field(cell.word)
                     : cell.value && std::isinf(*cell.value) ? "none"
                                                             : batch::cell(cell.value));
    text += '\n';
  }
}

std::string compare_csv(const Comparison& comparison) {
  std::string text = "part,id,unit";
  for (const std::string& name : comparison.names) text += ',' + csv_field(name);
  text += '\n';
  add_csv(text, "input", comparison.inputs);
  add_csv(text, "figure", comparison.figures);
  add_csv(text, "finding", comparison.findings);
  return text;
}

std::string json_cell(const CompareRow& row, const CompareCell& cell) {
  const bool has_number = !row.is_words() && cell.value && std::isfinite(*cell.value);
  const bool is_none = cell.value && std::isinf(*cell.value);
  const std::string word = is_none ? "none" : cell.word;
  return "{\"value\": " + json_or_null(has_number ? cell.value : std::nullopt) +
         ", \"word\": " + json_or_null(word) +
         ", \"differs\": " + (cell.differs ? "true" : "false") +
         ", \"best\": " + (cell.is_best ? "true" : "false") + "}";
}

std::string json_rows(const std::vector<CompareRow>& rows) {
  std::string text = "[";
  for (const CompareRow& row : rows) {
    text += &row == rows.data() ? "\n" : ",\n";
    text += "    {\"id\": " + json_string(row.id) + ", \"label\": " + json_string(row.label) +
            ", \"unit\": " + (row.is_words() ? "null" : json_string(row.si_unit)) +
            ", \"cells\": [";
    for (const CompareCell& cell : row.cells)
      text += (&cell == row.cells.data() ? "" : ", ") + json_cell(row, cell);
    text += "]}";
  }
  return text + "]";
}

std::string compare_json(const Rig& rig, const Comparison& comparison) {
  std::string text = "{\n  \"rig\": " + json_string(rig.title) + ",\n  \"designs\": [";
  for (std::size_t i = 0; i < comparison.names.size(); ++i) {
    const std::string note = i == 0 ? "" : rig.variants[i - 1].note;
    text += std::string(i == 0 ? "" : ", ") + "{\"name\": " + json_string(comparison.names[i]) +
            ", \"note\": " + json_or_null(note) + "}";
  }
  return text + "],\n  \"inputs\": " + json_rows(comparison.inputs) +
         ",\n  \"figures\": " + json_rows(comparison.figures) +
         ",\n  \"findings\": " + json_rows(comparison.findings) + "\n}\n";
}

}  // namespace

int run_compare(const Rig& rig, const Command& command) {
  if (rig.variants.empty())
    return complain("the rig has no variants to compare with",
                    "pin the present design in the window, or write a list variants into the file",
                    kBadRig);
  const Comparison comparison =
      compare_variants(rig, analyse(rig, {.remedies = false}), {.all_figures = command.all});
  switch (command.form.value_or(Form::table)) {
    case Form::json:
      return write_out(compare_json(rig, comparison));
    case Form::csv:
      return write_out(compare_csv(comparison));
    case Form::table:
      break;
  }
  return write_out(compare_table(rig, comparison));
}

}  // namespace gazewright::batch
