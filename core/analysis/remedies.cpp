#include <algorithm>
#include <cmath>

#include "core/analysis/checks.h"
#include "core/analysis/field_value.h"
#include "core/analysis/price.h"
#include "core/rig/fields.h"
#include "core/words/words.h"

namespace gazewright {
namespace {

constexpr double kScanFactor = 1.15;
constexpr int kBisections = 12;

bool is_good(Verdict verdict) { return verdict == Verdict::holds || verdict == Verdict::tight; }

/// Solves one lever: the value nearest to the present one from which on the check holds.
class LeverSolver {
 public:
  LeverSolver(const Check& check, Context& context, const Rig& rig, Axis axis, const Lever& lever)
      : check_(check),
        context_(context),
        rig_(rig),
        axis_(axis),
        lever_(lever),
        path_(for_axis(lever.path, axis)),
        info_(find_info(path_)) {}

  std::optional<Remedy> solve(double* change) {
    const auto start = start_size();
    if (info_ == nullptr || !start || *start <= 0) return std::nullopt;
    const bool up = lever_.way == Way::up;
    double bad = *start;
    for (double factor = kScanFactor; factor <= lever_.reach * kScanFactor; factor *= kScanFactor) {
      if (context_.stop().stop_requested()) return std::nullopt;
      const double value = up ? *start * factor : *start / factor;
      if (!range_problem(*info_, sign_ * whole_if_due(value)).empty()) return std::nullopt;
      if (!holds(value)) {
        bad = value;
        continue;
      }
      const double solved = rounded(between(bad, value));
      if (!range_problem(*info_, sign_ * solved).empty() || !holds(solved)) return std::nullopt;
      if (!lasts(solved)) {
        bad = value;
        continue;
      }
      *change = std::abs(std::log(solved / *start));
      return Remedy{text(sign_ * solved), path_, sign_ * solved};
    }
    return std::nullopt;
  }

 private:
  /// The present value less its sign where it goes to zero: all sizes below are without it.
  std::optional<double> start_size() {
    const auto start = start_value();
    if (start && *start < 0 && lever_.way == Way::to_zero) sign_ = -1;
    return start ? std::optional(sign_ * *start) : std::nullopt;
  }

  /// The present value; for a speed limit that is not set, the top speed it would have to undercut.
  std::optional<double> start_value() {
    const Quantity* quantity = find_quantity(context_.rig(), path_);
    if (quantity == nullptr || !quantity->si) return std::nullopt;
    if (std::isfinite(*quantity->si)) return *quantity->si;
    if (info_ == nullptr || info_->si_unit != "rad/s") return std::nullopt;
    return top_speed_radps(context_.model(axis_));
  }

  bool holds(double value) const {
    return holds(value, check_.trial != nullptr ? check_.trial : check_.compare);
  }
  /// By the check itself, where the trials were cheaper ones that look less far.
  bool lasts(double value) const { return check_.trial == nullptr || holds(value, check_.compare); }

  bool holds(double value, Compared (*compare)(Context&, Axis)) const {
    Rig trial = rig_;
    find_quantity(trial, path_)->si = sign_ * whole_if_due(value);
    Context context(trial, context_.stop());
    context.borrow_steps(context_);
    if (check_.lend != nullptr) check_.lend(context_, context, path_);
    return is_good(verdict_of(compare(context, axis_)));
  }

  double between(double bad, double good) const {
    for (int i = 0; i < kBisections && !context_.stop().stop_requested(); ++i) {
      const double middle = std::sqrt(bad * good);
      (holds(middle) ? good : bad) = middle;
    }
    return good;
  }

  double whole_if_due(double value) const {
    if (!info_->whole) return value;
    return lever_.way == Way::up ? std::ceil(value) : std::floor(value);
  }

  /// Three significant digits in the field's unit, towards the side that holds.
  double rounded(double value) const {
    if (info_->whole) return whole_if_due(value);
    return rounded_value(*info_, value, lever_.way == Way::up, 3);
  }

  std::string text(double value) const {
    const Change change = lever_.way == Way::up     ? Change::or_more
                          : lever_.way == Way::down ? Change::or_less
                                                    : Change::or_nearer_to_0;
    return say_change(path_, *info_, value, change) + " " + words(check_.goal);
  }

  const Check& check_;
  Context& context_;
  const Rig& rig_;
  Axis axis_;
  const Lever& lever_;
  std::string path_;
  const FieldInfo* info_;
  double sign_ = 1;
};

/// What the check has worked out otherwise, where it mends it.
std::optional<Remedy> offer_of(const Check& check, Context& context, const Rig& rig, Axis axis) {
  if (check.offer == nullptr) return std::nullopt;
  auto remedy = check.offer(context, axis);
  if (!remedy) return std::nullopt;
  const Rig trial = remedied(rig, *remedy);
  Context mended(trial, context.stop());
  mended.borrow_steps(context);
  if (check.lend != nullptr) check.lend(context, mended, remedy->path);
  if (!is_good(verdict_of(check.compare(mended, axis)))) return std::nullopt;
  remedy->text += " " + words(check.goal);
  return remedy;
}

}  // namespace

std::vector<Remedy> remedies_of(const Check& check, Context& context, const Rig& rig, Axis axis) {
  std::vector<Remedy> remedies;
  if (auto offered = offer_of(check, context, rig, axis)) remedies.push_back(std::move(*offered));
  std::vector<std::pair<double, Remedy>> found;
  for (const Lever& lever : check.levers) {
    double change = 0;
    auto remedy = LeverSolver(check, context, rig, axis, lever).solve(&change);
    if (remedy) found.emplace_back(change, std::move(*remedy));
  }
  std::stable_sort(found.begin(), found.end(),
                   [](const auto& a, const auto& b) { return a.first < b.first; });
  for (auto& [change, remedy] : found) remedies.push_back(std::move(remedy));
  return remedies;
}

}  // namespace gazewright
