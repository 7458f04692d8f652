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
};

}  // namespace

QString choice_word(std::string_view value) {
  for (const WordRow& row : kWords) {
    if (row.value == value) return Plots::tr(row.word);
  }
  return QString::fromUtf8(value.data(), qsizetype(value.size())).replace('_', ' ');
}

}  // namespace gazewright
