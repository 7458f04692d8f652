#include "core/files/yaml_tree.h"

#include <yaml-cpp/eventhandler.h>
#include <yaml-cpp/yaml.h>

#include <algorithm>
#include <set>
#include <sstream>

#include "core/files/text_check.h"
#include "core/words/words.h"

namespace gazewright {
namespace {

constexpr std::size_t kDeepest = 32;
constexpr std::size_t kLongestScalar = 100'000;
constexpr std::size_t kLongestKey = 128;

/// Thrown out of the library's parser when reading on is pointless; never leaves this file.
struct TooDeep {
  std::size_t at;
};

std::size_t offset_of(const YAML::Mark& mark) {
  return mark.pos < 0 ? 0 : static_cast<std::size_t>(mark.pos);
}

/// Builds the tree from the parser's events. A map's children come as key, value, key, value.
class TreeBuilder : public YAML::EventHandler {
 public:
  explicit TreeBuilder(std::vector<Fault>& faults) : faults_(faults) {}

  std::unique_ptr<YamlNode> take() { return std::move(root_); }

  void OnDocumentStart(const YAML::Mark&) override {}
  void OnDocumentEnd() override {}
  void OnNull(const YAML::Mark& mark, YAML::anchor_t anchor) override {
    add(node_at(mark, YamlNode::Kind::null, anchor));
  }
  void OnAlias(const YAML::Mark& mark, YAML::anchor_t) override {
    refuse_reference(offset_of(mark));
    add(node_at(mark, YamlNode::Kind::null, 0));
  }
  void OnScalar(const YAML::Mark& mark, const std::string& tag, YAML::anchor_t anchor,
                const std::string& value) override {
    YamlNode node = node_at(mark, YamlNode::Kind::scalar, anchor);
    node.is_quoted = tag == "!";
    if (value.size() > kLongestScalar)
      faults_.push_back({node.at,
                         words("a text of %1 bytes is too long", std::to_string(value.size())),
                         words("keep every entry under 100 000 bytes")});
    else
      node.value = value;
    add(std::move(node));
  }
  void OnSequenceStart(const YAML::Mark& mark, const std::string&, YAML::anchor_t anchor,
                       YAML::EmitterStyle::value style) override {
    open(mark, YamlNode::Kind::list, anchor, style);
  }
  void OnSequenceEnd() override { close(); }
  void OnMapStart(const YAML::Mark& mark, const std::string&, YAML::anchor_t anchor,
                  YAML::EmitterStyle::value style) override {
    open(mark, YamlNode::Kind::map, anchor, style);
  }
  void OnMapEnd() override { close(); }

 private:
  YamlNode node_at(const YAML::Mark& mark, YamlNode::Kind kind, YAML::anchor_t anchor) {
    YamlNode node;
    node.kind = kind;
    node.at = offset_of(mark);
    if (anchor != 0) refuse_reference(node.at);
    return node;
  }
  void refuse_reference(std::size_t at) {
    faults_.push_back(
        {at, words("anchors (&) and aliases (*) are not read in a rig file"),
         words("write the value out, or put a text that begins with & or * in quotes")});
  }
  void open(const YAML::Mark& mark, YamlNode::Kind kind, YAML::anchor_t anchor,
            YAML::EmitterStyle::value style) {
    if (open_.size() >= kDeepest) throw TooDeep{offset_of(mark)};
    open_.push_back(node_at(mark, kind, anchor));
    open_.back().is_flow = style == YAML::EmitterStyle::Flow;
  }
  void close() {
    YamlNode done = std::move(open_.back());
    open_.pop_back();
    add(std::move(done));
  }
  void add(YamlNode node) {
    if (open_.empty()) {
      root_ = std::make_unique<YamlNode>(std::move(node));
      return;
    }
    YamlNode& parent = open_.back();
    const bool is_key = parent.is_map() && parent.keys.size() == parent.children.size();
    (is_key ? parent.keys : parent.children).push_back(std::move(node));
  }

