#include <Eigen/Core>

#include "core/bodies/bodies.h"
#include "core/files/reader.h"
#include "core/files/spelling.h"
#include "core/units/units.h"
#include "core/words/words.h"

namespace gazewright {
namespace {

constexpr std::size_t kMostBodies = 500;
constexpr std::string_view kShapeFix =
    "write point, or one of {ball: ...}, {shell: ...}, {tube: ...}, {box: ...}, {inertia: ...}";

std::string in_words(const Quantity& quantity) { return shortened(quantity.written); }

struct CheckShape {
  Reader& reader;
  const YamlNode& node;
  const std::string& path;

  void operator()(const Shell& shell) const {
    if (!shell.diameter_m.has_value() || !shell.wall_m.has_value()) return;
    if (*shell.wall_m.si * 2 <= *shell.diameter_m.si) return;
    reader.error(node,
                 words("%1: a wall of %2 does not fit into a diameter of %3", path,
                       in_words(shell.wall_m), in_words(shell.diameter_m)),
                 words("write a wall of at most half the diameter"));
  }
  void operator()(const Tube& tube) const {
    if (!tube.diameter_m.has_value() || !tube.bore_m.has_value()) return;
    if (*tube.bore_m.si < *tube.diameter_m.si) return;
    reader.error(node,
                 words("%1: a bore of %2 does not fit into a diameter of %3", path,
                       in_words(tube.bore_m), in_words(tube.diameter_m)),
                 words("write a bore that is less than the diameter"));
  }
  void operator()(const Tensor& tensor) const {
    std::array<double, 6> e{};
    for (std::size_t i = 0; i < e.size(); ++i) {
      if (!tensor.element_kgm2[i].has_value()) return;
      e[i] = *tensor.element_kgm2[i].si;
    }
    Eigen::Matrix3d inertia_kgm2;
    inertia_kgm2 << e[0], e[3], e[4], e[3], e[1], e[5], e[4], e[5], e[2];
    if (is_possible_inertia(inertia_kgm2)) return;
    reader.error(node,
                 words("%1: no body can have this inertia; each principal moment is at most the "
                       "sum of the other two",
                       path),
                 words("check the six values and their order: [xx, yy, zz, xy, xz, yz]"));
  }
  void operator()(const auto&) const {}
};

template <class Part>
Reader::Entry shape_entry(Reader& reader, std::string key, Shape& shape) {
  return {std::move(key), [&reader, &shape](const YamlNode& node, const std::string& path) {
            Part& part = shape.emplace<Part>();
            reader.read_map(node, path, entries_of(reader, part));
          }};
}

Reader::Entries shape_entries(Reader& reader, Shape& shape) {
  const auto read_box = [&](const YamlNode& node, const std::string& path) {
    const FieldInfo* side = &box_side_info();
    reader.read_list_at(node, path, std::array{side, side, side}, "x, y, z",
                        shape.emplace<Box>().side_m);
  };
  const auto read_inertia = [&](const YamlNode& node, const std::string& path) {
    const FieldInfo *moment = &tensor_diagonal_info(), *product = &tensor_product_info();
    reader.read_list_at(node, path, std::array{moment, moment, moment, product, product, product},
                        words("xx, yy, zz, xy, xz, yz"), shape.emplace<Tensor>().element_kgm2);
  };
  const auto read_point = [&](const YamlNode&, const std::string&) { shape = Point{}; };
  return {shape_entry<Ball>(reader, "ball", shape),
          shape_entry<Shell>(reader, "shell", shape),
          shape_entry<Tube>(reader, "tube", shape),
          {"box", read_box},
          {"point", read_point},
          {"inertia", read_inertia}};
}

std::string unknown_shape(const std::string& word, const Reader::Entries& entries) {
  std::vector<std::string> known;
  for (const auto& entry : entries) known.push_back(entry.key);
  const std::string nearest = nearest_word(word, known);
  return nearest.empty() ? words(kShapeFix) : words("did you mean %1?", nearest);
}

void read_shape(Reader& reader, const YamlNode& node, const std::string& path, Shape& shape) {
  reader.place(path, node);
  if (node.is_null()) return;
  if (node.is_scalar() && node.value == "point") {
    shape = Point{};
    return;
  }
  const Reader::Entries entries = shape_entries(reader, shape);
  if (node.is_scalar()) {
    reader.error(
        node,
        words("%1: the shape %2 is not known or has no measures", path, shortened(node.value)),
        unknown_shape(node.value, entries));
    return;
  }
  if (!node.is_map() || node.children.size() != 1) {
    const std::string found =
        node.is_map() ? words("%1 shapes", std::to_string(node.children.size())) : words("a list");
    reader.error(node, words("%1: %2 where one shape is due", path, found), words(kShapeFix));
    return;
  }
  const YamlNode& key = node.keys.front();
  if (!key.is_scalar()) return;  // parse_yaml has said so
  for (const auto& entry : entries) {
    if (entry.key != key.value) continue;
    entry.read(node.children.front(), path + "." + key.value);
    std::visit(CheckShape{reader, node, path}, shape);
    return;
  }
  reader.error(key, words("%1: the shape %2 is not known", path, shortened(key.value)),
               unknown_shape(key.value, entries));
}

void read_body(Reader& reader, const YamlNode& node, const std::string& path, Body& body) {
  body.shape = Tensor{};  // a body without a shape has an inertia that is not known, not none
  const FieldInfo* centre = &body_centre_info();
  const auto read_name = [&](const YamlNode& at, const std::string& p) {
    reader.read_text_at(at, p, body.name);
  };
  const auto read_mass = [&](const YamlNode& at, const std::string& p) {
    reader.read_quantity_at(at, p, body_mass_info(), body.mass_kg);
  };
  const auto read_centre = [&](const YamlNode& at, const std::string& p) {
    reader.read_list_at(at, p, std::array{centre, centre, centre}, "x, y, z", body.centre_m);
  };
  const auto read_its_shape = [&](const YamlNode& at, const std::string& p) {
    read_shape(reader, at, p, body.shape);
  };
  reader.read_map(node, path,
                  {{"name", read_name},
                   {"mass", read_mass},
                   {"centre", read_centre},
                   {"shape", read_its_shape}});
}

}  // namespace

void read_bodies(Reader& reader, const YamlNode& node, const std::string& path,
                 std::vector<Body>& bodies) {
  reader.place(path, node);
  if (node.is_null()) return;
  if (!node.is_list()) {
    reader.error(node, words("%1 is %2; a list of bodies is due", path, words_of_kind(node)),
                 words("begin each body with a dash: - {name: ball, mass: 160 g, ...}"));
    return;
  }
  if (node.children.size() > kMostBodies) {
    reader.error(node,
                 words("%1 holds %2 bodies; at most 500 are read", path,
                       std::to_string(node.children.size())),
                 words("join small bodies into one"));
    return;
  }
  bodies.resize(node.children.size());
  for (std::size_t i = 0; i < bodies.size(); ++i)
    read_body(reader, node.children[i], path + "[" + std::to_string(i) + "]", bodies[i]);
}

}  // namespace gazewright
