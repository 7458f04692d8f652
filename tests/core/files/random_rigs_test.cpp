// Seeded random rigs of every size: what is written reads back.
#include <gtest/gtest.h>

#include <cmath>
#include <random>

#include "core/files/rig_file.h"
#include "core/rig/fields.h"
#include "core/units/units.h"
#include "tests/support/tol.h"

namespace gazewright {
namespace {

class RandomRig {
 public:
  explicit RandomRig(unsigned number) : random_(number) {}

  Rig make() {
    Rig rig;
    for (const Axis axis : kAxes) {
      rig.axis(axis).stops.presence = static_cast<Presence>(below(3));
      rig.axis(axis).cable.presence = static_cast<Presence>(below(3));
    }
    rig.on_pan.resize(below(4));
    rig.on_tilt.resize(below(4));
    for (std::vector<Body>* bodies : {&rig.on_pan, &rig.on_tilt})
      for (Body& body : *bodies) body.shape = shape();
    rig.keep_outs.resize(below(3));
    rig.detectors.resize(below(3));
    rig.duty.resize(below(4));
    rig.materials.resize(below(3));
    if (below(2) == 0) {
      for (std::size_t i = 0; i < 2 + below(4); ++i)
        rig.tracking.path.push_back({si_quantity(0.1 + static_cast<double>(i) / 3),
                                     si_quantity(value()), si_quantity(value())});
    }
    for (const FieldRef& field : all_fields(rig))
      std::visit([this](const auto& ref) { fill(ref); }, field);
    drop_what_does_not_fit(rig);
    return rig;
  }
  std::size_t below(std::size_t count) { return random_() % count; }

 private:
  /// An angle of any size up to ten turns.
  double value() { return std::uniform_real_distribution(-62.0, 62.0)(random_); }
  Shape shape() {
    const Shape shapes[]{Ball{}, Shell{}, Tube{}, Box{}, Point{}, Tensor{}};
    return shapes[below(std::size(shapes))];
  }
  /// Over twelve powers of ten within the field's range, every third one missing.
  double value_for(const FieldInfo& info) {
    if (info.may_be_none && below(4) == 0) return kInfinity;
    const double size = std::pow(10, std::uniform_real_distribution(-6.0, 6.0)(random_));
    const double part = std::uniform_real_distribution(0.0, 1.0)(random_);
    const bool is_bounded = std::isfinite(info.least) && std::isfinite(info.most);
    double value = is_bounded                  ? info.least + part * (info.most - info.least)
                   : std::isfinite(info.least) ? info.least + size
                   : part < 0.5                ? size
                                               : -size;
    if (info.whole) value = std::max(std::ceil(info.least), std::floor(value));
    return value;
  }
  void fill(const QuantityRef& ref) {
    if (below(3) == 0) return;
    *ref.quantity = si_quantity(value_for(*ref.info), static_cast<Source>(below(5)));
    if (below(4) == 0 && std::isfinite(*ref.quantity->si))
      ref.quantity->spread_si = std::abs(*ref.quantity->si) * 0.07;
  }
  void fill(const ChoiceRef& ref) {
    if (below(2) == 0) ref.choice->value = ref.info->options[below(ref.info->options.size())];
  }
  void fill(const TextRef& ref) {
    constexpr std::string_view kSigns = "ab :#-{}[],'\"\\\n~|>&*!%@\t.1";
    for (std::size_t i = below(12); i > 0; --i) *ref.text += kSigns[below(kSigns.size())];
  }
  /// What a file refuses though each value alone is allowed.
  static void drop_what_does_not_fit(Rig& rig) {
    for (const Axis axis : kAxes) rig.axis(axis).stops.radius_m = {};
    for (std::vector<Body>* bodies : {&rig.on_pan, &rig.on_tilt})
      for (Body& body : *bodies) {
        if (auto* shell = std::get_if<Shell>(&body.shape)) shell->wall_m = {};
        if (auto* tube = std::get_if<Tube>(&body.shape)) tube->bore_m = {};
        if (auto* tensor = std::get_if<Tensor>(&body.shape)) tensor->element_kgm2[0] = {};
      }
    for (KeepOut& keep_out : rig.keep_outs) {
      keep_out.pan_rad[0] = {};
      keep_out.tilt_rad[1] = {};
    }
  }