  std::vector<Fault>& faults_;
  std::vector<YamlNode> open_;
  std::unique_ptr<YamlNode> root_;
};

void check_keys(const YamlNode& node, std::vector<Fault>& faults) {
  std::set<std::string_view> seen;
  for (std::size_t i = 0; i < node.keys.size(); ++i) {
    const YamlNode& key = node.keys[i];
    const bool is_bare = i < node.children.size() && node.children[i].is_null();
    if (i > 0 && is_bare && is_cut_number(node.children[i - 1], key)) continue;  // no key, a number
    if (!key.is_scalar() || key.value.size() > kLongestKey) {
      faults.push_back(
          {key.at, words("a key must be a short word"), words("write for example mass: 140 g")});
    } else if (!seen.insert(key.value).second) {
      faults.push_back({key.at,
                        words("the key %1 is written twice in one map", shortened(key.value)),
                        words("keep one of the two")});
    }
  }
  for (const YamlNode& child : node.children) check_keys(child, faults);
}

/// The library takes a text that never closes its quotes up to the end of the file.
void check_quotes(const YamlNode& node, std::string_view text, std::vector<Fault>& faults) {
  const bool begins_quoted =
      node.is_quoted && node.at < text.size() && (text[node.at] == '"' || text[node.at] == '\'');
  if (begins_quoted && end_of_quoted(text, node.at) == std::string_view::npos)
    faults.push_back({node.at, words("the quotes that open here never close"),
                      words("put a quote sign at the end of the text")});
  for (const YamlNode& key : node.keys) check_quotes(key, text, faults);
  for (const YamlNode& child : node.children) check_quotes(child, text, faults);
}

/// What is wrong in words where the library has none that help.
Fault syntax_fault(const YAML::Exception& fault, std::string_view text) {
  const std::size_t at = std::min(offset_of(fault.mark), text.size());
  const std::size_t line_start = at == 0 ? 0 : text.rfind('\n', at - 1) + 1;  // npos + 1 is 0
  const std::size_t first = text.find_first_not_of(" \t", line_start);
  const bool has_tab =
      text.substr(line_start, first - line_start).find('\t') != std::string_view::npos;
  if (has_tab)
    return {line_start, words("a tab stands before the first word of this line"),
            words("indent with spaces")};
  return {at, words("this is not YAML: %1", fault.msg),
          words("check brackets, quotes and indentation here; a text with : or # goes in quotes")};
}

std::unique_ptr<YamlNode> read_document(std::string_view text, std::vector<Fault>& faults) {
  std::istringstream stream{std::string(text)};
  YAML::Parser parser(stream);
  TreeBuilder builder(faults);
  parser.HandleNextDocument(builder);
  std::unique_ptr<YamlNode> root = builder.take();
  std::vector<Fault> ignored;
  TreeBuilder rest(ignored);
  parser.HandleNextDocument(rest);
  if (const auto second = rest.take())
    faults.push_back({second->at, words("the file holds more than one document"),
                      words("keep one rig in a file")});
  return root;
}

}  // namespace

const YamlNode* YamlNode::find(std::string_view key) const {
  for (std::size_t i = 0; i < keys.size() && i < children.size(); ++i)
    if (keys[i].is_scalar() && keys[i].value == key) return &children[i];
  return nullptr;
}

std::unique_ptr<YamlNode> parse_yaml(std::string_view text, std::vector<Fault>& faults) {
  if (const auto fault = check_text(text)) {
    faults.push_back(*fault);
    return nullptr;
  }
  try {
    std::unique_ptr<YamlNode> root = read_document(text, faults);
    if (root) {
      check_keys(*root, faults);
      check_quotes(*root, text, faults);
    }
    return root;
  } catch (const TooDeep& deep) {
    faults.push_back({deep.at, words("lists and maps are nested more than 32 deep"),
                      words("write the rig with less nesting")});
  } catch (const YAML::Exception& fault) {
    faults.push_back(syntax_fault(fault, text));
  } catch (const std::exception& fault) {
    faults.push_back({0, words("the file cannot be read as YAML: %1", fault.what()),
                      words("check it in a text editor")});
  }
  return nullptr;
}

bool is_cut_number(const YamlNode& begin, const YamlNode& end) {
  const auto is_digit = [](char c) { return c >= '0' && c <= '9'; };
  if (!begin.is_scalar() || !end.is_scalar() || begin.is_quoted || end.is_quoted) return false;
  const std::string& number = begin.value;
  const std::size_t sign = number.starts_with('-') || number.starts_with('+') ? 1 : 0;
  return number.size() > sign && !end.value.empty() && is_digit(end.value.front()) &&
         std::all_of(number.begin() + std::ptrdiff_t(sign), number.end(), is_digit) &&
         end.at == begin.at + number.size() + 1;
}

std::string words_of_kind(const YamlNode& node) {
  switch (node.kind) {
    case YamlNode::Kind::null:
      return words("nothing");
    case YamlNode::Kind::scalar:
      return words("a text");
    case YamlNode::Kind::list:
      return words("a list");
    case YamlNode::Kind::map:
      return words("a map");
  }
  return words("nothing");
}

}  // namespace gazewright
