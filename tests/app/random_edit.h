#pragma once

#include <cmath>
#include <random>

#include "app/window/edits.h"
#include "core/rig/fields.h"

namespace gazewright::tests {

/// The rig with one field changed at random: a text by a letter, a choice to any option, a quantity
/// up to tenfold either way, or taken away now and then and where it would leave its range.
inline Rig with_random_edit(const Rig& rig, std::mt19937& random) {
  const auto below = [&](std::size_t count) { return random() % count; };
  Rig copy = rig;
  const std::vector<FieldRef> fields = all_fields(copy);
  const FieldRef& field = fields[below(fields.size())];
  const std::string path = path_of(field);
  if (const auto* text = std::get_if<TextRef>(&field))
    return with_text(rig, path, *text->text + static_cast<char>('a' + below(26)));
  if (const auto* choice = std::get_if<ChoiceRef>(&field)) {
    const auto options = choice->info->options;
    return with_choice(rig, path, std::string(options[below(options.size())]));
  }
  const auto& quantity = std::get<QuantityRef>(field);
  const double now = quantity.quantity->si.value_or(1);
  const double value = (std::isfinite(now) ? now : 1) *
                       std::pow(10, std::uniform_real_distribution(-1.0, 1.0)(random));
  if (below(8) == 0 || !range_problem(*quantity.info, value).empty())
    return with_quantity(rig, path, Quantity{});
  return with_value(rig, path, value);
}

}  // namespace gazewright::tests
