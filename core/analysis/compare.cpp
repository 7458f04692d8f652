#include "core/analysis/compare.h"

#include <algorithm>

#include "core/analysis/context.h"
#include "core/files/spelling.h"
#include "core/words/words.h"

namespace gazewright {
namespace {

using Better = HeadlineFigure::Better;

constexpr HeadlineFigure kHeadlines[]{
    {"<axis>.step.settle_time"},
    {"<axis>.picture.settle_time"},
    {"<axis>.move.shortest_time"},
    {"<axis>.step.overshoot"},
    {"<axis>.step.peak_speed", Better::higher},
    {"<axis>.output.torque_stall", Better::higher},
    {"<axis>.output.acceleration_peak", Better::higher},
    {"<axis>.loop.phase_margin", Better::higher},
    {"<axis>.pointing.gap_px"},
    {"<axis>.pointing.rss_px"},
    {"<axis>.travel.usable", Better::higher},
    {"<axis>.heat.winding_temperature"},
    {"<axis>.heat.mount_temperature"},
    {"supply.peak_current"},
    {"supply.peak_voltage", Better::neither},
    {"mass.total"},
};

/// Analysed designs of the comparison, the present one first; null: not worked out yet.
using Designs = std::vector<const Analysis*>;

constexpr std::string_view kNotYet = "not worked out yet";

bool is_same(const CompareCell& a, const CompareCell& b) {
  if (a.value && b.value) return *a.value == *b.value && a.word == b.word;
  return !a.value && !b.value;
}

void mark_differences(CompareRow& row) {
  for (CompareCell& cell : row.cells)
    cell.differs = cell.word != kNotYet && !is_same(cell, row.cells.front());
}

void mark_best(CompareRow& row, Better better) {
  std::optional<double> least, most;
  for (const CompareCell& cell : row.cells) {
    if (!cell.value) continue;
    least = std::min(least.value_or(*cell.value), *cell.value);
    most = std::max(most.value_or(*cell.value), *cell.value);
  }
  if (!least || *least == *most || better == Better::neither) return;
  const double best = better == Better::lower ? *least : *most;
  for (CompareCell& cell : row.cells) cell.is_best = cell.value == best;
}

std::string axis_label(std::string_view id, std::string_view label) {
  const bool is_pan = id.starts_with("pan."), is_tilt = id.starts_with("tilt.");
  if (!is_pan && !is_tilt) return std::string(label);
  return (is_pan ? words("Pan: ") : words("Tilt: ")) + in_sentence(label);
}

/// Empty where no design has the figure.
std::optional<CompareRow> figure_row(const Designs& designs, const std::string& id,
                                     std::optional<Better> better) {
  CompareRow row;
  row.id = id;
  for (const Analysis* design : designs) {
    const Figure* figure = design == nullptr ? nullptr : design->figure(id);
    CompareCell& cell = row.cells.emplace_back();
    if (figure == nullptr) {
      cell.word = kNotYet;
      continue;
    }
    row.label = axis_label(id, figure->info->label);
    row.si_unit = figure->info->si_unit;
    row.unit = figure->info->unit;
    cell.value = figure->value;
    if (!figure->value) cell.word = figure->because;
  }
  if (row.label.empty()) return std::nullopt;
  mark_differences(row);
  if (better) mark_best(row, *better);
  return row;
}

/// Of no interest for any of them.
bool is_aside(const Designs& designs, std::string_view id) {
  return std::ranges::all_of(designs, [&](const Analysis* design) {
    const Figure* found = design == nullptr ? nullptr : design->figure(id);
    return found == nullptr || found->is_aside;
  });
}

std::vector<CompareRow> main_figures(const Designs& designs) {
  std::vector<CompareRow> rows;
  for (const HeadlineFigure& headline : kHeadlines) {
    for (const Axis axis : kAxes) {
      if (axis == Axis::tilt && !headline.id.starts_with('<')) continue;
      const std::string id = for_axis(headline.id, axis);
      if (is_aside(designs, id)) continue;
      if (auto row = figure_row(designs, id, headline.better)) rows.push_back(std::move(*row));
    }
  }
  return rows;
}

std::optional<Better> better_of(std::string_view id) {
  for (const HeadlineFigure& headline : kHeadlines)
    for (const Axis axis : kAxes)
      if (for_axis(headline.id, axis) == id) return headline.better;
  return std::nullopt;
}

std::vector<CompareRow> all_figures(const Designs& designs) {
  std::vector<CompareRow> rows;
  for (const Figure& figure : designs.front()->figures) {
    if (is_aside(designs, figure.id)) continue;
    if (auto row = figure_row(designs, figure.id, better_of(figure.id)))
      rows.push_back(std::move(*row));
  }
  return rows;
}

/// Exchanged gearboxes are looked at for the present design only.
bool is_compared(const Finding& finding) { return finding.id != "gearboxes.swap"; }

std::string title_of(const Finding& finding) {
  if (!finding.axis) return finding.what;
  return (*finding.axis == Axis::pan ? words("Pan: ") : words("Tilt: ")) +
         in_sentence(finding.what);
}

CompareRow count_row(const Designs& designs, Verdict verdict) {
  CompareRow row;
  row.id = std::string("findings.") + name_of(verdict);
  row.label = words("Findings: %1", words(name_of(verdict)));
  row.si_unit = row.unit = "1";
  for (const Analysis* design : designs) {
    CompareCell& cell = row.cells.emplace_back();
    if (design == nullptr)
      cell.word = kNotYet;
    else
      cell.value =
          static_cast<double>(std::ranges::count_if(design->findings, [&](const Finding& f) {
            return f.verdict == verdict && is_compared(f);
          }));
  }
  mark_differences(row);
  if (verdict != Verdict::holds) mark_best(row, Better::lower);
  return row;
}

CompareRow worst_margin_row(const Designs& designs) {
  CompareRow row;
  row.id = "findings.worst_margin";
  row.label = words("Worst margin");
  row.si_unit = "1";
  row.unit = "%";
  for (const Analysis* design : designs) {
    CompareCell& cell = row.cells.emplace_back();
    if (design == nullptr) cell.word = kNotYet;
    if (design == nullptr) continue;
    for (const Finding& finding : design->findings) {
      if (!finding.margin || !is_compared(finding)) continue;
      if (cell.value && *finding.margin >= *cell.value) continue;
      cell.value = finding.margin;
      cell.word = title_of(finding);
    }
  }
  mark_differences(row);
  mark_best(row, Better::higher);
  return row;
}

const Finding* find(const Analysis& analysis, const Finding& like) {
  const auto at = std::ranges::find_if(analysis.findings, [&](const Finding& finding) {
    return finding.id == like.id && finding.axis == like.axis;
  });
  return at == analysis.findings.end() ? nullptr : &*at;
}

/// The margins of a finding with their verdicts; empty where all verdicts are the same.
std::optional<CompareRow> verdict_row(const Designs& designs, const Finding& like) {
  CompareRow row;
  row.id = like.id;
  row.label = title_of(like);
  row.si_unit = "1";
  row.unit = "%";
  bool is_one = true;
  std::optional<std::string> first;
  for (const Analysis* design : designs) {
    CompareCell& cell = row.cells.emplace_back();
    const Finding* finding = design == nullptr ? nullptr : find(*design, like);
    cell.word = design == nullptr    ? kNotYet
                : finding == nullptr ? words("not asked")
                                     : name_of(finding->verdict);
    if (finding != nullptr) cell.value = finding->margin;
    if (design == nullptr) continue;
    is_one = is_one && first.value_or(cell.word) == cell.word;
    first = cell.word;
  }
  if (is_one) return std::nullopt;
  for (CompareCell& cell : row.cells)
    cell.differs = cell.word != kNotYet && cell.word != row.cells.front().word;
  mark_best(row, Better::higher);
  return row;
}

std::vector<CompareRow> finding_rows(const Designs& designs) {
  std::vector<CompareRow> rows;
  for (const Verdict verdict : {Verdict::fails, Verdict::tight, Verdict::unknown, Verdict::holds})
    rows.push_back(count_row(designs, verdict));
  rows.push_back(worst_margin_row(designs));
  std::vector<const Finding*> seen;
  for (const Analysis* design : designs) {
    if (design == nullptr) continue;
    for (const Finding& finding : design->findings) {
      const bool is_old = std::ranges::any_of(seen, [&](const Finding* other) {
        return other->id == finding.id && other->axis == finding.axis;
      });
      if (is_old || !is_compared(finding)) continue;
      seen.push_back(&finding);
      if (auto row = verdict_row(designs, finding)) rows.push_back(std::move(*row));
    }
  }
  return rows;
}

}  // namespace

std::span<const HeadlineFigure> headline_figures() { return kHeadlines; }

std::string_view unit_of_difference(std::string_view unit) { return unit == "degC" ? "K" : unit; }

std::string shown_name(const Rig& rig, std::size_t variant) {
  const std::string& name = rig.variants[variant].name;
  return name.empty() ? words("variant %1", std::to_string(variant + 1)) : name;
}

Comparison compare(const Rig& rig, const Analysis& present,
                   std::span<const Analysis* const> variants, const CompareOptions& options) {
  Comparison comparison;
  comparison.names = {words("present design")};
  Designs designs{&present};
  std::vector<const Rig*> rigs{&rig};
  for (std::size_t i = 0; i < rig.variants.size(); ++i) {
    comparison.names.push_back(shown_name(rig, i));
    rigs.push_back(rig.variants[i].rig.get());
    designs.push_back(i < variants.size() ? variants[i] : nullptr);
  }
  comparison.inputs = differing_inputs(rigs);
  comparison.figures = options.all_figures ? all_figures(designs) : main_figures(designs);
  comparison.findings = finding_rows(designs);
  return comparison;
}

std::vector<Analysis> analyse_variants(const Rig& rig, const std::stop_token& stop) {
  std::vector<Analysis> analyses;
  analyses.reserve(rig.variants.size());
  for (const Variant& variant : rig.variants)
    analyses.push_back(analyse(*variant.rig, {.remedies = false}, stop));
  return analyses;
}

Comparison compare_variants(const Rig& rig, const Analysis& present,
                            const CompareOptions& options) {
  const std::vector<Analysis> analyses = analyse_variants(rig);
  std::vector<const Analysis*> pointers;
  pointers.reserve(analyses.size());
  for (const Analysis& analysis : analyses) pointers.push_back(&analysis);
  return compare(rig, present, pointers, options);
}

}  // namespace gazewright
