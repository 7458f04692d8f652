#include "core/rig/fields.h"

#include <algorithm>
#include <map>

#include "core/rig/field_labels.h"
#include "core/rig/field_walk.h"

namespace gazewright {
namespace {

constexpr TextInfo kTitle{"title", "Title", "What the rig is called, on the window and the sheet."};
constexpr TextInfo kNotes{"notes", "Notes", "Anything to remember about the rig."};
constexpr TextInfo kBodyName{"name", "Name", "What you call the body."};
constexpr TextInfo kKeepOutName{"name", "Name", "What stands there."};

template <class Part>
void add_part(FieldWalk& fields, const std::string& at, Part& part) {
  if (!fields.may_hold(at)) return;
  const PartTable<Part>& table = table_of<Part>();
  const std::string dotted = at + ".";
  for (const auto& row : table.texts)
    fields.add<TextRef>(dotted, row.info.key, row.info, part.*row.at);
  for (const auto& row : table.choices)
    fields.add<ChoiceRef>(dotted, row.info.key, row.info, part.*row.at);
  for (const auto& row : table.quantities)
    fields.add<QuantityRef>(dotted, row.info.key, row.info, part.*row.at);
}

template <std::size_t count>
void add_list(FieldWalk& fields, const std::string& at, const FieldInfo& info,
              std::array<Quantity, count>& list) {
  if (!fields.may_hold(at)) return;
  for (std::size_t i = 0; i < count; ++i)
    fields.add<QuantityRef>(at, "[" + std::to_string(i) + "]", info, list[i]);
}

void add_axis(FieldWalk& fields, const std::string& at, AxisParts& axis) {
  if (!fields.may_hold(at)) return;
  add_part(fields, at + ".motor", axis.motor);
  add_part(fields, at + ".drive", axis.drive);
  add_part(fields, at + ".gearbox", axis.gearbox);
  add_part(fields, at + ".encoder", axis.encoder);
  add_part(fields, at + ".friction", axis.friction);
  if (axis.stops.presence == Presence::given) add_part(fields, at + ".stops", axis.stops);
  if (axis.cable.presence == Presence::given) add_part(fields, at + ".cable", axis.cable);
  add_part(fields, at + ".homing", axis.homing);
  add_part(fields, at + ".loop", axis.loop);
  add_part(fields, at + ".bracket", axis.bracket);
  add_part(fields, at + ".bearing", axis.bearing);
  add_part(fields, at + ".joint", axis.joint);
  add_part(fields, at + ".balance", axis.balance);
}

template <class Part>
void add_parts(FieldWalk& fields, const std::string& at, std::vector<Part>& parts) {
  for (std::size_t i = 0; i < parts.size(); ++i)
    add_part(fields, at + "[" + std::to_string(i) + "]", parts[i]);
}

struct ShapeFields {
  FieldWalk& fields;
  std::string at;  // path of the shape

