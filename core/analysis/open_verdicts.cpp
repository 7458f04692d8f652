#include "core/analysis/open_verdicts.h"

#include <algorithm>
#include <cmath>

#include "core/analysis/context.h"
#include "core/analysis/say.h"
#include "core/words/words.h"

namespace gazewright {
namespace {

/// Which headline figure a finding compares.
struct Link {
  std::string_view finding, figure;
  bool none_fails = false;  ///< without a value the finding fails: it never settles
};
constexpr Link kLinks[]{{"<axis>.move.time", "<axis>.picture.settle_time", true},
                        {"<axis>.move.time", "<axis>.step.settle_time", true},
                        {"<axis>.duty.pace", "<axis>.step.settle_time", true},
                        {"<axis>.loop.phase_margin", "<axis>.loop.phase_margin"},
                        {"<axis>.move.torque", "<axis>.output.torque_stall"},
                        {"<axis>.gearbox.peak", "<axis>.output.torque_stall"},
                        {"<axis>.travel.move", "<axis>.travel.usable"},
                        {"<axis>.travel.cable", "<axis>.travel.usable"}};

/// What is left to the limit with the figure at this value, SI; below 0 it fails.
struct Room {
  const Finding& finding;
  bool is_demand;  ///< the figure is; else it is the capacity

  double at(double figure) const {
    return is_demand ? *finding.capacity - figure : figure - *finding.demand;
  }
};

/// The first that is in doubt and that it does compare; null without one.
const Link* link_of(const Finding& finding, const Doubts& doubts) {
  if (!finding.axis || !finding.demand || !finding.capacity) return nullptr;
  const auto* found = std::ranges::find_if(kLinks, [&](const Link& link) {
    if (for_axis(link.finding, *finding.axis) != finding.id) return false;
    const DoubtedFigure* figure = doubts.figure(for_axis(link.figure, *finding.axis));
    return figure != nullptr &&
           (figure->value == *finding.demand || figure->value == *finding.capacity);
  });
  return found == std::end(kLinks) ? nullptr : found;
}

bool turns(const std::optional<double>& end, const Room& room, bool fails, bool none_fails) {
  if (!end) return none_fails && !fails;
  return (room.at(*end) < 0) != fails;
}

std::string say_open(const Finding& finding, double room, double uncertainty) {
  const auto said = [&](double value) {
    return say(std::abs(value), finding.si_unit, finding.unit);
  };
  return room < 0
             ? words("fails, but within the doubt: %1 short, ±%2", said(room), said(uncertainty))
             : words("holds, but within the doubt: %1 left, ±%2", said(room), said(uncertainty));
}

std::optional<OpenVerdict> open_of(const Finding& finding, const Doubts& doubts) {
  const Link* link = link_of(finding, doubts);
  if (link == nullptr) return std::nullopt;
  const DoubtedFigure* figure = doubts.figure(for_axis(link->figure, *finding.axis));
  const bool is_demand = figure->value == *finding.demand;
  const Room room{finding, is_demand};
  const double left = room.at(figure->value);
  OpenVerdict open{finding.id, say_open(finding, left, figure->uncertainty_si), {}};
  bool may_be_missing = false;
  for (const Shift& shift : figure->shifts) {
    const bool lacks = !shift.low || !shift.high;
    may_be_missing = may_be_missing || (lacks && link->none_fails && left >= 0);
    if (turns(shift.low, room, left < 0, link->none_fails) ||
        turns(shift.high, room, left < 0, link->none_fails))
      open.turned_by.push_back(shift.unknown);
  }
  if (may_be_missing)
    open.text = words("holds, but within the doubt: with an input at its end it never settles");
  else if (figure->uncertainty_si < std::abs(left))
    return std::nullopt;
  return open;
}

}  // namespace

std::vector<OpenVerdict> open_verdicts(const Analysis& analysis, const Doubts& doubts) {
  std::vector<OpenVerdict> all;
  for (const Finding& finding : analysis.findings)
    if (auto open = open_of(finding, doubts)) all.push_back(std::move(*open));
  return all;
}

void rank_by_verdicts(std::vector<Doubts::Worth>& worth, const Analysis& analysis,
                      const Doubts& doubts) {
  const std::vector<OpenVerdict> open = open_verdicts(analysis, doubts);
  const auto turned = [&](const Doubts::Worth& each) {
    return std::ranges::find_if(open, [&](const OpenVerdict& verdict) {
      return std::ranges::find(verdict.turned_by, each.unknown) != verdict.turned_by.end();
    });
  };
  std::stable_partition(worth.begin(), worth.end(),
                        [&](const Doubts::Worth& each) { return turned(each) != open.end(); });
  for (Doubts::Worth& each : worth) {
    const auto verdict = turned(each);
    if (verdict == open.end()) continue;
    const auto finding = std::ranges::find(analysis.findings, verdict->finding, &Finding::id);
    each.text = words("%1; alone it can turn a verdict: %2, %3", each.text,
                      words(name_of(*finding->axis)), finding->what);
  }
}

}  // namespace gazewright
