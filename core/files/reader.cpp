#include "core/files/reader.h"

#include <algorithm>

#include "core/data/data_files.h"
#include "core/files/spelling.h"
#include "core/files/trade_keys.h"
#include "core/rig/usual.h"
#include "core/units/units.h"
#include "core/words/words.h"

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
  mark_cut_numbers(node);
  if (!node.is_map()) {
    error(node, words("%1 is %2; a map of its fields is due", path, words_of_kind(node)),
          words("write for example {%1: ...}", entries.front().key));
    return;
  }
  const std::string before = path.empty() ? "" : path + ".";
  for (std::size_t i = 0; i < node.children.size(); ++i) {
    if (!node.keys[i].is_scalar()) continue;      // parse_yaml has said so
    if (told_.contains(&node.keys[i])) continue;  // the end of a number, see read_value
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
  const TradeKey* meant = trade_key(key.value, known);
  const std::string nearest = meant ? std::string(meant->key) : nearest_word(key.value, known);
  const std::string how = meant && !meant->how.empty() ? words(" (%1)", words(meant->how)) : "";
  const std::string where = path.empty() ? "" : words(" of %1", path);
  warning(key,
          words("the key %1%2 is not known; it is kept and not used", shortened(key.value), where),
          nearest.empty() ? words("check the spelling, or leave it as a remark of your own")
                          : words("did you mean %1?%2", nearest, how));
}

void Reader::mark_cut_numbers(const YamlNode& map) {
  if (!map.is_map() || !map.is_flow) return;
  for (std::size_t i = 0; i + 1 < map.keys.size() && i + 1 < map.children.size(); ++i)
    if (map.children[i + 1].is_null() && is_cut_number(map.children[i], map.keys[i + 1]))
      rest_of_.emplace(&map.children[i], &map.keys[i + 1]);
}

bool Reader::read_value(const YamlNode& node, const std::string& path, const FieldInfo& info,
                        Quantity& quantity) {
  if (node.is_null()) return true;
  const std::string name = called(info.label, path);
  if (!node.is_scalar()) {
    error(node, words("%1: %2 where one quantity is due", name, words_of_kind(node)),
          words("write one number%1", info.is_plain_number() ? "" : words(" with its unit")));
    return false;
  }
  if (const auto rest = rest_of_.find(&node); rest != rest_of_.end()) {
    const std::string& end = rest->second->value;
    told_.insert(rest->second);
    error(node, words("%1: %2 has a comma in its number", name, shortened(node.value + "," + end)),
          words("write %1", shortened(node.value + "." + end)));
    return false;
  }
  auto read = read_quantity(node.value, info);
  if (auto* problem = std::get_if<UnitProblem>(&read)) {
    error(node, name + ": " + problem->problem, problem->fix);
    return false;
  }
  quantity = std::get<Quantity>(read);
  if (const std::string usual = unusual_words(info, *quantity.si); !usual.empty())
    warning(node, words("%1: %2 is unusual; %3", name, shortened(node.value), usual),
            words("check the number and its unit, or leave it so"));
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
  mark_cut_numbers(node);
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
    error(node, words("%1: the map has no value", called(info.label, path)),
          words("write for example {value: 1%1, source: measured}",
                info.is_plain_number() ? "" : " " + std::string(info.unit)));
}

void Reader::read_spread_at(const YamlNode& node, const std::string& path, const FieldInfo& info,
                            Quantity& quantity) {
  if (node.is_null()) return;
  const std::string name = words("Spread of %1", called(info.label, path));
  if (!node.is_scalar()) {
    error(node, words("%1: %2 where one quantity is due", name, words_of_kind(node)),
          words("write for example 10 %"));
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
  error(node,
        words("Source of %1: \"%2\" is not known", called(info.label, path), shortened(node.value)),
        words("write measured, datasheet, estimate or default"));
}

void Reader::read_text_at(const YamlNode& node, const std::string& path, std::string& text) {
  place(path, node);
  if (node.is_scalar())
    text = node.value;
  else if (!node.is_null())
    error(node, words("%1 is %2; a text is due", path, words_of_kind(node)),
          words("write a text, in quotes where it holds : or #"));
}

namespace {

/// Where the choices are rows of a data file, the user may add some.
std::string own_row_hint(std::string_view key) {
  const std::string_view file = data_file_of(key);
  return file.empty() ? std::string()
                      : words("; one of your own goes into %1.yaml of your data folder", file);
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
    all += i == 0 ? "" : i + 1 == info.options.size() ? words(" or ") : ", ";
    all += info.options[i];
  }
  const std::string found =
      node.is_scalar() ? "\"" + shortened(node.value) + "\"" : words_of_kind(node);
  error(node, words("%1: %2 is not one of its choices", called(info.label, path), found),
        words("write %1%2", all, own_row_hint(info.key)));
}

void Reader::read_list_at(const YamlNode& node, const std::string& path,
                          std::span<const FieldInfo* const> infos, std::string_view order,
                          std::span<Quantity> list) {
  place(path, node);
  if (node.is_null()) return;
  const std::string count = std::to_string(list.size());
  const std::string fix = words("write %1 quantities in brackets: [%2]", count, order);
  const std::string name = called(infos.front()->label, path);
  if (!node.is_list()) {
    error(node, words("%1: %2 where a list of %3 is due", name, words_of_kind(node), count), fix);
    return;
  }
  if (node.children.size() != list.size()) {
    for (std::size_t i = 0; node.is_flow && i + 1 < node.children.size(); ++i)
      if (is_cut_number(node.children[i], node.children[i + 1])) {
        const std::string &begin = node.children[i].value, &end = node.children[i + 1].value;
        error(node.children[i],
              words("%1: %2 has a comma in its number", name, shortened(begin + "," + end)),
              words("write %1", shortened(begin + "." + end)));
        return;
      }
    error(node,
          words("%1: the list holds %2; %3 are due", name, std::to_string(node.children.size()),
                count),
          fix);
    return;
  }
  for (std::size_t i = 0; i < list.size(); ++i)
    read_quantity_at(node.children[i], path + "[" + std::to_string(i) + "]", *infos[i], list[i]);
}

bool is_list_of(Reader& reader, const YamlNode& node, const std::string& path,
                std::string_view what, std::size_t most, std::string fix) {
  if (!node.is_list()) {
    reader.error(node, words("%1 is %2; a list of %3 is due", path, words_of_kind(node), what),
                 std::move(fix));
    return false;
  }
  if (node.children.size() <= most) return true;
  reader.error(node,
               words("%1 holds %2 %3; at most %4 are read", path,
                     std::to_string(node.children.size()), what, std::to_string(most)),
               words("leave some of them out"));
  return false;
}

}  // namespace gazewright
