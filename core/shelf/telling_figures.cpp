#include "core/analysis/say.h"
#include "core/rig/fields.h"
#include "core/shelf/part_keys.h"
#include "core/shelf/part_place.h"
#include "core/shelf/shelf.h"

namespace gazewright {
namespace {

std::string said(const FieldInfo& info, double value_si) {
  const std::string text = say(value_si, info.si_unit, info.unit);
  if (info.key == "ratio") return text + " : 1";
  return info.is_plain_number() && info.unit == "1" ? std::string(info.label) + " " + text : text;
}

}  // namespace

std::vector<std::string> telling_figures(const ShelfPart& part) {
  std::vector<std::string> figures;
  const auto keys = keys_of(part.kind()).telling;
  std::visit(
      [&]<class Fields>(const Fields& fields) {
        for (const std::string_view key : keys)
          for (const auto& row : table_of<Fields>().quantities)
            if (row.info.key == key && (fields.*row.at).has_value())
              figures.push_back(said(row.info, *(fields.*row.at).si));
      },
      part.fields);
  return figures;
}

std::vector<std::string_view> telling_labels(PartKind kind) {
  std::vector<std::string_view> labels;
  const auto keys = keys_of(kind).telling;
  std::visit(
      [&]<class Fields>(const Fields&) {
        for (const std::string_view key : keys)
          for (const auto& row : table_of<Fields>().quantities)
            if (row.info.key == key) labels.push_back(row.info.label);
      },
      fields_of(kind));
  return labels;
}

}  // namespace gazewright
