#include <map>

#include "app/plots/charts.h"
#include "app/plots/format.h"
#include "app/plots/text.h"
#include "app/sheet/sheet_sections.h"
#include "app/sheet/sheet_table.h"

/// The table of figures: pan and tilt side by side, grouped by subject.
namespace gazewright {
namespace {

struct GroupName {
  std::string_view key;  ///< the id's part after the axis, or its first part
  const char* name;
};
constexpr GroupName kGroups[]{
    {"mass", QT_TRANSLATE_NOOP("Plots", "Masses")},
    {"inertia", QT_TRANSLATE_NOOP("Plots", "Inertia")},
    {"balance", QT_TRANSLATE_NOOP("Plots", "Balance and gravity")},
    {"gravity", QT_TRANSLATE_NOOP("Plots", "Balance and gravity")},
    {"motor", QT_TRANSLATE_NOOP("Plots", "Motor")},
    {"output", QT_TRANSLATE_NOOP("Plots", "At the output")},
    {"ratio", QT_TRANSLATE_NOOP("Plots", "Ratio and shortest move")},
    {"move", QT_TRANSLATE_NOOP("Plots", "Ratio and shortest move")},
    {"step", QT_TRANSLATE_NOOP("Plots", "Step response")},
    {"bracket", QT_TRANSLATE_NOOP("Plots", "Step response")},
    {"picture", QT_TRANSLATE_NOOP("Plots", "Step response")},
    {"smooth", QT_TRANSLATE_NOOP("Plots", "Slow turning")},
    {"loop", QT_TRANSLATE_NOOP("Plots", "Loops")},
    {"gap", QT_TRANSLATE_NOOP("Plots", "Swing in the gap")},
    {"advice", QT_TRANSLATE_NOOP("Plots", "Advised gains")},
    {"coupling", QT_TRANSLATE_NOOP("Plots", "Both axes at once")},
    {"both", QT_TRANSLATE_NOOP("Plots", "Both axes at once")},
    {"travel", QT_TRANSLATE_NOOP("Plots", "Travel")},
    {"cable", QT_TRANSLATE_NOOP("Plots", "Cable")},
    {"stop", QT_TRANSLATE_NOOP("Plots", "Hard stops")},
    {"power_off", QT_TRANSLATE_NOOP("Plots", "Without power")},
    {"reach", QT_TRANSLATE_NOOP("Plots", "Reach")},
    {"homing", QT_TRANSLATE_NOOP("Plots", "Homing")},
    {"camera", QT_TRANSLATE_NOOP("Plots", "Picture and pointing")},
    {"pointing", QT_TRANSLATE_NOOP("Plots", "Picture and pointing")},
    {"eye", QT_TRANSLATE_NOOP("Plots", "Picture and pointing")},
    {"tracking", QT_TRANSLATE_NOOP("Plots", "Tracking")},
    {"heat", QT_TRANSLATE_NOOP("Plots", "Heat")},
    {"supply", QT_TRANSLATE_NOOP("Plots", "Supply")},
    {"bearing", QT_TRANSLATE_NOOP("Plots", "Bearings and gearbox output")},
    {"joint", QT_TRANSLATE_NOOP("Plots", "Joints")},
    {"arm", QT_TRANSLATE_NOOP("Plots", "Arm")},
    {"stand", QT_TRANSLATE_NOOP("Plots", "Stand")},
};

std::optional<Axis> axis_of(std::string_view id) {
  if (id.starts_with("pan.")) return Axis::pan;
  if (id.starts_with("tilt.")) return Axis::tilt;
  return {};
}

std::string_view without_axis(std::string_view id) {
  return axis_of(id) ? id.substr(id.find('.') + 1) : id;
}

QString group_of(std::string_view id) {
  const std::string_view rest = without_axis(id);
  const std::string_view key = rest.substr(0, rest.find('.'));
  for (const GroupName& group : kGroups) {
    if (group.key == key) return Plots::tr(group.name);
  }
  QString name = QString::fromUtf8(key.data(), qsizetype(key.size()));
  return name.left(1).toUpper() + name.mid(1);
}

struct FigureLine {
  QString group, label;
  QString pan, tilt, both;
  QStringList because;
};

void add_value(FigureLine& line, const Figure& figure) {
  const QString text = figure.value
                           ? format_value(*figure.value, figure.info->si_unit, figure.info->unit)
                       : begins_as("needs %1", figure.because) ? Plots::tr("unknown")
                                                               : QStringLiteral("–");
  const auto axis = axis_of(figure.id);
  (axis == Axis::pan ? line.pan : axis == Axis::tilt ? line.tilt : line.both) = text;
  if (!figure.value && !figure.because.empty()) {
    const QString why = reason_text(figure.because);
    line.because << (axis ? axis_word(*axis) + QStringLiteral(": ") + why : why);
  }
}

/// Pan and tilt of the same figure in one line, in the order of the table.
std::vector<FigureLine> lines_of(const Analysis& analysis) {
  std::vector<FigureLine> lines;
  std::map<std::string, std::size_t> at;
  for (const Figure& figure : analysis.figures) {
    if (figure.info == nullptr || figure.is_aside) continue;
    const auto id = without_axis(figure.id);
    // These stand in a table and in sentences of their own.
    if (id.starts_with("profile.") || id.starts_with("limits.")) continue;
    // The rig's own figure of a name is not that of its axes.
    const std::string key = (axis_of(figure.id) ? "<axis>." : "") + std::string(id);
    const auto [place, is_new] = at.emplace(key, lines.size());
    if (is_new) {
      lines.push_back({.group = group_of(figure.id),
                       .label = worded(figure.info->label),
                       .pan = {},
                       .tilt = {},
                       .both = {},
                       .because = {}});
    }
    add_value(lines[place->second], figure);
  }
  return lines;
}

}  // namespace

void draw_figures(SheetPage& page, const SheetContent& content) {
  page.heading(Plots::tr("Figures"));
  const TextStyle plain{7.2}, quiet{6.6, false, page.theme().quiet};
  std::vector<TableCells> rows;
  std::vector<QString> groups;
  const std::vector<FigureLine> lines = lines_of(content.analysis);
  for (const FigureLine& line : lines) {
    if (std::find(groups.begin(), groups.end(), line.group) == groups.end()) {
      groups.push_back(line.group);
    }
  }
  for (const QString& group : groups) {
    rows.push_back({{group, {7.8, true}, {}}, {}, {}});
    for (const FigureLine& line : lines) {
      if (line.group != group) continue;
      const bool is_both = !line.both.isEmpty();
      rows.push_back(
          {{line.label, plain, line.because.join(QStringLiteral("; "))},
           {is_both ? line.both : line.pan, plain, {}},
           is_both ? TableCell{Plots::tr("both"), quiet, {}} : TableCell{line.tilt, plain, {}}});
    }
  }
  draw_in_two(page, rows,
              {{Plots::tr("Figure"), 2.2, false},
               {Plots::tr("Pan"), 1, true},
               {Plots::tr("Tilt"), 1, true}});
  page.paragraph(Plots::tr("The handbook has the formula and the source of each."),
                 {7.5, false, page.theme().quiet});
}

}  // namespace gazewright
