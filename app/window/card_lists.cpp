#include <QCoreApplication>
#include <algorithm>
#include <charconv>

#include "app/window/edits.h"
#include "app/window/list_rows.h"
#include "app/window/parts.h"
#include "core/files/rig_file.h"
#include "core/rig/keep_outs.h"

/// The lists that stand on cards.
namespace gazewright {
namespace {

QString tr(const char* text) { return QCoreApplication::translate("CardLists", text); }
QString utf8(const std::string& text) { return QString::fromStdString(text); }

constexpr CardList kLists[]{
    {"keep_outs", kKeepOutsCard, "keep_out", QT_TRANSLATE_NOOP("CardLists", "Add a keep-out"),
     QT_TRANSLATE_NOOP("CardLists", "Add a window of 30° by 30° to start from"),
     QT_TRANSLATE_NOOP("CardLists", "add a keep-out"),
     QT_TRANSLATE_NOOP("CardLists", "Take this keep-out away; undo brings it back"),
     QT_TRANSLATE_NOOP(
         "CardLists",
         "A keep-out is a window of pan by tilt that the camera must stay out of: a lamp that "
         "blinds it, a wall it would meet. The reach map shows it, and the task's move is held "
         "against it."),
     kMostKeepOuts, [](const Rig& rig) { return rig.keep_outs.size(); },
     [](const Rig& rig, std::size_t index) {
       const std::string& name = rig.keep_outs[index].name;
       return name.empty() ? tr("Keep-out %1").arg(index + 1) : utf8(name);
     },
     with_new_keep_out, with_keep_out_removed},
    {"detectors", "tracking", "detector", QT_TRANSLATE_NOOP("CardLists", "Add a detector"),
     QT_TRANSLATE_NOOP("CardLists", "Another way of finding the target, to compare"),
     QT_TRANSLATE_NOOP("CardLists", "add a detector"),
     QT_TRANSLATE_NOOP("CardLists", "Take this detector away; undo brings it back"), "",
     kMostDetectors, [](const Rig& rig) { return rig.detectors.size(); },
     [](const Rig&, std::size_t index) { return tr("Detector %1").arg(index + 1); },
     with_new_detector, with_detector_removed},
    {"duty", "task", "duty", QT_TRANSLATE_NOOP("CardLists", "Add a move to the duty"),
     QT_TRANSLATE_NOOP("CardLists", "Another pair of angles to go to, with a rest"),
     QT_TRANSLATE_NOOP("CardLists", "add a move to the duty"),
     QT_TRANSLATE_NOOP("CardLists", "Take this move away; undo brings it back"),
     QT_TRANSLATE_NOOP(
         "CardLists",
         "Without a list of moves, the task's move is made to and fro at the pace above. A list is "
         "repeated without end: go to these angles, rest there, go on. Motors are warmed by it."),
     kMostDutyMoves, [](const Rig& rig) { return rig.duty.size(); },
     [](const Rig&, std::size_t index) { return tr("Move %1 of the duty").arg(index + 1); },
     with_new_duty_move, with_duty_move_removed},
    {"materials", "stand", "material", QT_TRANSLATE_NOOP("CardLists", "Add a material"),
     QT_TRANSLATE_NOOP("CardLists",
                       "A material of the rig's own, to start with the values of the arm's"),
     QT_TRANSLATE_NOOP("CardLists", "add a material"),
     QT_TRANSLATE_NOOP("CardLists", "Take this material away; undo brings it back"), "",
     kMostMaterials, [](const Rig& rig) { return rig.materials.size(); },
     [](const Rig& rig, std::size_t index) {
       const std::string& name = rig.materials[index].name;
       return name.empty() ? tr("Material %1").arg(index + 1) : tr("Material: %1").arg(utf8(name));
     },
     with_new_material, with_material_removed}};

}  // namespace

std::span<const CardList> card_lists() { return kLists; }

const CardList* list_on(std::string_view card) {
  const auto* list =
      std::ranges::find_if(kLists, [&](const CardList& each) { return card == each.card; });
  return list == std::end(kLists) ? nullptr : list;
}

const CardList& card_list(std::string_view key) {
  return *std::ranges::find(kLists, key, &CardList::key);
}

std::optional<ListPlace> list_place(std::string_view path) {
  const std::size_t open = path.find('[');
  if (open == std::string_view::npos) return std::nullopt;
  const auto* list = std::ranges::find(kLists, path.substr(0, open), &CardList::key);
  if (list == std::end(kLists)) return std::nullopt;
  ListPlace place{list, 0};
  const char *from = path.data() + open + 1, *end = path.data() + path.size();
  const auto [at, fault] = std::from_chars(from, end, place.index);
  return fault == std::errc() && at != end && *at == ']' ? std::optional(place) : std::nullopt;
}

}  // namespace gazewright
