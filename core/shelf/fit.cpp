#include "core/shelf/fit.h"

#include <algorithm>
#include <atomic>
#include <cmath>
#include <map>
#include <set>
#include <thread>
#include <tuple>

#include "core/analysis/context.h"
#include "core/analysis/input_names.h"
#include "core/analysis/missing.h"
#include "core/analysis/say.h"
#include "core/shelf/carried_parts.h"
#include "core/shelf/fit_axis.h"
#include "core/shelf/fit_rows.h"
#include "core/words/words.h"

namespace gazewright {
namespace {

/// How the parts of one axis change the load of the other, through the bodies that stand for them.
/// Inertia and gravity are linear in the masses, so that changes of both axes add up.
struct LoadChange {
  double inertia_kgm2 = 0, cos_Nm = 0, sin_Nm = 0, constant_Nm = 0;
  auto operator<=>(const LoadChange&) const = default;
};
LoadChange change(const AxisLoad& from, const AxisLoad& to) {
  return {to.inertia_kgm2 - from.inertia_kgm2, to.gravity.cos_Nm - from.gravity.cos_Nm,
          to.gravity.sin_Nm - from.gravity.sin_Nm,
          to.gravity.constant_Nm - from.gravity.constant_Nm};
}
AxisLoad changed(AxisLoad load, const LoadChange& by) {
  load.inertia_kgm2 += by.inertia_kgm2;
  load.gravity.cos_Nm += by.cos_Nm;
  load.gravity.sin_Nm += by.sin_Nm;
  load.gravity.constant_Nm += by.constant_Nm;
  return load;
}

/// The complete candidates of an axis, and which different changes they make to the other's load.
struct Side {
  std::vector<FitCandidate> candidates;
  std::vector<std::size_t> group;   ///< by candidate
  std::vector<LoadChange> changes;  ///< by group
};

Side side_of(std::vector<FitCandidate> candidates, const AxisLoad& other_base) {
  Side side;
  std::erase_if(candidates, [](const FitCandidate& c) { return !c.needs.empty(); });
  std::map<LoadChange, std::size_t> groups;
  for (const FitCandidate& c : candidates) {
    const LoadChange by = change(other_base, c.other_load);
    const auto [at, is_new] = groups.emplace(by, side.changes.size());
    if (is_new) side.changes.push_back(by);
    side.group.push_back(at->second);
  }
  side.candidates = std::move(candidates);
  return side;
}

/// The least margin of one axis, and whose it is.
struct Least {
  double margin = kInfinity;
  FitLimit limit = FitLimit::start;
};
Least least_of(const AxisFit& fit) {
  Least least;
  for (const FitLimit limit : kFitLimits)
    if (const double margin = fit.margin(limit); margin < least.margin) least = {margin, limit};
  return least;
}

/// What the search keeps of a combination.
struct Found {
  long long time_ms = 0;
  std::size_t unknown = 0, pan = 0, tilt = 0;
  double margin = 0, mass_kg = 0;

  auto by_time() const { return std::tuple(time_ms, unknown, -margin, mass_kg, pan, tilt); }
  auto by_margin() const { return std::tuple(-margin, unknown, time_ms, mass_kg, pan, tilt); }
};

/// The best of many, few of them kept.
class Best {
 public:
  Best(std::size_t most, bool by_time) : most_(most), by_time_(by_time) {}
  void add(const Found& found) {
    kept_.push_back(found);
    if (kept_.size() >= 4 * most_ + 1024) cut();
  }
  void add(const Best& other) {
    for (const Found& found : other.kept_) add(found);
  }
  std::vector<Found> sorted() {
    std::ranges::sort(kept_, [this](const Found& a, const Found& b) { return is_before(a, b); });
    kept_.resize(std::min(kept_.size(), most_));
    return kept_;
  }

 private:
  bool is_before(const Found& a, const Found& b) const {
    return by_time_ ? a.by_time() < b.by_time() : a.by_margin() < b.by_margin();
  }
  void cut() {
    std::ranges::nth_element(kept_, kept_.begin() + static_cast<std::ptrdiff_t>(most_),
                             [this](const Found& a, const Found& b) { return is_before(a, b); });
    kept_.resize(most_);
  }

  std::size_t most_;
  bool by_time_;
  std::vector<Found> kept_;
};

/// One thread's part of the answer.
struct Tally {
  explicit Tally(std::size_t most) : fitting(most, true), failing(most, false) {}
  Best fitting, failing;
  std::size_t fits = 0, fails = 0;
  std::array<std::size_t, kFitLimits.size()> failing_by{};

