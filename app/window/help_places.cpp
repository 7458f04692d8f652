#include "app/window/help_places.h"

#include <string>

#include "app/plots/text.h"
#include "core/analysis/explain.h"

namespace gazewright {
namespace {

/// Parts of the rig file's page, by what a path begins with once the axis is taken off. The first
/// that fits counts.
struct PartRow {
  const char *path, *section;
};
constexpr PartRow kParts[]{{"on_pan", "Bodies"},       {"on_tilt", "Bodies"},
                           {"axis_at", "Tilt axis"},   {"load", "Bodies"},
                           {"supply", "Supply"},       {"surroundings", "Surroundings"},
                           {"stand", "Stand"},         {"arm", "Arm"},
                           {"camera", "Camera"},       {"pointing", "Pointing"},
                           {"tracking", "Tracking"},   {"detectors", "Detectors"},
                           {"keep_outs", "Keep-outs"}, {"materials", "Materials"},
                           {"task.duty", "Duty"},      {"task", "Task"},
                           {"motor", "Motor"},         {"drive", "Drive"},
                           {"gearbox", "Gearbox"},     {"encoder", "Encoder"},
                           {"friction", "Friction"},   {"stops", "Stops"},
                           {"cable", "Cable"},         {"homing", "Homing"},
                           {"loop", "Loop"},           {"bracket", "Bracket"},
                           {"bearing", "Bearings"},    {"joint", "Joint"},
                           {"balance", "Balance"}};

const QString kRigFile = QStringLiteral("rig-file.md");

}  // namespace

HelpPlace help_for_part(std::string_view path) {
  for (const std::string_view axis : {"pan.", "tilt."}) {
    if (path.starts_with(axis)) path.remove_prefix(axis.size());
  }
  for (const PartRow& row : kParts) {
    if (path.starts_with(row.path)) return {kRigFile, QString::fromLatin1(row.section)};
  }
  return {kRigFile, QStringLiteral("The top")};
}

HelpPlace help_for_plot(PlotKind kind) { return help_for_window(plot_title(kind)); }

HelpPlace help_for_finding(std::string_view id) {
  return {QStringLiteral("findings.md"), QString::fromStdString(id_pattern(id))};
}

HelpPlace help_for_figure(const FigureInfo& info) {
  const std::string_view page = page_of(info);
  const std::string_view name = info.id.substr(info.id.rfind('.') + 1);
  return {qstring(page) + QStringLiteral(".md"), qstring(name)};
}

HelpPlace help_for_window(const QString& section) { return {QStringLiteral("window.md"), section}; }

}  // namespace gazewright