  void operator()(Ball& ball) const { add_part(fields, at + ".ball", ball); }
  void operator()(Shell& shell) const { add_part(fields, at + ".shell", shell); }
  void operator()(Tube& tube) const { add_part(fields, at + ".tube", tube); }
  void operator()(Box& box) const { add_list(fields, at + ".box", box_side_info(), box.side_m); }
  void operator()(Point&) const {}
  void operator()(Tensor& tensor) const {
    for (std::size_t i = 0; i < tensor.element_kgm2.size(); ++i)
      fields.add<QuantityRef>(at, ".inertia[" + std::to_string(i) + "]",
                              i < 3 ? tensor_diagonal_info() : tensor_product_info(),
                              tensor.element_kgm2[i]);
  }
};

void add_bodies(FieldWalk& fields, const std::string& at, std::vector<Body>& bodies) {
  for (std::size_t i = 0; i < bodies.size(); ++i) {
    const std::string body = at + "[" + std::to_string(i) + "]";
    if (!fields.may_hold(body)) continue;
    fields.add<TextRef>(body, ".name", kBodyName, bodies[i].name);
    fields.add<QuantityRef>(body, ".mass", body_mass_info(), bodies[i].mass_kg);
    add_list(fields, body + ".centre", body_centre_info(), bodies[i].centre_m);
    std::visit(ShapeFields{fields, body + ".shape"}, bodies[i].shape);
  }
}

void add_keep_outs(FieldWalk& fields, std::vector<KeepOut>& keep_outs) {
  for (std::size_t i = 0; i < keep_outs.size(); ++i) {
    const std::string at = "keep_outs[" + std::to_string(i) + "]";
    fields.add<TextRef>(at, ".name", kKeepOutName, keep_outs[i].name);
    add_list(fields, at + ".pan", keep_out_pan_info(), keep_outs[i].pan_rad);
    add_list(fields, at + ".tilt", keep_out_tilt_info(), keep_outs[i].tilt_rad);
  }
}

constexpr std::string_view kLists[]{"on_", "keep_outs[", "detectors[", "duty[", "materials["};

/// "on_tilt[12].shape.box[0]" -> "on_tilt[].shape.box[0]": which of a list it is does not matter.
std::string without_index(std::string_view path) {
  std::string general(path);
  if (std::ranges::none_of(kLists, [&](auto list) { return general.starts_with(list); }))
    return general;
  const auto open = general.find('[');
  const auto close = general.find(']');
  if (open != std::string::npos && close != std::string::npos && open < close)
    general.erase(open + 1, close - open - 1);
  return general;
}

/// A rig that has every field there can be.
Rig rig_with_everything() {
  Rig rig;
  for (Axis axis : kAxes) {
    rig.axis(axis).stops.presence = Presence::given;
    rig.axis(axis).cable.presence = Presence::given;
  }
  for (const Shape& shape :
       {Shape{Ball{}}, Shape{Shell{}}, Shape{Tube{}}, Shape{Box{}}, Shape{Tensor{}}}) {
    Body body;
    body.shape = shape;
    rig.on_pan.push_back(body);
    rig.on_tilt.push_back(body);
  }
  rig.keep_outs.emplace_back();
  rig.detectors.emplace_back();
  rig.duty.emplace_back();
  rig.materials.emplace_back();
  return rig;
}

std::map<std::string, const FieldInfo*, std::less<>> infos_by_path() {
  std::map<std::string, const FieldInfo*, std::less<>> infos;
  Rig rig = rig_with_everything();
  for (const FieldRef& field : all_fields(rig))
    if (const auto* quantity = std::get_if<QuantityRef>(&field))
      infos.emplace(without_index(quantity->path), quantity->info);
  return infos;
}

std::map<std::string, std::string_view, std::less<>> labels_by_path() {
  std::map<std::string, std::string_view, std::less<>> labels;
  Rig rig = rig_with_everything();
  for (const FieldRef& field : all_fields(rig))
    labels.emplace(
        without_index(path_of(field)),
        std::visit([](const auto& ref) { return std::string_view(ref.info->label); }, field));
  return labels;
}

bool is_under(std::string_view path, std::string_view prefix) {
  if (!path.starts_with(prefix)) return false;
  return prefix.empty() || path.size() == prefix.size() || path[prefix.size()] == '.' ||
         path[prefix.size()] == '[';
}

}  // namespace

void add_all(FieldWalk& fields, Rig& rig) {
  if (fields.wanted.empty()) fields.found.reserve(500);
  fields.add<TextRef>({}, "title", kTitle, rig.title);
  fields.add<TextRef>({}, "notes", kNotes, rig.notes);
  add_part(fields, "supply", rig.supply);
  add_part(fields, "surroundings", rig.surroundings);
  add_part(fields, "stand", rig.stand);
  add_axis(fields, "pan", rig.pan);
  add_list(fields, "tilt.axis_at", axis_at_info(), rig.tilt_axis_at_m);
  add_axis(fields, "tilt", rig.tilt);
  add_bodies(fields, "on_pan", rig.on_pan);
  add_bodies(fields, "on_tilt", rig.on_tilt);
  add_keep_outs(fields, rig.keep_outs);
  add_part(fields, "camera", rig.camera);
  add_part(fields, "task", rig.task);
  add_part(fields, "tracking", rig.tracking);
  add_parts(fields, "detectors", rig.detectors);
  add_part(fields, "arm", rig.arm);
  add_part(fields, "pointing", rig.pointing);
  add_parts(fields, "duty", rig.duty);
  add_parts(fields, "materials", rig.materials);
}

std::vector<FieldRef> all_fields(Rig& rig) {
  FieldWalk fields;
  add_all(fields, rig);
  return std::move(fields.found);
}

std::vector<FieldRef> fields_under(Rig& rig, std::string_view prefix) {
  FieldWalk fields{prefix};
  add_all(fields, rig);
  std::erase_if(fields.found,
                [&](const FieldRef& field) { return !is_under(path_of(field), prefix); });
  return std::move(fields.found);
}

const std::string& path_of(const FieldRef& field) {
  return std::visit([](const auto& ref) -> const std::string& { return ref.path; }, field);
}

Quantity* find_quantity(Rig& rig, std::string_view path) {
  for (const FieldRef& field : fields_under(rig, path)) {
    const auto* quantity = std::get_if<QuantityRef>(&field);
    if (quantity != nullptr && quantity->path == path) return quantity->quantity;
  }
  return nullptr;
}

const Quantity* find_quantity(const Rig& rig, std::string_view path) {
  return find_quantity(const_cast<Rig&>(rig), path);  // writes nothing
}

const FieldInfo* find_info(std::string_view path) {
  static const auto infos = infos_by_path();
  const auto found = infos.find(without_index(path));
  return found == infos.end() ? nullptr : found->second;
}

std::string_view find_label(std::string_view path) {
  static const auto labels = labels_by_path();
  const auto found = labels.find(without_index(path));
  return found == labels.end() ? std::string_view() : found->second;
}

}  // namespace gazewright
