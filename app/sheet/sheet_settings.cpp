#include <QRegularExpression>

#include "app/plots/charts.h"
#include "app/plots/format.h"
#include "app/plots/setting_text.h"
#include "app/plots/text.h"
#include "app/sheet/sheet_sections.h"
#include "app/sheet/sheet_table.h"
#include "core/analysis/parts_list.h"

/// What to set in the drives, and which part goes where.
namespace gazewright {
namespace {

TableRow row_of(const SettingPair& pair, const Theme& theme) {
  const auto& [pan, tilt] = pair.of;
  const QString remark = setting_remark(pan ? pan : tilt);
  const bool shared = !pan || !tilt || setting_remark(pan) == setting_remark(tilt);
  TableRow row;
  row.cells << TableCell{worded(pair.any().label), {7.5}, shared ? remark : QString()};
  for (const auto& setting : pair.of) {
    TableCell value{setting_text(setting), {7.5, setting && setting->value}, {}};
    if (!shared) value.below = setting_remark(setting);
    if (setting && !setting->value) {
      value.style.size_pt = 6.5;
      if (begins_as("needs %1", setting->text)) value.style.colour = theme.bad;
    }
    row.cells << value << TableCell{first_text(setting), {7.5}, {}};
  }
  // Long keys may be broken behind an underscore, where nothing is added to them.
  static const QRegularExpression joints(QStringLiteral("(?<=_)(?=[a-z])"));
  row.cells << TableCell{
      setting_from(pair).replace(joints, QString(QChar(0x200B))), {6.5, false, theme.quiet}, {}};
  return row;
}

TableRow part_row(const PartLine& line, const Theme& theme) {
  TableRow row;
  TableCell mass{format_value(line.mass_kg, "kg", "g"), {7.5}, {}};
  if (!line.no_mass.empty()) {
    mass.text = reason_text(line.no_mass);
    mass.style = {6.8, false, theme.bad};
  }
  const TextStyle axis_style{7.5, true,
                             line.axis ? axis_text_colour(theme, *line.axis) : theme.text};
  row.cells << TableCell{number_text(line.quantity), {7.5}, {}}
            << TableCell{worded(line.what), {7.5}, {}}
            << TableCell{line.name.empty() ? QStringLiteral("–")
                                           : QString::fromStdString(line.name),
                         {7.5, true},
                         {}}
            << TableCell{line.axis ? axis_word(*line.axis) : Plots::tr("rig"), axis_style, {}}
            << TableCell{reason_text(line.key), {7.5}, {}} << mass;
  return row;
}

}  // namespace

void draw_settings(SheetPage& page, const SheetContent& content) {
  page.ensure(160);
  page.heading(Plots::tr("Drive settings"));
  const TextStyle quiet{7.5, false, page.theme().quiet}, plain{7.5, false, page.theme().text};
  page.paragraph(reason_text(settings_conventions()), quiet);
  page.paragraph(reason_text(first_power_caution()), plain);
  std::vector<TableRow> rows;
  std::string_view group;
  for (const SettingPair& pair : paired_settings(content.rig, content.analysis)) {
    if (pair.any().group != group) rows.push_back({worded(pair.any().group), {}});
    group = pair.any().group;
    rows.push_back(row_of(pair, page.theme()));
  }
  draw_table(page,
             {{Plots::tr("Setting"), 1.55, false},
              {Plots::tr("Pan"), 1.5, false},
              {Plots::tr("first"), 1.2, false},
              {Plots::tr("Tilt"), 1.5, false},
              {Plots::tr("first"), 1.2, false},
              {Plots::tr("Comes from"), 1.05, false}},
             rows);
}

void draw_parts(SheetPage& page, const SheetContent& content) {
  page.ensure(120);
  page.heading(Plots::tr("Parts"));
  const std::vector<PartLine> parts = parts_list(content.rig);
  std::vector<TableRow> rows;
  rows.reserve(parts.size());
  for (const PartLine& line : parts) rows.push_back(part_row(line, page.theme()));
  draw_table(page,
             {{Plots::tr("Number"), 0.55, true},
              {Plots::tr("Part"), 1.2, false},
              {Plots::tr("Name"), 1.7, false},
              {Plots::tr("Axis"), 0.6, false},
              {Plots::tr("Figures that tell it"), 3.4, false},
              {Plots::tr("Mass of one"), 0.9, true}},
             rows);
}

}  // namespace gazewright
