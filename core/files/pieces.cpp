#include "core/files/pieces.h"

#include <algorithm>

namespace gazewright {
namespace {

struct ShapeText {
  const Rig& rig;
  const std::string& path;

  template <class Part>
  std::string part(const char* key, const Part& shape) const {
    const std::string inner = flow_map(part_pieces(rig, path + "." + key, shape));
    return std::string("{") + key + ": " + inner + "}";
  }
  std::string operator()(const Ball& ball) const { return part("ball", ball); }
  std::string operator()(const Shell& shell) const { return part("shell", shell); }
  std::string operator()(const Tube& tube) const { return part("tube", tube); }
  std::string operator()(const Box& box) const {
    const FieldInfo* side = &box_side_info();
    const std::string list =
        list_text(rig, path + ".box", std::array{side, side, side}, box.side_m);
    return "{box: " + (list.empty() ? "null" : list) + "}";
  }
  std::string operator()(const Point&) const { return "point"; }
  /// Empty where nothing of it is known: then the file has no shape.
  std::string operator()(const Tensor& tensor) const {
    const FieldInfo *moment = &tensor_diagonal_info(), *product = &tensor_product_info();
    const std::string list = list_text(
        rig, path + ".inertia", std::array{moment, moment, moment, product, product, product},
        tensor.element_kgm2);
    return list.empty() ? "" : "{inertia: " + list + "}";
  }
};

std::string joined(const Pieces& pieces) {
  std::string text;
  for (const std::string& piece : pieces) text += (text.empty() ? "" : ", ") + piece;
  return text;
}

}  // namespace

std::string flow_map(std::size_t column, const Pieces& pieces) {
  constexpr std::size_t kWidest = 110;
  const std::string line_start = "\n" + std::string(column + 1, ' ');
  std::string text = "{";
  std::size_t width = column + 1;
  for (std::size_t i = 0; i < pieces.size(); ++i) {
    const bool is_wide = i > 0 && width + pieces[i].size() + 2 > kWidest;
    if (i > 0) text += is_wide ? "," + line_start : ", ";
    if (is_wide) width = column + 1;
    text += pieces[i];
    width += pieces[i].size() + 2;
  }
  return text + "}";
}

std::string flow_map(const Pieces& pieces) { return "{" + joined(pieces) + "}"; }
std::string flow_list(const Pieces& pieces) { return "[" + joined(pieces) + "]"; }

Pieces unknown_pieces(const Rig& rig, const std::string& path) {
  Pieces pieces;
  for (const UnknownKey& key : rig.unknown_keys)
    if (key.path == path) pieces.push_back(yaml_scalar(key.key) + ": " + key.yaml);
  return pieces;
}

std::string entry_text(const Rig& rig, const std::string& path, const FieldInfo& info,
                       const Quantity& quantity) {
  if (!quantity.has_value()) return "null";
  std::string text = quantity_text(quantity, info);
  const Pieces more = unknown_pieces(rig, path);
  if (more.empty()) return text;
  if (text.front() != '{') text = "{value: " + text + "}";
  text.pop_back();
  return text + ", " + joined(more) + "}";
}

std::string list_text(const Rig& rig, const std::string& path,
                      std::span<const FieldInfo* const> infos, std::span<const Quantity> list) {
  const auto has_value = [](const Quantity& quantity) { return quantity.has_value(); };
  if (std::none_of(list.begin(), list.end(), has_value)) return "";
  Pieces entries;
  for (std::size_t i = 0; i < list.size(); ++i)
    entries.push_back(entry_text(rig, path + "[" + std::to_string(i) + "]", *infos[i], list[i]));
  return flow_list(entries);
}

Pieces body_pieces(const Rig& rig, const std::string& path, const Body& body) {
  Pieces pieces;
  if (!body.name.empty()) pieces.push_back("name: " + yaml_scalar(body.name));
  if (body.mass_kg.has_value())
    pieces.push_back("mass: " + entry_text(rig, path + ".mass", body_mass_info(), body.mass_kg));
  const FieldInfo* centre = &body_centre_info();
  if (const std::string list =
          list_text(rig, path + ".centre", std::array{centre, centre, centre}, body.centre_m);
      !list.empty())
    pieces.push_back("centre: " + list);
  const std::string shape_path = path + ".shape";
  if (const std::string shape = std::visit(ShapeText{rig, shape_path}, body.shape); !shape.empty())
    pieces.push_back("shape: " + shape);
  for (const std::string& piece : unknown_pieces(rig, path)) pieces.push_back(piece);
  return pieces;
}

Pieces keep_out_pieces(const Rig& rig, const std::string& path, const KeepOut& keep_out) {
  Pieces pieces;
  if (!keep_out.name.empty()) pieces.push_back("name: " + yaml_scalar(keep_out.name));
  const auto add = [&](const std::string& key, const FieldInfo& info,
                       const std::array<Quantity, 2>& ends) {
    const std::string list = list_text(rig, path + "." + key, std::array{&info, &info}, ends);
    if (!list.empty()) pieces.push_back(key + ": " + list);
  };
  add("pan", keep_out_pan_info(), keep_out.pan_rad);
  add("tilt", keep_out_tilt_info(), keep_out.tilt_rad);
  for (const std::string& piece : unknown_pieces(rig, path)) pieces.push_back(piece);
  return pieces;
}

}  // namespace gazewright
