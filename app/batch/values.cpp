#include <charconv>
#include <cmath>

#include "app/batch/options.h"
#include "core/units/angle.h"
#include "core/units/units.h"

/// Values of options that are more than a word.
namespace gazewright::batch {
namespace {

constexpr double kLongestTrace_s = 60;

/// A plain decimal number that fills the whole text.
std::optional<double> plain_number(std::string_view text) {
  double value = 0;
  const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), value);
  if (error != std::errc{} || end != text.data() + text.size() || !std::isfinite(value)) return {};
  return value;
}

/// What a person would have written: 4 + 3·0.1 is 4.3 and not 4.300000000000001.
double without_dust(double value) {
  char text[40];
  const auto written =
      std::to_chars(text, text + sizeof text, value, std::chars_format::general, 12);
  return plain_number({text, written.ptr}).value_or(value);
}

}  // namespace

std::variant<std::vector<double>, UsageProblem> read_ratios(std::string_view text) {
  const std::string given = "--ratio " + std::string(text);
  const std::string example = "write FROM:TO:STEP, for example --ratio 4:40:1";
  const std::size_t first = text.find(':'), second = text.find(':', first + 1);
  if (first == std::string_view::npos || second == std::string_view::npos)
    return UsageProblem{given + " is not a range", example};
  const auto from = plain_number(text.substr(0, first));
  const auto to = plain_number(text.substr(first + 1, second - first - 1));
  const auto step = plain_number(text.substr(second + 1));
  if (!from || !to || !step) return UsageProblem{given + " is not three numbers", example};
  if (*from <= 0 || *step <= 0 || *to < *from)
    return UsageProblem{given + " has no ratios in it",
                        "FROM and STEP are above 0 and TO is not below FROM, for example --ratio "
                        "4:40:1"};
  const double steps = std::floor((*to - *from) / *step * (1 + 1e-12) + 1e-9);
  if (!(steps < double(kMostSweepPoints)))
    return UsageProblem{given + " has more than " + std::to_string(kMostSweepPoints) + " ratios",
                        "take a longer step"};
  std::vector<double> ratios;
  for (std::size_t i = 0; i <= std::size_t(steps); ++i)
    ratios.push_back(without_dust(*from + double(i) * *step));
  return ratios;
}

std::variant<double, UsageProblem> read_duration(std::string_view text) {
  static constexpr FieldInfo info{.key = "for",
                                  .label = "Time",
                                  .si_unit = "s",
                                  .unit = "s",
                                  .least = 0,
                                  .most = kLongestTrace_s,
                                  .above_least = true,
                                  .fallback = {},
                                  .fallback_text = "",
                                  .help = ""};
  const std::string with_unit = plain_number(text) ? std::string(text) + " s" : std::string(text);
  const auto read = read_quantity(with_unit, info);
  if (const auto* problem = std::get_if<UnitProblem>(&read))
    return UsageProblem{"--for " + std::string(text) + ": " + problem->problem,
                        "write seconds or a time above 0 and up to 60 s, for example --for 0.6 or "
                        "--for \"600 ms\""};
  return std::get<Quantity>(read).value();
}

std::variant<std::size_t, UsageProblem> read_most(std::string_view text) {
  constexpr std::size_t kMost = 1000;
  std::size_t value = 0;
  const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), value);
  if (error != std::errc{} || end != text.data() + text.size() || value < 1 || value > kMost)
    return UsageProblem{"--most " + std::string(text) + " is no number of rows",
                        "write a whole number from 1 to 1000, for example --most 50"};
  return value;
}

std::variant<double, UsageProblem> read_step(std::string_view text) {
  static constexpr FieldInfo info = [] {
    FieldInfo step{};
    step.key = "step";
    step.label = "Step";
    step.si_unit = "rad";
    step.unit = "deg";
    step.least = 0.25 * kDegree_rad * (1 - 1e-12);
    step.most = 30 * kDegree_rad * (1 + 1e-12);
    return step;
  }();
  const auto read = read_quantity(text, info);
  if (const auto* problem = std::get_if<UnitProblem>(&read))
    return UsageProblem{"--step " + std::string(text) + ": " + problem->problem,
                        "write an angle from 0.25 deg to 30 deg, for example --step 2deg"};
  return std::get<Quantity>(read).value();
}

}  // namespace gazewright::batch
