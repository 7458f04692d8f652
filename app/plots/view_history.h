#pragma once

#include <cstddef>
#include <optional>
#include <utility>
#include <vector>

#include "app/plots/chart.h"

namespace gazewright {

/// The views that a user chose, for going back and forward. It begins with the whole view.
class ViewHistory {
 public:
  using One = std::optional<std::pair<Range, Range>>;  ///< x and y; empty: the whole view
  using View = std::vector<One>;                       ///< of each chart of a plot

  /// What lay ahead is forgotten. `merges`: takes the place of the last one, where that merged
  /// too, so that turning the wheel on is one step. Nothing happens where it is the present one.
  void add(const View& view, bool merges = false);
  bool canGoBack() const { return at_ > 0; }
  bool canGoForward() const { return at_ + 1 < steps_.size(); }
  const View& goBack();     ///< @pre canGoBack()
  const View& goForward();  ///< @pre canGoForward()

 private:
  struct Step {
    View view;
    bool merges = false;
  };
  static constexpr std::size_t kMost = 100;
  std::vector<Step> steps_{Step{}};
  std::size_t at_ = 0;
};

}  // namespace gazewright
