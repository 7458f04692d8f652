#include <algorithm>
#include <array>

#include "app/batch/output.h"
#include "app/batch/verbs.h"
#include "core/analysis/drive_settings.h"
#include "core/analysis/parts_list.h"

/// The verbs `settings` and `parts`: what to set in the drives, and what to have on the table.
namespace gazewright::batch {
namespace {

std::string joined(const std::string& a, const std::string& b) {
  return a.empty() || b.empty() ? a + b : a + "; " + b;
}

std::string with_digits(double value, const DriveSetting& setting) {
  return setting.unit == "1" ? number(value)
                             : with_unit(shown(value, setting.si_unit, setting.unit));
}

std::vector<std::string> cells_of(const DriveSetting& setting) {
  const std::string from =
      setting.formula.empty()
          ? setting.from
          : (setting.from.empty() ? "" : setting.from + ": ") + std::string(setting.formula);
  const std::string first = !setting.value  ? "–"
                            : setting.first ? with_digits(*setting.first, setting)
                                            : "same";
  return {std::string(setting.label), setting.value ? with_digits(*setting.value, setting) : "–",
          first, one_line(joined(setting.text, from))};
}

std::string settings_table(const Rig& rig, const Analysis& analysis) {
  std::string text =
      one_line(rig.title) + "\n\n" + settings_conventions() + "\n" + first_power_caution() + "\n";
  for (const Axis axis : kAxes) {
    text += axis == Axis::pan ? "\nPan" : "\nTilt";
    text += ": setting, value, for the first power-up, remark and where it comes from\n";
    const std::vector<DriveSetting> settings = drive_settings(rig, analysis, axis);
    Lines lines;
    lines.reserve(settings.size());
    for (const DriveSetting& setting : settings) lines.push_back(cells_of(setting));
    text += in_columns(lines);
  }
  return text;
}

std::string settings_csv(const Rig& rig, const Analysis& analysis) {
  std::string text = "axis,key,unit,value,first,from,formula,text\n";
  for (const Axis axis : kAxes)
    for (const DriveSetting& setting : drive_settings(rig, analysis, axis))
      text += std::string(gazewright::name_of(axis)) + ',' + std::string(setting.key) + ',' +
              csv_field(setting.si_unit) + ',' + cell(setting.value) + ',' + cell(setting.first) +
              ',' + csv_field(setting.from) + ',' + csv_field(setting.formula) + ',' +
              csv_field(setting.text) + '\n';
  return text;
}

std::string json_of(const DriveSetting& setting, Axis axis) {
  return "    {\"axis\": " + json_string(gazewright::name_of(axis)) +
         ", \"key\": " + json_string(setting.key) + ", \"group\": " + json_string(setting.group) +
         ", \"label\": " + json_string(setting.label) +
         ", \"unit\": " + json_string(setting.si_unit) +
         ", \"value\": " + json_or_null(setting.value) +
         ", \"first\": " + json_or_null(setting.first) +
         ", \"text\": " + json_or_null(setting.text) + ", \"from\": " + json_or_null(setting.from) +
         ", \"formula\": " + json_or_null(std::string(setting.formula)) + "}";
}

std::string settings_json(const Rig& rig, const Analysis& analysis) {
  std::string rows;
  for (const Axis axis : kAxes)
    for (const DriveSetting& setting : drive_settings(rig, analysis, axis))
      rows += (rows.empty() ? "" : ",\n") + json_of(setting, axis);
  return "{\n  \"rig\": " + json_string(rig.title) +
         ",\n  \"conventions\": " + json_string(settings_conventions()) +
         ",\n  \"caution\": " + json_string(first_power_caution()) + ",\n  \"settings\": [\n" +
         rows + "\n  ]\n}\n";
}

std::string axis_of(const PartLine& line) {
  return line.axis ? gazewright::name_of(*line.axis) : "rig";
}

std::string parts_table(const Rig& rig) {
  Lines lines{{"Number", "Part", "Name", "Axis", "Mass of one", "Figures that tell it"}};
  const std::vector<PartLine> parts = parts_list(rig);
  lines.reserve(parts.size() + 1);
  for (const PartLine& line : parts)
    lines.push_back({number(line.quantity), std::string(line.what), one_line(line.name),
                     axis_of(line),
                     line.mass_kg ? with_unit(shown(*line.mass_kg, "kg", "g")) : line.no_mass,
                     one_line(line.key)});
  return one_line(rig.title) + "\n\n" + in_columns(lines);
}

std::string parts_csv(const Rig& rig) {
  std::string text = "number,part,name,axis,mass_kg,key,because\n";
  for (const PartLine& line : parts_list(rig))
    text += number(line.quantity) + ',' + csv_field(line.what) + ',' + csv_field(line.name) + ',' +
            axis_of(line) + ',' + cell(line.mass_kg) + ',' + csv_field(line.key) + ',' +
            csv_field(line.no_mass) + '\n';
  return text;
}

std::string parts_json(const Rig& rig) {
  std::string rows;
  for (const PartLine& line : parts_list(rig))
    rows += std::string(rows.empty() ? "" : ",\n") + "    {\"number\": " + number(line.quantity) +
            ", \"part\": " + json_string(line.what) + ", \"name\": " + json_or_null(line.name) +
            ", \"axis\": " + json_string(axis_of(line)) +
            ", \"mass\": " + json_or_null(line.mass_kg) + ", \"key\": " + json_or_null(line.key) +
            ", \"because\": " + json_or_null(line.no_mass) + "}";
  return "{\n  \"rig\": " + json_string(rig.title) + ",\n  \"parts\": [\n" + rows + "\n  ]\n}\n";
}

}  // namespace

int run_settings(const Rig& rig, const Command& command) {
  const Analysis analysis = analyse(rig, {.remedies = false});
  switch (command.form.value_or(Form::table)) {
    case Form::json:
      return write_out(settings_json(rig, analysis));
    case Form::csv:
      return write_out(settings_csv(rig, analysis));
    case Form::table:
      break;
  }
  return write_out(settings_table(rig, analysis));
}

int run_parts(const Rig& rig, const Command& command) {
  switch (command.form.value_or(Form::table)) {
    case Form::json:
      return write_out(parts_json(rig));
    case Form::csv:
      return write_out(parts_csv(rig));
    case Form::table:
      break;
  }
  return write_out(parts_table(rig));
}

}  // namespace gazewright::batch
