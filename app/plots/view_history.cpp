#include "app/plots/view_history.h"

#include <algorithm>

namespace gazewright {
namespace {

bool is_whole(const ViewHistory::View& view) {
  return std::ranges::none_of(view, [](const auto& one) { return one.has_value(); });
}

}  // namespace

void ViewHistory::add(const View& view, bool merges) {
  const Step& present = steps_[at_];
  if (present.view == view || (is_whole(present.view) && is_whole(view))) return;
  const bool replaces = merges && present.merges && at_ > 0;
  steps_.resize(at_ + (replaces ? 0 : 1));
  steps_.push_back({view, merges});
  if (steps_.size() > kMost) steps_.erase(steps_.begin() + 1);
  at_ = steps_.size() - 1;
}

const ViewHistory::View& ViewHistory::goBack() { return steps_[--at_].view; }
const ViewHistory::View& ViewHistory::goForward() { return steps_[++at_].view; }

}  // namespace gazewright