  void add(const Tally& other) {
    fitting.add(other.fitting);
    failing.add(other.failing);
    fits += other.fits;
    fails += other.fails;
    for (std::size_t i = 0; i < failing_by.size(); ++i) failing_by[i] += other.failing_by[i];
  }
};

class Search {
 public:
  Search(const Side& pan, const Side& tilt, const std::stop_token& stop)
      : pan_(pan), tilt_(tilt), stop_(stop) {
    tilt_fits_.resize(tilt.candidates.size());
    for (std::size_t t = 0; t < tilt_fits_.size(); ++t)
      for (const LoadChange& by : pan.changes)
        tilt_fits_[t].push_back(
            axis_fit(tilt.candidates[t], changed(tilt.candidates[t].model.load, by)));
  }

  /// A pan candidate with every one of tilt.
  void row(std::size_t p, Tally& tally) const {
    std::vector<AxisFit> fits;
    for (const LoadChange& by : tilt_.changes) {
      if (stop_.stop_requested()) return;
      fits.push_back(axis_fit(pan_.candidates[p], changed(pan_.candidates[p].model.load, by)));
    }
    for (std::size_t t = 0; t < tilt_.candidates.size(); ++t)
      weigh(p, t, fits[tilt_.group[t]], tilt_fits_[t][pan_.group[p]], tally);
  }

  FitRow row_of(const Found& found) const {
    const FitCandidate &p = pan_.candidates[found.pan], &t = tilt_.candidates[found.tilt];
    const AxisFit pan = axis_fit(p, changed(p.model.load, tilt_.changes[tilt_.group[found.tilt]]));
    return fit_row({&p, &t}, {pan, tilt_fits_[found.tilt][pan_.group[found.pan]]});
  }

 private:
  void weigh(std::size_t p, std::size_t t, const AxisFit& pan, const AxisFit& tilt,
             Tally& tally) const {
    const FitCandidate &a = pan_.candidates[p], &b = tilt_.candidates[t];
    const double time_s = std::max(pan.time_s, tilt.time_s);
    const Least of_pan = least_of(pan), of_tilt = least_of(tilt);
    const Least& least = of_tilt.margin < of_pan.margin ? of_tilt : of_pan;
    const Found found{std::isfinite(time_s) ? std::llround(1000 * time_s) : -1,
                      a.unknown.size() + b.unknown.size(),
                      p,
                      t,
                      least.margin,
                      a.mass_kg + b.mass_kg};
    if (least.margin >= 0 && std::isfinite(time_s)) {
      ++tally.fits;
      tally.fitting.add(found);
      return;
    }
    ++tally.fails;
    ++tally.failing_by[static_cast<std::size_t>(least.limit)];
    tally.failing.add(found);
  }

