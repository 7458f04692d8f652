#pragma once

#include <atomic>
#include <forward_list>
#include <mutex>
#include <vector>

#include "core/data/data_library.h"

namespace gazewright {

/// What a subject makes of the tables in force, made when first asked for and kept, so that a
/// look-up costs nothing. Made anew after use_own_data; what was handed out before stays valid.
/// Thread-safe.
template <class T>
class Prepared {
 public:
  using Make = T (*)();
  explicit Prepared(Make make) : make_(make) {}

  const T& get() {
    const void* in_force = data_in_force();
    const Made* made = made_.load(std::memory_order_acquire);
    return made != nullptr && made->of == in_force ? made->value : make_for(in_force);
  }

 private:
  struct Made {
    const void* of;
    T value;
  };

  const T& make_for(const void* in_force) {
    const std::lock_guard lock(mutex_);
    const Made* made = made_.load(std::memory_order_relaxed);
    if (made != nullptr && made->of == in_force) return made->value;
    kept_.push_front(Made{in_force, make_()});
    made_.store(&kept_.front(), std::memory_order_release);
    return kept_.front().value;
  }

  Make make_;
  std::mutex mutex_;
  std::forward_list<Made> kept_;
  std::atomic<const Made*> made_ = nullptr;
};

/// Every row of a data file as a value of its own type; `of` makes one.
template <class Row>
std::vector<Row> rows_of(std::string_view file, Row (*of)(const DataRow&)) {
  std::vector<Row> rows;
  const DataTable& table = data_table(file);
  rows.reserve(table.rows.size());
  for (const DataRow& row : table.rows) rows.push_back(of(row));
  return rows;
}

}  // namespace gazewright
