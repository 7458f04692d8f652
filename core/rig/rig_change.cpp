#include "core/rig/rig_change.h"

#include "core/rig/fields.h"

namespace gazewright {
namespace {

/// What a field holds; the variants go in the order of FieldRef.
template <class Value>
Value value_of(const FieldRef& field) {
  if (const auto* quantity = std::get_if<QuantityRef>(&field)) return *quantity->quantity;
  if (const auto* choice = std::get_if<ChoiceRef>(&field)) return *choice->choice;
  return *std::get<TextRef>(field).text;
}

template <class Value>
void put(const FieldRef& field, const Value& value) {
  if (const auto* quantity = std::get_if<QuantityRef>(&field))
    *quantity->quantity = std::get<Quantity>(value);
  else if (const auto* choice = std::get_if<ChoiceRef>(&field))
    *choice->choice = std::get<Choice>(value);
  else
    *std::get<TextRef>(field).text = std::get<std::string>(value);
}

}  // namespace

RigChange::RigChange(const Rig& before, const Rig& after) {
  Rig from = before, to = after;
  const std::vector<FieldRef> old_fields = all_fields(from), new_fields = all_fields(to);
  if (old_fields.size() == new_fields.size()) {
    for (std::size_t i = 0; i < old_fields.size(); ++i) {
      Value was = value_of<Value>(old_fields[i]), is = value_of<Value>(new_fields[i]);
      if (was != is) fields_.push_back({path_of(new_fields[i]), std::move(was), std::move(is)});
    }
    if (redone(before) == after && undone(after) == before) return;
  }
  fields_.clear();
  whole_ = std::make_unique<const std::pair<Rig, Rig>>(before, after);
}

Rig RigChange::redone(Rig before) const {
  return whole_ ? whole_->second : with(std::move(before), fields_, &FieldChange::after);
}

Rig RigChange::undone(Rig after) const {
  return whole_ ? whole_->first : with(std::move(after), fields_, &FieldChange::before);
}

Rig RigChange::with(Rig rig, const std::vector<FieldChange>& fields, Value FieldChange::*side) {
  auto change = fields.begin();
  for (const FieldRef& field : all_fields(rig)) {
    if (change == fields.end()) break;
    if (path_of(field) != change->path) continue;
    put(field, (*change).*side);
    ++change;
  }
  return rig;
}

}  // namespace gazewright