  const Side &pan_, &tilt_;
  const std::stop_token& stop_;
  std::vector<std::vector<AxisFit>> tilt_fits_;  ///< by candidate and pan's group
};

Tally searched(const Search& search, std::size_t rows, std::size_t per_row, std::size_t all,
               const FitOptions& options, const FitProgress& progress,
               const std::stop_token& stop) {
  const auto count = static_cast<std::size_t>(std::max(1, options.threads));
  std::vector<Tally> tallies(count, Tally(std::max<std::size_t>(1, options.most)));
  std::atomic<std::size_t> next = 0, done = all - rows * per_row;
  const auto work = [&](Tally& tally) {
    for (std::size_t p = next++; p < rows && !stop.stop_requested(); p = next++) {
      search.row(p, tally);
      const std::size_t now = done += per_row;
      if (progress) progress(now, all);
    }
  };
  {
    std::vector<std::jthread> threads;
    for (std::size_t i = 1; i < count; ++i) threads.emplace_back([&, i] { work(tallies[i]); });
    work(tallies[0]);
  }
  for (std::size_t i = 1; i < count; ++i) tallies[0].add(tallies[i]);
  return std::move(tallies[0]);
}

/// Motors and gearboxes whose mass is known on both axes, so that no part of the rig's own, which
/// may lack it, decides.
Rig base_rig(const Rig& rig, const Shelf& shelf) {
  Rig base = rig;
  for (const PartKind kind : {PartKind::motor, PartKind::gearbox})
    for (const std::size_t entry : shelf.of(kind)) {
      if (!mass_of(shelf.entries[entry].part).si) continue;
      for (const Axis axis : kAxes) base = put_on(std::move(base), axis, shelf.entries[entry].part);
      break;
    }
  return base;
}

void add_needs(Fits& fits, const std::vector<FitCandidate>& candidates) {
  std::map<std::size_t, std::set<std::string>> fields;
  for (const FitCandidate& c : candidates)
    for (const std::string& path : c.needs) {
      const std::string field = path.substr(path.find('.') + 1);
      const bool is_motor = field.starts_with("motor."), is_gearbox = field.starts_with("gearbox.");
      if (is_motor || is_gearbox || c.parts.drive)
        fields[is_motor     ? c.parts.motor
               : is_gearbox ? c.parts.gearbox
                            : *c.parts.drive]
            .insert(field);
    }
  for (const auto& [entry, names] : fields) {
    const auto known = std::ranges::find(fits.needs, entry, &FitNeeds::entry);
    if (known == fits.needs.end()) fits.needs.push_back({entry, {names.begin(), names.end()}});
  }
}

/// What the shelf must hold for there to be a choice.
std::vector<std::string> shelf_needs(const Shelf& shelf) {
  std::vector<std::string> needs;
  for (const PartKind kind : {PartKind::motor, PartKind::gearbox})
    if (shelf.of(kind).empty())
      needs.push_back(words("a %1 on the shelf", part_words(name_of(kind))));
  return needs;
}

void add_besides(Fits& fits, const std::vector<std::string>& paths) {
  const auto is_in = [](const std::vector<std::string>& list, const std::string& path) {
    return std::ranges::find(list, path) != list.end();
  };
  for (const std::string& path : paths)
    if (!is_in(fits.missing, path) && !is_in(fits.also_missing, path))
      fits.also_missing.push_back(path);
}

std::vector<std::string> remarks_of(const Rig& rig, const Shelf& shelf, bool drives) {
  std::vector<std::string> remarks;
  for (const PartKind kind : {PartKind::motor, PartKind::gearbox}) {
    if (!is_carried(rig, Axis::tilt, kind))
      remarks.push_back(
          words("no body is called “tilt %1”: its mass does not count on pan", name_of(kind)));
  }
  for (const Axis axis : kAxes)
    if (!rig.axis(axis).loop.speed_limit_radps.has_value())
      remarks.push_back(words(
          "%1.loop.speed_limit is missing: no limit of speed but the parts' own", name_of(axis)));
  if (drives && shelf.of(PartKind::drive).empty())
    remarks.emplace_back(words("there is no drive on the shelf: the rig's own stay"));
  return remarks;
}

}  // namespace

Fits rank_fits(const Rig& rig, const Shelf& shelf, const FitOptions& options,
               const FitProgress& progress, const std::stop_token& stop) {
  Fits fits;
  std::vector<std::string> lacking = shelf_needs(shelf);
  const Rig base = base_rig(rig, shelf);
  Context of_base(base);
  std::array<std::vector<FitCandidate>, 2> all;
  for (const Axis axis : kAxes)
    all[static_cast<std::size_t>(axis)] =
        fit_candidates(base, shelf, axis, options.drives, fits.missing);
  for (const Axis axis : kAxes)
    add_besides(fits, lacking_besides(base, shelf, axis, options.drives));
  lacking.insert(lacking.end(), fits.missing.begin(), fits.missing.end());
  fits.because = say_needs(lacking);
  fits.missing = entries_of(fits.missing);
  fits.also_missing = entries_of(fits.also_missing);
  if (!fits.because.empty()) return fits;
  fits.remarks = remarks_of(rig, shelf, options.drives);
  for (const auto& candidates : all) add_needs(fits, candidates);
  fits.combinations = all[0].size() * all[1].size();
  const Side pan = side_of(std::move(all[0]), of_base.model(Axis::tilt).load);
  const Side tilt = side_of(std::move(all[1]), of_base.model(Axis::pan).load);
  const std::size_t complete = pan.candidates.size() * tilt.candidates.size();
  fits.lacking = fits.combinations - complete;
  const Search search(pan, tilt, stop);
  Tally tally = searched(search, pan.candidates.size(), tilt.candidates.size(), fits.combinations,
                         options, progress, stop);
  fits.fitting = tally.fits;
  fits.failing = tally.fails;
  fits.failing_by = tally.failing_by;
  for (Best* best : {&tally.fitting, &tally.failing})
    for (const Found& found : best->sorted()) {
      if (fits.rows.size() >= options.most) break;
      fits.rows.push_back(search.row_of(found));
      fits.rows.back().rank = fits.rows.size();
    }
  simulate_fits(fits, rig, shelf, options, stop);
  fits.is_stopped = stop.stop_requested();
  return fits;
}

}  // namespace gazewright
