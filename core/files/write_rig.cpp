#include "core/files/text_check.h"
#include "core/files/writer.h"

namespace gazewright {

std::string write_rig(const Rig& rig, std::string_view original_text) {
  const Rig wanted = as_read_back(rig);
  const bool has_mark = original_text.starts_with(kByteOrderMark);
  const std::string_view content =
      has_mark ? original_text.substr(kByteOrderMark.size()) : original_text;
  if (content.empty()) return laid_out(wanted);
  const ReadText old = read_text(content);
  if (old.rig && *old.rig == wanted) return std::string(original_text);
  if (const auto edited = edited_in_place(wanted, content, old))
    return (has_mark ? std::string(kByteOrderMark) : "") + *edited;
  return laid_out(wanted);
}

}  // namespace gazewright
