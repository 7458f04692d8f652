#include "app/window/parts.h"

#include <QCoreApplication>

#include "app/plots/theme.h"
#include "app/window/edits.h"
#include "app/window/list_rows.h"
#include "core/analysis/input_names.h"
#include "core/rig/fields.h"

namespace gazewright {
namespace {

QString tr(const char* text) { return QCoreApplication::translate("Parts", text); }

constexpr const char* kAxisParts[] = {"drive", "motor",   "gearbox", "stops",
                                      "cable", "bearing", "load"};

QString axis_part_word(std::string_view part) {
  if (part == "drive") return tr("drive");
  if (part == "motor") return tr("motor");
  if (part == "gearbox") return tr("gearbox");
  if (part == "stops") return tr("stops");
  if (part == "cable") return tr("cable");
  if (part == "bearing") return tr("bearings");
  return tr("load");
}

QString body_title(const Body& body) {
  return body.name.empty() ? tr("Unnamed body") : QString::fromStdString(body.name);
}

/// The fields of the part itself, before its lists and other sections of the card.
std::vector<CardSection> first_sections(std::string_view part) {
  if (part == kKeepOutsCard) return {};
  if (part == "rig") return {{{}, "title"}, {{}, "notes"}};
  if (part == "supply") return {{{}, "supply"}, {tr("Surroundings"), "surroundings"}};
  if (part == "stand") return {{{}, "stand"}, {tr("Arm to the tilt axis"), "arm"}};
  if (part == "camera") return {{{}, "camera"}, {tr("Pointing"), "pointing"}};
  return {{{}, std::string(part)}};
}

std::vector<CardSection> axis_sections(Axis axis, std::string_view part) {
  const std::string name = name_of(axis);
  const std::string_view rest = part.substr(part.find('.') + 1);
  if (rest == "drive") return {{{}, name + ".drive"}, {tr("Control loop"), name + ".loop"}};
  if (rest == "motor") return {{{}, name + ".motor"}, {tr("Encoder"), name + ".encoder"}};
  if (rest == "bearing")
    return {{{}, name + ".bearing"}, {tr("Joint to the load"), name + ".joint"}};
  if (rest == "stops") return {{{}, name + ".stops"}, {tr("Homing"), name + ".homing"}};
  if (rest == "load") {
    std::vector<CardSection> sections{{tr("Friction at the output"), name + ".friction"},
                                      {tr("Bracket up to the camera"), name + ".bracket"},
                                      {tr("Counterweight"), name + ".balance"}};
    if (axis == Axis::tilt) {
      sections.insert(sections.begin(), {tr("Tilt axis, in the pan frame"), "tilt.axis_at"});
    }
    return sections;
  }
  return {{{}, std::string(part)}};
}

}  // namespace

std::optional<Axis> axis_of_part(std::string_view part) {
  if (part.starts_with("pan.") || part.starts_with("on_pan")) return Axis::pan;
  if (part.starts_with("tilt.") || part.starts_with("on_tilt")) return Axis::tilt;
  return std::nullopt;
}

std::string card_of(std::string_view part) {
  const std::string_view first = part.substr(0, part.find('.'));
  if (first == "surroundings") return "supply";
  if (part == "title" || part == "notes" || part.empty()) return "rig";
  if (first == "pointing") return "camera";
  if (first == "arm") return "stand";
  for (const CardList& list : card_lists())
    if (part.starts_with(list.key)) return list.card;
  if (part == "on_pan") return "pan.load";
  if (part == "on_tilt" || part.starts_with("tilt.axis_at")) return "tilt.load";
  const std::size_t dot = part.find('.');
  if (dot == std::string_view::npos) return std::string(part);
  const std::string axis(part.substr(0, dot));
  if (axis.starts_with("on_") || (axis != "pan" && axis != "tilt")) return axis;
  std::string_view rest = part.substr(dot + 1);
  rest = rest.substr(0, rest.find('.'));
  if (rest == "loop") return axis + ".drive";
  if (rest == "encoder") return axis + ".motor";
  if (rest == "friction" || rest == "bracket") return axis + ".load";
  if (rest == "homing") return axis + ".stops";
  if (rest == "joint") return axis + ".bearing";
  if (rest == "balance") return axis + ".load";
  return axis + "." + std::string(rest);
}

QString part_title(const Rig& rig, std::string_view part) {
  if (part == "rig") return tr("Rig");
  if (part == "supply") return tr("Supply, surroundings");
  if (part == "stand") return tr("Stand and arm");
  if (part == "camera") return tr("Camera");
  if (part == "task") return tr("Task");
  if (part == "tracking") return tr("Tracking");
  if (part == kKeepOutsCard) return tr("Keep-outs");
  if (const auto place = body_place(rig, part)) {
    return body_title(bodies_in(rig, place->on_tilt)[place->index]);
  }
  const auto axis = axis_of_part(part);
  if (!axis) return QString::fromUtf8(part.data(), qsizetype(part.size()));
  return axis_word(*axis) + QStringLiteral(" ") + axis_part_word(part.substr(part.find('.') + 1));
}

std::string field_path(const Rig& rig, const std::string& named) {
  Rig copy = rig;
  const InputNames names(rig);
  for (const FieldRef& field : all_fields(copy))
    if (names.id_of(path_of(field)) == named) return path_of(field);
  return named;
}

std::vector<PartEntry> all_parts(const Rig& rig) {
  std::vector<PartEntry> entries{{"", tr("The whole")}};
  for (const char* part : {"rig", "task", "camera", "tracking", "supply", "stand", kKeepOutsCard}) {
    entries.push_back({part, part_title(rig, part)});
  }
  for (Axis axis : kAxes) {
    entries.push_back({"", axis_word(axis)});
    for (const char* part : kAxisParts) {
      const std::string path = std::string(name_of(axis)) + "." + part;
      entries.push_back({path, part_title(rig, path)});
    }
    const bool on_tilt = axis == Axis::tilt;
    for (std::size_t i = 0; i < bodies_in(rig, on_tilt).size(); ++i) {
      entries.push_back({path_of(BodyPlace{on_tilt, i}),
                         tr("body: %1").arg(body_title(bodies_in(rig, on_tilt)[i]))});
    }
  }
  return entries;
}

std::vector<CardSection> card_sections(const Rig& rig, std::string_view part) {
  const auto axis = axis_of_part(part);
  if (axis && !part.starts_with("on_")) return axis_sections(*axis, part);
  std::vector<CardSection> sections = first_sections(part);
  if (const CardList* list = list_on(part)) {
    for (std::size_t i = 0; i < list->count(rig); ++i)
      sections.push_back({{}, list_path(*list, i)});
  }
  return sections;
}

}  // namespace gazewright
