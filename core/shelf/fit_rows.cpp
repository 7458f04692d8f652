#include "core/shelf/fit_rows.h"

#include <algorithm>
#include <atomic>
#include <cmath>
#include <thread>

#include "core/analysis/analysis.h"
#include "core/analysis/context.h"
#include "core/analysis/field_value.h"
#include "core/analysis/inputs.h"
#include "core/analysis/say.h"
#include "core/rig/fields.h"
#include "core/units/units.h"
#include "core/words/words.h"

namespace gazewright {
namespace {

/// Down to three digits, as people set a drive; zero stays.
FieldValue field_value(const std::string& path, double value_si) {
  const FieldInfo* info = find_info(path);
  return {path,
          info != nullptr && value_si > 0 ? rounded_value(*info, value_si, false, 3) : value_si};
}

void set_value(Rig& rig, const FieldValue& value) {
  Quantity* at = find_quantity(rig, value.path);
  const FieldInfo* info = find_info(value.path);
  if (at == nullptr || info == nullptr) return;
  const std::string unit = unit_of_written(at->written);
  *at = si_quantity(value.value_si);
  at->written = written_quantity(value.value_si, *info, unit.empty() ? info->unit : unit);
}

/// What is held back on an axis, as values and in words.
void add_held(const FitCandidate& c, Axis axis, FitRow& row) {
  const std::string name = name_of(axis);
  const auto add = [&](const std::string& path, double value, const std::string& what,
                       const std::string& said, const std::string& why) {
    row.values.push_back(field_value(name + path, value));
    row.reason += words("; %1 %2 held to %3 for the %4", words(name), what, said, why);
  };
  if (std::isfinite(c.held_A))
    add(".drive.current_limit", c.held_A, words("current"), say(c.held_A, "A", "A"),
        words("gearbox's peak"));
  if (std::isfinite(c.held_radps))
    add(".loop.speed_limit", c.held_radps, words("speed"), say(c.held_radps, "rad/s", "deg/s"),
        words("gearbox's input"));
}

std::string said_unknown(const FitCandidate& c, Axis axis) {
  if (c.unknown.empty()) return {};
  return words("; not all of %1 is known: %2", words(name_of(axis)), say_needs(c.unknown, 2));
}

/// The axis and the limit of least margin; over all that is known.
struct Closest {
  std::size_t axis = 0;
  FitLimit limit = FitLimit::start;
  double margin = kInfinity;
};
Closest closest(const std::array<AxisFit, 2>& fits) {
  Closest least;
  for (std::size_t axis = 0; axis < 2; ++axis)
    for (const FitLimit limit : kFitLimits)
      if (const double margin = fits[axis].margin(limit); margin < least.margin)
        least = {axis, limit, margin};
  return least;
}

std::string closest_in_words(const Closest& least, const std::array<AxisFit, 2>& fits) {
  const std::string what = words(name_of(kAxes[least.axis])) + " " + words(words_of(least.limit)) +
                           " " + in_words(least.limit, fits[least.axis]);
  if (least.margin < 0)
    return words("fails: %1%2", what,
                 std::isfinite(least.margin) && least.margin > -1
                     ? words(", over by %1", say_percent(1 / (1 + least.margin) - 1))
                     : "");
  const std::size_t slower = fits[1].time_s > fits[0].time_s ? 1 : 0;
  return words("%1 is the slower; closest limit: %2, %3 left", words(name_of(kAxes[slower])), what,
               say_percent(std::min(least.margin, 9.99)));
}

std::string why_no_gains(Context& context, Axis axis) {
  if (context.advice(axis).tuning) return {};
  if (const auto missing = context.missing(kAdvice, axis); !missing.empty())
    return say_needs(missing);
  return context.advice(axis).sentences.front();
}

FitSimulated simulated(FitRow& row, const Rig& rig, const Shelf& shelf,
                       const std::stop_token& stop) {
  Context context(with_fit(rig, shelf, row), stop);
  FitSimulated result;
  std::vector<FieldValue> gains;
  for (const Axis axis : kAxes) {
    for (const FieldValue& value : context.advice(axis).values)
      gains.push_back(field_value(value.path, value.value_si));
    result.no_gains[static_cast<std::size_t>(axis)] = why_no_gains(context, axis);
  }
  row.values.insert(row.values.end(), gains.begin(), gains.end());
  const Rig fitted = with_fit(rig, shelf, row);
  const Analysis analysis = analyse(fitted, {.remedies = false}, stop);
  Context of_fitted(fitted, stop);
  for (const Axis axis : kAxes) {
    result.settle_s[static_cast<std::size_t>(axis)] =
        analysis.value(std::string(name_of(axis)) + ".step.settle_time");
    for (std::string& path : of_fitted.missing(kSettle, axis))
      if (std::ranges::find(result.settle_needs, path) == result.settle_needs.end())
        result.settle_needs.push_back(std::move(path));
  }
  for (const Finding& finding : analysis.findings) {
    result.fails += finding.verdict == Verdict::fails;
    result.tight += finding.verdict == Verdict::tight;
    result.unknown += finding.verdict == Verdict::unknown;
    if (finding.verdict == Verdict::fails)
      result.failing.push_back((finding.axis ? words(name_of(*finding.axis)) + ": " : "") +
                               finding.what);
  }
  return result;
}

/// The first rows that fit; where none does, those that move at all.
std::size_t worth_simulating(const Fits& fits, std::size_t most) {
  std::size_t count = 0;
  for (; count < std::min(most, fits.rows.size()); ++count) {
    const FitRow& row = fits.rows[count];
    const bool moves = std::isfinite(row.time_s[0]) && std::isfinite(row.time_s[1]);
    if (fits.rows.front().fits ? !row.fits : !moves) break;
  }
  return count;
}

void compare_orders(Fits& fits, std::size_t count) {
  constexpr double kSame_s = 0.5e-3;  // half of the step in which the ranking counts
  const auto is_known = [&](std::size_t row) {
    return fits.rows[row].simulated->settle_needs.empty();
  };
  for (std::size_t i = 0; i < count; ++i)
    for (std::size_t k = i + 1; k < count; ++k) {
      if (!is_known(i) || !is_known(k)) continue;
      const auto time = [&](std::size_t row) {
        return fits.rows[row].simulated->slower_s().value_or(kInfinity);
      };
      ++fits.compared;
      if (time(i) <= time(k) + kSame_s) ++fits.same_order;
    }
}

}  // namespace

std::optional<double> FitSimulated::slower_s() const {
  if (!settle_s[0] || !settle_s[1]) return std::nullopt;
  return std::max(*settle_s[0], *settle_s[1]);
}

FitRow fit_row(const std::array<const FitCandidate*, 2>& candidates,
               const std::array<AxisFit, 2>& fits) {
  FitRow row;
  const Closest least = closest(fits);
  row.fits = least.margin >= 0;
  if (std::isfinite(least.margin)) row.margin = least.margin;
  row.reason = closest_in_words(least, fits);
  for (const Axis axis : kAxes) {
    const auto i = static_cast<std::size_t>(axis);
    row.parts[i] = candidates[i]->parts;
    row.time_s[i] = fits[i].time_s;
    row.mass_kg += candidates[i]->mass_kg;
    add_held(*candidates[i], axis, row);
    row.reason += said_unknown(*candidates[i], axis);
  }
  return row;
}

void simulate_fits(Fits& fits, const Rig& rig, const Shelf& shelf, const FitOptions& options,
                   const std::stop_token& stop) {
  const std::size_t count = worth_simulating(fits, options.simulated);
  const auto first = fits.rows.begin();
  const auto end = first + static_cast<std::ptrdiff_t>(count);
  const std::vector<FitRow> before(first, end);
  std::atomic<std::size_t> next = 0;
  const auto work = [&] {
    for (std::size_t i = next++; i < count && !stop.stop_requested(); i = next++)
      fits.rows[i].simulated = simulated(fits.rows[i], rig, shelf, stop);
  };
  {
    std::vector<std::jthread> threads;
    for (int i = 1; i < options.threads; ++i) threads.emplace_back(work);
    work();
  }
  if (stop.stop_requested()) {  // what was simulated, and advised, may be half of it
    std::ranges::copy(before, first);
    return;
  }
  compare_orders(fits, count);
  std::stable_sort(first, end, [](const FitRow& a, const FitRow& b) {
    return std::pair(!a.fits, a.simulated->slower_s().value_or(kInfinity)) <
           std::pair(!b.fits, b.simulated->slower_s().value_or(kInfinity));
  });
  for (std::size_t i = 0; i < fits.rows.size(); ++i) fits.rows[i].rank = i + 1;
}

Rig with_fit(const Rig& rig, const Shelf& shelf, const FitRow& row) {
  Rig fitted = rig;
  for (const Axis axis : kAxes) {
    const FitParts& parts = row.parts[static_cast<std::size_t>(axis)];
    fitted = put_on(std::move(fitted), axis, shelf.entries[parts.motor].part);
    fitted = put_on(std::move(fitted), axis, shelf.entries[parts.gearbox].part);
    if (parts.drive) fitted = put_on(std::move(fitted), axis, shelf.entries[*parts.drive].part);
  }
  for (const FieldValue& value : row.values) set_value(fitted, value);
  return fitted;
}

}  // namespace gazewright
