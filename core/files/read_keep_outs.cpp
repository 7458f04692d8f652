#include "core/files/reader.h"
#include "core/rig/keep_outs.h"
#include "core/words/words.h"

namespace gazewright {
namespace {

void check_order(Reader& reader, const YamlNode& node, const std::string& path,
                 const std::array<Quantity, 2>& ends) {
  if (!is_backwards(ends)) return;
  reader.error(node,
               words("%1: it ends at %2, below where it begins, %3", path,
                     shortened(ends[1].written), shortened(ends[0].written)),
               words("write the lower angle first: [from, to]"));
}

Reader::Entry ends_entry(Reader& reader, std::string key, const FieldInfo& info,
                         std::array<Quantity, 2>& ends) {
  return {std::move(key), [&reader, &info, &ends](const YamlNode& node, const std::string& path) {
            reader.read_list_at(node, path, std::array{&info, &info}, words("from, to"), ends);
            check_order(reader, node, path, ends);
          }};
}

}  // namespace

void read_keep_outs(Reader& reader, const YamlNode& node, const std::string& path,
                    std::vector<KeepOut>& keep_outs) {
  reader.place(path, node);
  if (node.is_null()) return;
  if (!node.is_list()) {
    reader.error(node, words("%1 is %2; a list of keep-outs is due", path, words_of_kind(node)),
                 words("begin each with a dash: - {name: lamp post, pan: [-20 deg, 15 deg], tilt: "
                       "[30 deg, 60 deg]}"));
    return;
  }
  if (node.children.size() > kMostKeepOuts) {
    reader.error(node,
                 words("%1 holds %2 keep-outs; at most 100 are read", path,
                       std::to_string(node.children.size())),
                 words("join those that touch"));
    return;
  }
  keep_outs.resize(node.children.size());
  for (std::size_t i = 0; i < keep_outs.size(); ++i) {
    KeepOut& keep_out = keep_outs[i];
    const auto read_name = [&](const YamlNode& at, const std::string& p) {
      reader.read_text_at(at, p, keep_out.name);
    };
    reader.read_map(node.children[i], path + "[" + std::to_string(i) + "]",
                    {{"name", read_name},
                     ends_entry(reader, "pan", keep_out_pan_info(), keep_out.pan_rad),
                     ends_entry(reader, "tilt", keep_out_tilt_info(), keep_out.tilt_rad)});
  }
}

}  // namespace gazewright
