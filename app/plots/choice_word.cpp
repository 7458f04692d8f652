#include "app/plots/choice_word.h"

#include <iterator>

#include "app/plots/text.h"

namespace gazewright {
namespace {

struct WordRow {
  std::string_view value;
  const char* word;
};
constexpr WordRow kWords[]{
    {"tab", QT_TRANSLATE_NOOP("Plots", "tab and post")},
    {"trailing", QT_TRANSLATE_NOOP("Plots", "loose tabs between")},
    {"window", QT_TRANSLATE_NOOP("Plots", "window")},
    {"unstated", QT_TRANSLATE_NOOP("Plots", "not stated")},
    {"pla", QT_TRANSLATE_NOOP("Plots", "PLA")},
    {"petg", QT_TRANSLATE_NOOP("Plots", "PETG")},
    {"asa", QT_TRANSLATE_NOOP("Plots", "ASA")},
    {"twist", QT_TRANSLATE_NOOP("Plots", "twist along the axis")},
    {"coil", QT_TRANSLATE_NOOP("Plots", "clock spring coil")},
    {"loop", QT_TRANSLATE_NOOP("Plots", "hanging loop")},
    {"slip_ring", QT_TRANSLATE_NOOP("Plots", "slip ring")},
    {"stop", QT_TRANSLATE_NOOP("Plots", "push to a stop")},
    {"flag", QT_TRANSLATE_NOOP("Plots", "pass a flag")},
    {"output", QT_TRANSLATE_NOOP("Plots", "output")},
    {"walk", QT_TRANSLATE_NOOP("Plots", "walks past")},
    {"sine", QT_TRANSLATE_NOOP("Plots", "runs a sine")},
    {"jump", QT_TRANSLATE_NOOP("Plots", "jumps")},
    {"path", QT_TRANSLATE_NOOP("Plots", "follows a path")},
    {"error", QT_TRANSLATE_NOOP("Plots", "error in the picture")},
    {"angle", QT_TRANSLATE_NOOP("Plots", "angle of the target")},
    {"second_encoder", QT_TRANSLATE_NOOP("Plots", "second encoder")},
    {"motor", QT_TRANSLATE_NOOP("Plots", "motor")},
    {"yes", QT_TRANSLATE_NOOP("Plots", "yes")},
    {"no", QT_TRANSLATE_NOOP("Plots", "no")},
    {"none", QT_TRANSLATE_NOOP("Plots", "none")},
    {"pair", QT_TRANSLATE_NOOP("Plots", "two apart")},
    {"single", QT_TRANSLATE_NOOP("Plots", "one alone")},
    {"gearbox", QT_TRANSLATE_NOOP("Plots", "those in the gearbox")},
    {"ball", QT_TRANSLATE_NOOP("Plots", "balls")},
    {"roller", QT_TRANSLATE_NOOP("Plots", "rollers")},
    {"nut", QT_TRANSLATE_NOOP("Plots", "a nut")},
    {"metal", QT_TRANSLATE_NOOP("Plots", "metal")},
    {"insert", QT_TRANSLATE_NOOP("Plots", "a heat-set insert")},
    {"print", QT_TRANSLATE_NOOP("Plots", "the print itself")},
    {"clamp", QT_TRANSLATE_NOOP("Plots", "clamped")},
    {"flat", QT_TRANSLATE_NOOP("Plots", "by a flat")},
    {"key", QT_TRANSLATE_NOOP("Plots", "by a key")},
    {"side", QT_TRANSLATE_NOOP("Plots", "side arm")},
    {"fork", QT_TRANSLATE_NOOP("Plots", "fork of two arms")},
    {"box", QT_TRANSLATE_NOOP("Plots", "hollow")},
    {"bar", QT_TRANSLATE_NOOP("Plots", "full or filled")},
    {"along", QT_TRANSLATE_NOOP("Plots", "along the arm")},
    {"across", QT_TRANSLATE_NOOP("Plots", "across the arm")},
};

}  // namespace

QString choice_word(std::string_view value) {
  for (const WordRow& row : kWords) {
    if (row.value == value) return Plots::tr(row.word);
  }
  return QString::fromUtf8(value.data(), qsizetype(value.size())).replace('_', ' ');
}

}  // namespace gazewright
