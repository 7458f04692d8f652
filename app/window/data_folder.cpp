#include "app/window/data_folder.h"

#include <QCoreApplication>
#include <QDesktopServices>
#include <QDir>
#include <QFileInfo>
#include <QUrl>
#include <cstdio>

#include "app/window/message_bar.h"
#include "core/data/data_library.h"

namespace gazewright {
namespace {

QString tr(const char* text) { return QCoreApplication::translate("DataFolder", text); }

constexpr std::string_view kExample =
    R"(# Materials of your own, for every rig. Take the # away before the lines that you want, put your
# values in and start Gazewright again. Handbook: data.
#
# Every value needs a unit and a source; `spread` is half of the range that parts are found in. A row
# with the name of a built-in one changes the values that it states and keeps the others.

#my petg:
#  modulus:        {value: 2.1 GPa, spread: 0.2 GPa, source: "three bars bent over a table's edge"}
#  strength:       {value: 38 MPa, spread: 4 MPa, source: "five bars pulled, along the layers"}
#  layer_strength: {value: 19 MPa, spread: 5 MPa, source: "five bars pulled, across the layers"}
#  softening:      {value: 72 degC, spread: 3 K, source: "bar with a weight in the oven"}
#  density:        {value: 1.27 g/cm3, source: "kitchen scale and ruler"}

#pla:
#  softening:      {value: 52 degC, spread: 2 K, source: "my oven"}

# Other files of this folder: threads.yaml (diameter, pitch, head_mean), screws.yaml (proof, tensile),
# insulation.yaml (limit), for instance in threads.yaml
#
#M10:
#  diameter:  {value: 10 mm, source: "ISO 261"}
#  pitch:     {value: 1.5 mm, source: "ISO 261, coarse"}
#  head_mean: {value: 13.6 mm, source: "measured"}
)";

/// Says why not.
bool make_folder(const QString& folder, MessageBar& messages) {
  if (folder.isEmpty()) {
    messages.showFault(
        tr("There is no home folder for it; set XDG_DATA_HOME to a folder of yours"));
    return false;
  }
  if (QDir(folder).mkpath(QStringLiteral("."))) return true;
  messages.showFault(tr("%1 cannot be made; check the rights of the folder above it").arg(folder));
  return false;
}

}  // namespace

std::vector<Diagnostic> take_own_data(const QString& folder) {
  const OwnData own = load_own_data(folder.toStdString());
  use_own_data(own);
  for (const Diagnostic& fault : own.faults) std::fprintf(stderr, "%s\n", to_text(fault).c_str());
  return own.faults;
}

void tell_own_data(MessageBar& messages, const std::vector<Diagnostic>& faults) {
  if (faults.empty()) return;
  const QString before = messages.text();
  const QString heading = tr("Your own data files have faults; the rest of them is used");
  messages.showProblems(before.isEmpty() ? heading : before + '\n' + heading, faults);
}

void open_shelf_folder(const QString& folder, MessageBar& messages) {
  if (!make_folder(folder, messages)) return;
  const bool shown = QDesktopServices::openUrl(QUrl::fromLocalFile(folder));
  messages.showNotice(
      (shown ? tr("Your parts are in %1") : tr("Your parts are in %1; open it in a file manager"))
          .arg(folder));
}

void open_data_folder(const QString& folder, MessageBar& messages) {
  if (!make_folder(folder, messages)) return;
  const QDir dir(folder);
  if (dir.entryList({QStringLiteral("*.yaml")}, QDir::Files).isEmpty()) {
    const std::string example = dir.filePath(QStringLiteral("materials.yaml")).toStdString();
    if (const auto fault = save_text(example, kExample)) {
      messages.showProblems(tr("The example cannot be written"), {*fault});
      return;
    }
  }
  const bool shown = QDesktopServices::openUrl(QUrl::fromLocalFile(folder));
  messages.showNotice((shown ? tr("Your data files are in %1; changes count from the next start")
                             : tr("Your data files are in %1; open it in a file manager. Changes "
                                  "count from the next start"))
                          .arg(folder));
}

}  // namespace gazewright
