#include <algorithm>
#include <span>
#include <tuple>

#include "core/analysis/analysis.h"
#include "core/analysis/checks.h"
#include "core/analysis/curves.h"
#include "core/analysis/figures.h"
#include "core/analysis/gain_effect.h"
#include "core/analysis/homing_plan.h"
#include "core/analysis/inputs.h"
#include "core/analysis/limit_gains.h"
#include "core/analysis/price.h"
#include "core/analysis/swap.h"

namespace gazewright {
namespace {

int urgency(Verdict verdict) {
  switch (verdict) {
    case Verdict::fails:
      return 0;
    case Verdict::tight:
      return 1;
    case Verdict::unknown:
      return 2;
    case Verdict::holds:
      return 3;
  }
  return 3;
}

void sort_by_urgency(std::vector<Finding>& findings) {
  std::stable_sort(findings.begin(), findings.end(), [](const Finding& a, const Finding& b) {
    return std::tuple(urgency(a.verdict),
                      a.margin.value_or(a.verdict == Verdict::fails ? -1 : 1e9)) <
           std::tuple(urgency(b.verdict),
                      b.margin.value_or(b.verdict == Verdict::fails ? -1 : 1e9));
  });
}

bool is_asked(const Check& check, Context& context, Axis axis) {
  if (check.asked_when != nullptr && !check.asked_when(context, axis)) return false;
  return check.asked_by.empty() || context.missing(std::span(&check.asked_by, 1), axis).empty();
}

std::vector<Finding> findings_of(Context& context, const Rig& rig, bool remedies,
                                 const std::stop_token& stop) {
  std::vector<Finding> findings;
  for (const Check* check : axis_checks()) {
    for (const Axis axis : kAxes) {
      if (stop.stop_requested()) return findings;
      if (!is_asked(*check, context, axis)) continue;
      auto finding = find(*check, context, axis);
      if (!finding) continue;
      if (remedies && finding->verdict == Verdict::fails)
        finding->remedies = remedies_of(*check, context, rig, axis);
      findings.push_back(std::move(*finding));
    }
  }
  return findings;
}

}  // namespace

const char* name_of(Verdict verdict) {
  switch (verdict) {
    case Verdict::holds:
      return "holds";
    case Verdict::tight:
      return "tight";
    case Verdict::fails:
      return "fails";
    case Verdict::unknown:
      return "unknown";
  }
  return "unknown";
}

const Figure* Analysis::figure(std::string_view id) const {
  const auto found = std::find_if(figures.begin(), figures.end(),
                                  [&](const Figure& figure) { return figure.id == id; });
  return found == figures.end() ? nullptr : &*found;
}

std::optional<double> Analysis::value(std::string_view id) const {
  const Figure* found = figure(id);
  return found == nullptr ? std::nullopt : found->value;
}

bool ends_at_camera(const Analysis& analysis, Axis axis) {
  const Figure* at_camera = analysis.figure(for_axis("<axis>.picture.settle_time", axis));
  return at_camera != nullptr && !at_camera->is_aside &&
         analysis.value(for_axis("<axis>.step.settle_time", axis));
}

std::string settle_id(const Analysis& analysis, Axis axis) {
  return for_axis(
      ends_at_camera(analysis, axis) ? "<axis>.picture.settle_time" : "<axis>.step.settle_time",
      axis);
}

Analysis analyse(const Rig& rig, const AnalyseOptions& options, const std::stop_token& stop) {
  const bool remedies = options.remedies && !options.quick;
  Context context(rig, stop, options.quick);
  context.prepare();
  Analysis analysis;
  analysis.is_quick = options.quick;
  analysis.figures = compute_figures(context);
  analysis.findings = findings_of(context, rig, remedies, stop);
  if (remedies) {
    const SwapStudy swap = study_swap(context, rig, stop);
    analysis.swap = swap.swap;
    analysis.findings.push_back(swap_finding(swap));
    add_prices(analysis.findings, rig, stop);
    analysis.eye = eye_benchmark(context, stop);
  }
  analysis.tracking = context.tracking();
  sort_by_urgency(analysis.findings);
  if (const Coupling* coupling = context.coupling()) analysis.coupling = *coupling;
  analysis.bus = bus_curve(context);
  for (const Axis axis : kAxes) {
    analysis.heat[static_cast<std::size_t>(axis)] = heat_curve(context, axis);
    analysis.gravity[static_cast<std::size_t>(axis)] = gravity_over_travel(context, axis);
    analysis.pointing[static_cast<std::size_t>(axis)] = pointing_budget(context, axis);
    analysis.curves[static_cast<std::size_t>(axis)] = curves_of(context, axis);
    analysis.limits[static_cast<std::size_t>(axis)] = move_limits(context, axis);
    if (remedies)
      analysis.limits[static_cast<std::size_t>(axis)].gains =
          limit_gains(context, rig, axis, analysis.findings, stop);
    if (context.missing(kLoops, axis).empty())
      analysis.response[static_cast<std::size_t>(axis)] = context.loops(axis).response;
    analysis.advice[static_cast<std::size_t>(axis)] = advice_with_effect(context, axis);
    if (context.missing(kStep, axis).empty())
      analysis.profiles[static_cast<std::size_t>(axis)] = context.profiles(axis);
    analysis.homing[static_cast<std::size_t>(axis)] = homing_plan(context, axis, analysis.findings);
  }
  return analysis;
}

}  // namespace gazewright