  std::mt19937 random_;
};

/// A rig with up to three variants that have nothing to do with it.
Rig with_variants(Rig rig, unsigned number) {
  for (unsigned i = 1; i <= number % 4; ++i) {
    Rig design = RandomRig(1000 * i + number).make();
    const std::string note = design.notes;
    design.title.clear();
    design.notes.clear();
    rig.variants.push_back(
        {"variant: " + std::to_string(i), note, std::make_shared<const Rig>(design)});
  }
  return rig;
}

/// Same fields, same values within what a written number promises.
void expect_same_values(Rig a, Rig b, const std::string& text) {
  const auto a_fields = all_fields(a), b_fields = all_fields(b);
  ASSERT_EQ(a_fields.size(), b_fields.size()) << text;
  for (std::size_t i = 0; i < a_fields.size(); ++i) {
    SCOPED_TRACE(path_of(a_fields[i]));
    ASSERT_EQ(path_of(a_fields[i]), path_of(b_fields[i]));
    if (const auto* choice = std::get_if<ChoiceRef>(&a_fields[i])) {
      EXPECT_EQ(choice->choice->value, std::get<ChoiceRef>(b_fields[i]).choice->value);
    }
    if (const auto* words = std::get_if<TextRef>(&a_fields[i])) {
      EXPECT_EQ(*words->text, *std::get<TextRef>(b_fields[i]).text);
    }
    const auto* ref = std::get_if<QuantityRef>(&a_fields[i]);
    if (ref == nullptr) continue;
    const Quantity &x = *ref->quantity, &y = *std::get<QuantityRef>(b_fields[i]).quantity;
    ASSERT_EQ(x.has_value(), y.has_value()) << text;
    if (!x.has_value()) continue;
    EXPECT_EQ(x.source, y.source);
    if (std::isinf(*x.si)) {
      EXPECT_EQ(*x.si, *y.si);
      continue;
    }
    EXPECT_NEAR(*y.si, *x.si, tol(1e-12 * std::abs(*x.si)));
    EXPECT_NEAR(y.spread_si, x.spread_si, tol(1e-12 * std::abs(*x.si)));
  }
}

Rig read(const std::string& text) {
  const LoadedRig loaded = parse_rig(text, "random.rig.yaml");
  for (const Diagnostic& diagnostic : loaded.diagnostics)
    // Values out of the usual are what it is about, and more of them than are told.
    if (diagnostic.weight == Diagnostic::Weight::error ||
        (diagnostic.problem.find(" is unusual; ") == std::string::npos &&
         !diagnostic.problem.ends_with(" more problems")))
      ADD_FAILURE() << to_text(diagnostic) << "\n" << text;
  return loaded.rig.value_or(Rig{});
}

TEST(RandomRigs, ReadBackAsTheyWereWritten) {
  for (unsigned number = 1; number <= 50; ++number) {
    SCOPED_TRACE(number);
    const Rig rig = with_variants(RandomRig(number).make(), number);
    const std::string text = write_rig(rig);
    const Rig back = read(text);
    expect_same_values(rig, back, text);
    ASSERT_EQ(back.variants.size(), rig.variants.size());
    for (std::size_t i = 0; i < rig.variants.size(); ++i) {
      EXPECT_EQ(back.variants[i].note, rig.variants[i].note);
      expect_same_values(*rig.variants[i].rig, *back.variants[i].rig, text);
    }
    EXPECT_EQ(write_rig(back), text);
    EXPECT_EQ(read(write_rig(back)), back);
    if (::testing::Test::HasFailure()) return;
  }
}

TEST(RandomRigs, KeepTheRestOfTheTextWhenOneEntryChanges) {
  int in_place = 0;
  for (unsigned number = 1; number <= 50; ++number) {
    SCOPED_TRACE(number);
    RandomRig random(number);
    const std::string text =
        "# a remark that stays\n" + write_rig(with_variants(random.make(), number));
    Rig rig = read(text);
    std::vector<FieldRef> given;
    for (const FieldRef& field : all_fields(rig))
      if (const auto* ref = std::get_if<QuantityRef>(&field);
          ref != nullptr && ref->quantity->has_value())
        given.push_back(field);
    ASSERT_FALSE(given.empty());
    const auto& ref = std::get<QuantityRef>(given[random.below(given.size())]);
    const double most = std::isfinite(ref.info->most) ? ref.info->most : 12345;
    const auto changed =
        read_quantity(written_quantity(most, *ref.info, ref.info->unit), *ref.info);
    ref.quantity->si = std::get<Quantity>(changed).si;
    ref.quantity->written = std::get<Quantity>(changed).written;
    ref.quantity->spread_si = 0;
    ref.quantity->spread_written.clear();
    const std::string edited = write_rig(rig, text);
    EXPECT_EQ(read(edited), rig) << ref.path << "\n" << edited;
    in_place += edited.starts_with("# a remark that stays\n") ? 1 : 0;
  }
  // Only taking a spread away from a map lays the file out anew: about a quarter of the entries
  // have one.
  EXPECT_GT(in_place, 33);
}

}  // namespace
}  // namespace gazewright
