#include "core/rig/usual.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <charconv>
#include <regex>

#include "core/units/units.h"
#include "tests/support/tol.h"

namespace gazewright {
namespace {

/// Every field there is, with its path.
std::vector<std::pair<std::string, const FieldInfo*>> fields() {
  Rig rig;
  for (const Axis axis : kAxes) {
    rig.axis(axis).stops.presence = Presence::given;
    rig.axis(axis).cable.presence = Presence::given;
  }
  rig.detectors.emplace_back();
  rig.duty.emplace_back();
  rig.materials.emplace_back();
  std::vector<std::pair<std::string, const FieldInfo*>> all;
  for (const FieldRef& field : all_fields(rig))
    if (const auto* ref = std::get_if<QuantityRef>(&field)) all.emplace_back(ref->path, ref->info);
  return all;
}

/// "10 000" -> "10000", as a number of a help text.
double number(std::string text) {
  std::erase(text, ' ');
  double value = 0;
  std::from_chars(text.data(), text.data() + text.size(), value);
  return value;
}

// The help is for people and the table for the program; both must say the same.
TEST(Usual, IsWhatTheHelpSays) {
  const std::regex usual(
      R"(sually ([0-9.e-]+(?: 000)?) ?([A-Za-z/.]*[0-9]?[A-Za-z/]*) to ([0-9.e-]+(?: 000)?) ?([A-Za-z](?:[A-Za-z0-9/.]*[A-Za-z0-9])?)?)");
  int compared = 0;
  for (const auto& [path, info] : fields()) {
    const UsualRange* range = usual_range(*info);
    const std::string help(info->help);
    std::smatch said;
    if (range == nullptr || !std::regex_search(help, said, usual)) continue;
    SCOPED_TRACE(path + ": " + help);
    const std::string unit = info->is_plain_number() ? "1" : said[4].str();
    const std::string least_unit = said[2].str().empty() ? unit : said[2].str();
    const double least = to_si(number(said[1]), info->si_unit, least_unit);
    const double most = to_si(number(said[3]), info->si_unit, unit);
    EXPECT_NEAR(range->least, least, tol(1e-12) * most);
    EXPECT_NEAR(range->most, most, tol(1e-12) * most);
    ++compared;
  }
  // Both axes; of the rows only those of ratio, backlash and task.within are worded otherwise.
  EXPECT_GT(compared, 150);
}

TEST(Usual, OfAFieldIsInsideOfWhatIsAllowed) {
  for (const auto& [path, info] : fields()) {
    const UsualRange* range = usual_range(*info);
    if (range == nullptr) continue;
    EXPECT_EQ(range_problem(*info, range->most), "") << path;
    EXPECT_LT(range->least, range->most) << path;
    EXPECT_EQ(unusual_words(*info, range->most), "") << path;
    EXPECT_EQ(unusual_words(*info, range->least), "") << path;  // 0 is never unusual
  }
}

TEST(Usual, ADefaultIsNeverUnusual) {
  for (const auto& [path, info] : fields())
    EXPECT_EQ(unusual_words(*info, info->fallback.value_or(0)), "") << path;
}

TEST(Usual, OnlyFarOutsideIsUnusual) {
  const FieldInfo& mass = *find_info("pan.motor.mass");
  EXPECT_EQ(unusual_words(mass, 9.9), "");
  EXPECT_EQ(unusual_words(mass, 96), "usually 30 g to 1000 g");
  EXPECT_EQ(unusual_words(mass, 0.0031), "");
  EXPECT_EQ(unusual_words(mass, 0.0029), "usually 30 g to 1000 g");
  EXPECT_EQ(unusual_words(mass, 0), "");
  EXPECT_EQ(unusual_words(mass, kInfinity), "");
}

}  // namespace
}  // namespace gazewright
