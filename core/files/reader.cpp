#include "core/files/reader.h"

#include <algorithm>

#include "core/data/data_files.h"
#include "core/files/spelling.h"
#include "core/units/units.h"

namespace gazewright {

std::string called(std::string_view label, const std::string& path) {
  return std::string(label) + " (" + path + ")";
}

void Reader::error(const YamlNode& node, std::string problem, std::string fix) {
  out_.faults.push_back({node.at, std::move(problem), std::move(fix), Diagnostic::Weight::error});
}

void Reader::warning(const YamlNode& node, std::string problem, std::string fix) {
  out_.faults.push_back({node.at, std::move(problem), std::move(fix), Diagnostic::Weight::warning});
}

void Reader::read_map(const YamlNode& node, const std::string& path, const Entries& entries) {
  place(path, node);
  if (node.is_null()) return;
  if (!node.is_map()) {
    error(node, path + " is " + std::string(words_of_kind(node)) + "; a map of its fields is due",
          "write for example {" + entries.front().key + ": ...}");
    return;
  }
  const std::string before = path.empty() ? "" : path + ".";
  for (std::size_t i = 0; i < node.children.size(); ++i) {
    if (!node.keys[i].is_scalar()) continue;  // parse_yaml has said so
    const std::string& key = node.keys[i].value;
    const auto entry =
        std::find_if(entries.begin(), entries.end(), [&](const Entry& e) { return e.key == key; });
    if (entry == entries.end())
      keep_unknown(node.keys[i], node.children[i], path, entries);
    else
      entry->read(node.children[i], before + key);
  }
}

void Reader::keep_unknown(const YamlNode& key, const YamlNode& value, const std::string& path,
                          const Entries& entries) {
  unknown_keys_.push_back({path, key.value, yaml_text(value)});
  std::vector<std::string> known;
  for (const Entry& entry : entries) known.push_back(entry.key);
  const std::string nearest = nearest_word(key.value, known);
  const std::string where = path.empty() ? "" : " of " + path;
  warning(key, "the key " + shortened(key.value) + where + " is not known; it is kept and not used",
          nearest.empty() ? "check the spelling, or leave it as a remark of your own"
                          : "did you mean " + nearest + "?");
}

bool Reader::read_value(const YamlNode& node, const std::string& path, const FieldInfo& info,
                        Quantity& quantity) {
  if (node.is_null()) return true;
  const std::string name = called(info.label, path);
  if (!node.is_scalar()) {
    error(node, name + ": " + std::string(words_of_kind(node)) + " where one quantity is due",
          "write one number" + std::string(info.is_plain_number() ? "" : " with its unit"));
    return false;
  }
  auto read = read_quantity(node.value, info);
  if (auto* problem = std::get_if<UnitProblem>(&read)) {
    error(node, name + ": " + problem->problem, problem->fix);
    return false;
  }
  quantity = std::get<Quantity>(read);
  return true;
}

void Reader::read_quantity_at(const YamlNode& node, const std::string& path, const FieldInfo& info,
                              Quantity& quantity) {
  if (node.is_map()) {
    read_quantity_map(node, path, info, quantity);
    return;
  }
  place(path, node);
  read_value(node, path, info, quantity);
}

void Reader::read_quantity_map(const YamlNode& node, const std::string& path, const FieldInfo& info,
                               Quantity& quantity) {
  bool is_good = true;
  if (const YamlNode* value = node.find("value")) {
    place(path + "/value", *value);
    is_good = read_value(*value, path, info, quantity);
  }
  const bool has_value = quantity.has_value();
  const auto ignore = [](const YamlNode&, const std::string&) {};
  const auto spread = [&](const YamlNode& at, const std::string&) {
    place(path + "/spread", at);
    if (is_good && has_value) read_spread_at(at, path, info, quantity);
  };
  const auto source = [&](const YamlNode& at, const std::string&) {
    place(path + "/source", at);
    read_source_at(at, path, info, quantity);
  };
  read_map(node, path, {{"value", ignore}, {"spread", spread}, {"source", source}});
  if (is_good && !has_value)
    error(node, called(info.label, path) + ": the map has no value",
          "write for example {value: 1" +
              std::string(info.is_plain_number() ? "" : " " + std::string(info.unit)) +
              ", source: measured}");
}

void Reader::read_spread_at(const YamlNode& node, const std::string& path, const FieldInfo& info,
                            Quantity& quantity) {
  if (node.is_null()) return;
  const std::string name = "Spread of " + called(info.label, path);
  if (!node.is_scalar()) {
    error(node, name + ": " + std::string(words_of_kind(node)) + " where one quantity is due",
          "write for example 10 %");
    return;
  }
  const auto read = read_spread(node.value, info, quantity.value());
  if (const auto* problem = std::get_if<UnitProblem>(&read)) {
    error(node, name + ": " + problem->problem, problem->fix);
    return;
  }
  quantity.spread_si = std::get<double>(read);
  quantity.spread_written = node.value;
}

void Reader::read_source_at(const YamlNode& node, const std::string& path, const FieldInfo& info,
                            Quantity& quantity) {
  if (node.is_null()) return;
  for (const Source source :
       {Source::measured, Source::datasheet, Source::estimate, Source::by_default}) {
    if (!node.is_scalar() || node.value != name_of(source)) continue;
    quantity.source = source;
    return;
  }
  error(
      node,
      "Source of " + called(info.label, path) + ": \"" + shortened(node.value) + "\" is not known",
      "write measured, datasheet, estimate or default");
}

void Reader::read_text_at(const YamlNode& node, const std::string& path, std::string& text) {
  place(path, node);
  if (node.is_scalar())
    text = node.value;
  else if (!node.is_null())
    error(node, path + " is " + std::string(words_of_kind(node)) + "; a text is due",
          "write a text, in quotes where it holds : or #");
}

namespace {

/// Where the choices are rows of a data file, the user may add some.
std::string own_row_hint(std::string_view key) {
  const std::string_view file = data_file_of(key);
  return file.empty()
             ? std::string()
             : "; one of your own goes into " + std::string(file) + ".yaml of your data folder";
}

}  // namespace

void Reader::read_choice_at(const YamlNode& node, const std::string& path, const ChoiceInfo& info,
                            Choice& choice) {
  place(path, node);
  if (node.is_null()) return;
  std::string all;
  for (std::size_t i = 0; i < info.options.size(); ++i) {
    if (node.is_scalar() && node.value == info.options[i]) {
      choice.value = node.value;
      return;
    }
    all += i == 0 ? "" : i + 1 == info.options.size() ? " or " : ", ";
    all += info.options[i];
  }
  const std::string found =
      node.is_scalar() ? "\"" + shortened(node.value) + "\"" : std::string(words_of_kind(node));
  error(node, called(info.label, path) + ": " + found + " is not one of its choices",
        "write " + all + own_row_hint(info.key));
}

void Reader::read_list_at(const YamlNode& node, const std::string& path,
                          std::span<const FieldInfo* const> infos, std::string_view order,
                          std::span<Quantity> list) {
  place(path, node);
  if (node.is_null()) return;
  const std::string count = std::to_string(list.size());
  const std::string fix =
      "write " + count + " quantities in brackets: [" + std::string(order) + "]";
  const std::string name = called(infos.front()->label, path);
  if (!node.is_list()) {
    error(node,
          name + ": " + std::string(words_of_kind(node)) + " where a list of " + count + " is due",
          fix);
    return;
  }
  if (node.children.size() != list.size()) {
    error(node,
          name + ": the list holds " + std::to_string(node.children.size()) + "; " + count +
              " are due",
          fix);
    return;
  }
  for (std::size_t i = 0; i < list.size(); ++i)
    read_quantity_at(node.children[i], path + "[" + std::to_string(i) + "]", *infos[i], list[i]);
}

bool is_list_of(Reader& reader, const YamlNode& node, const std::string& path,
                std::string_view what, std::size_t most, std::string fix) {
  if (!node.is_list()) {
    reader.error(node,
                 path + " is " + std::string(words_of_kind(node)) + "; a list of " +
                     std::string(what) + " is due",
                 std::move(fix));
    return false;
  }
  if (node.children.size() <= most) return true;
  reader.error(node,
               path + " holds " + std::to_string(node.children.size()) + " " + std::string(what) +
                   "; at most " + std::to_string(most) + " are read",
               "leave some of them out");
  return false;
}

}  // namespace gazewright
