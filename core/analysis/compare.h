#pragma once

#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "core/analysis/analysis.h"

/// The present design and its variants side by side. Window, sheet and batch show a Comparison.
namespace gazewright {

struct CompareCell {
  std::optional<double> value;  ///< SI; infinite: none
  std::string word;  ///< of a choice or text; of a finding its verdict, or which it is; of an empty
                     ///< value the reason
  bool differs = false;  ///< from the present design
  bool is_best = false;  ///< of all that are known, where they are not all the same
};
struct CompareRow {
  std::string id;     ///< "pan.gearbox.ratio", "pan.step.settle_time", "findings.fails"; bodies and
                      ///< other parts with a name by it: "on_tilt[camera].mass"
  std::string label;  ///< "Pan gearbox: ratio"
  std::string_view si_unit, unit;  ///< empty: words
  std::vector<CompareCell> cells;  ///< the present design, then each variant

  bool is_words() const { return unit.empty(); }
};
struct Comparison {
  std::vector<std::string> names;    ///< of the designs, in the order of the cells
  std::vector<CompareRow> inputs;    ///< only those that differ
  std::vector<CompareRow> figures;   ///< the main ones, or all
  std::vector<CompareRow> findings;  ///< how many of each verdict, the worst margin, and those
                                     ///< whose verdict differs
};

struct CompareOptions {
  bool all_figures = false;
};

/// @param present   of the rig as it is now
/// @param variants  of rig.variants in turn; null: not worked out yet, its cells say so
Comparison compare(const Rig& rig, const Analysis& present,
                   std::span<const Analysis* const> variants, const CompareOptions& options = {});

/// What compare() needs of the variants, which have no remedies and no swap.
std::vector<Analysis> analyse_variants(const Rig& rig, const std::stop_token& stop = {});
/// Analyses them and compares.
Comparison compare_variants(const Rig& rig, const Analysis& present,
                            const CompareOptions& options = {});

/// The unit of a difference: kelvin between temperatures.
std::string_view unit_of_difference(std::string_view unit);
/// The variant's name, or "variant 3" where it has none.
std::string shown_name(const Rig& rig, std::size_t variant);

/// The figures that are compared in any case, and which way each is better.
struct HeadlineFigure {
  std::string_view id;  ///< with <axis>
  enum class Better { lower, higher, neither } better = Better::lower;
};
std::span<const HeadlineFigure> headline_figures();

/// The inputs that differ; used by compare() only.
std::vector<CompareRow> differing_inputs(std::span<const Rig* const> designs);

}  // namespace gazewright
