#include <gtest/gtest.h>

#include <cmath>
#include <filesystem>
#include <fstream>
#include <map>
#include <regex>

#include "core/analysis/analysis.h"
#include "core/analysis/checks.h"
#include "core/files/rig_file.h"
#include "core/rig/fields.h"
#include "core/units/units.h"

/// The handbook says what the program does: its tables follow from the tables of the code.
namespace gazewright {
namespace {

const std::filesystem::path kSource = GAZEWRIGHT_SOURCE_DIR;

std::string text_of(const std::filesystem::path& file) {
  std::ifstream in(file, std::ios::binary);
  EXPECT_TRUE(in) << file;
  return {std::istreambuf_iterator<char>(in), {}};
}
std::string handbook(const char* page) { return text_of(kSource / "resources/handbook" / page); }

std::string said(double value_si, const FieldInfo& info) {
  return value_si == 0 && info.unit != "degC" ? "0" : written_quantity(value_si, info, info.unit);
}
std::string range_of(const FieldInfo& info) {
  const bool low = std::isfinite(info.least), high = std::isfinite(info.most);
  std::string text;
  if (low && high)
    text = (info.above_least ? "above " : "") + said(info.least, info) +
           (info.above_least ? ", up to " : " to ") + said(info.most, info);
  else if (low)
    text =
        info.above_least ? "above " + said(info.least, info) : said(info.least, info) + " or more";
  else
    text = "any";
  if (info.whole) text += ", whole";
  if (info.may_be_none) text += ", or none";
  return text;
}
std::string default_of(const FieldInfo& info) {
  if (info.fallback) return written_quantity(*info.fallback, info, info.unit);
  return info.fallback_text.empty() ? "–" : std::string(info.fallback_text);
}

std::string row(std::string_view key, const std::string& unit, const std::string& range,
                const std::string& fallback, std::string_view help) {
  return "| `" + std::string(key) + "` | " + unit + " | " + range + " | " + fallback + " | " +
         std::string(help) + " |";
}
/// A field's row in rig-file.md.
std::string row_of(const FieldRef& field) {
  if (const auto* quantity = std::get_if<QuantityRef>(&field)) {
    const FieldInfo& info = *quantity->info;
    return row(info.key, info.unit == "1" ? "" : '`' + std::string(info.unit) + '`', range_of(info),
               default_of(info), info.help);
  }
  if (const auto* choice = std::get_if<ChoiceRef>(&field)) {
    std::string options;
    for (const std::string_view option : choice->info->options)
      options += (options.empty() ? "`" : ", `") + std::string(option) + '`';
    return row(choice->info->key, "", options,
               '`' + std::string(choice->info->options.front()) + '`', choice->info->help);
  }
  const TextInfo& info = *std::get<TextRef>(field).info;
  return row(info.key, "", "text", "–", info.help);
}

/// Whether the row stands in a table of its part: keys of lists, bodies and keep-outs are
/// explained in prose.
bool has_row(const std::string& path) {
  return path.find('.') != std::string::npos && !path.ends_with(']') &&
         !path.starts_with("tilt.") && !path.starts_with("keep_outs") &&
         (!path.starts_with("on_") || path.find(".shape.") != std::string::npos);
}

Rig rig_with_all_shapes() {
  Rig rig;
  for (AxisParts* parts : {&rig.pan, &rig.tilt})
    parts->stops.presence = parts->cable.presence = Presence::given;
  for (const Shape& shape : {Shape{Ball{}}, Shape{Shell{}}, Shape{Tube{}}, Shape{Box{}},
                             Shape{Point{}}, Shape{Tensor{}}}) {
    rig.on_tilt.emplace_back();
    rig.on_tilt.back().shape = shape;
  }
  rig.keep_outs.emplace_back();
  rig.detectors.emplace_back();
  rig.duty.emplace_back();
  rig.materials.emplace_back();
  return rig;
}

TEST(Handbook, EveryFieldHasItsRowWithUnitRangeAndDefault) {
  const std::string page = handbook("rig-file.md");
  Rig rig = rig_with_all_shapes();
  int rows = 0;
  for (const FieldRef& field : all_fields(rig)) {
    if (!has_row(path_of(field))) continue;
    ++rows;
    EXPECT_NE(page.find(row_of(field) + '\n'), std::string::npos)
        << path_of(field) << " should read\n"
        << row_of(field);
  }
  EXPECT_GT(rows, 70);
}

TEST(Handbook, EveryKeyOfTheFileIsNamed) {
  const std::string page = handbook("rig-file.md");
  Rig rig = rig_with_all_shapes();
  for (const FieldRef& field : all_fields(rig)) {
    const std::string& path = path_of(field);
    std::string key = path.substr(path.find_last_of('.') + 1);
    key = key.substr(0, key.find('['));
    EXPECT_TRUE(std::regex_search(page, std::regex("\\b" + key + "\\b"))) << path;
  }
}

TEST(Handbook, EveryFindingIsExplained) {
  const std::string page = handbook("findings.md");
  const LoadedRig loaded = load_rig(kSource / "sample-rigs/hasty-heron.rig.yaml");
  ASSERT_TRUE(loaded.rig);
  std::set<std::string> ids;
  const auto expect_paragraph = [&](const std::string& what, const std::string& id) {
    ids.insert(id);
    EXPECT_NE(page.find("**" + what + "** (`" + id + "`)"), std::string::npos)
        << what << " (" << id << ") has no paragraph";
  };
  for (const Check* check : axis_checks())
    expect_paragraph(std::string(check->what), std::string(check->id));
  for (const Finding& finding : analyse(*loaded.rig).findings)
    if (!finding.axis) expect_paragraph(finding.what, finding.id);
  const std::regex paragraph("\n\\*\\*[^*]+\\*\\* \\(`([^`]+)`\\)");
  for (std::sregex_iterator at(page.begin(), page.end(), paragraph); at != std::sregex_iterator();
       ++at)
    EXPECT_TRUE(ids.contains((*at)[1].str())) << "there is no finding " << (*at)[1].str();
}

TEST(Handbook, EveryLinkLeadsToAPage) {
  const std::regex link("\\]\\(([^)#:]+)(#[^)]*)?\\)");
  int links = 0;
  for (const auto& entry : std::filesystem::directory_iterator(kSource / "resources/handbook")) {
    if (entry.path().extension() != ".md") continue;
    const std::string page = text_of(entry.path());
    for (std::sregex_iterator at(page.begin(), page.end(), link); at != std::sregex_iterator();
         ++at) {
      ++links;
      EXPECT_TRUE(std::filesystem::exists(entry.path().parent_path() / (*at)[1].str()))
          << entry.path().filename() << " links to " << (*at)[1].str();
    }
  }
  EXPECT_GT(links, 10);
}

}  // namespace
}  // namespace gazewright
