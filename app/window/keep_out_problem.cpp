#include "app/window/keep_out_problem.h"

#include <QCoreApplication>

#include "app/window/list_rows.h"
#include "app/window/quantity_text.h"
#include "core/rig/fields.h"
#include "core/rig/keep_outs.h"

namespace gazewright {

QString keep_out_problem(const Rig& rig, const std::string& path) {
  const CardList& list = card_list("keep_outs");
  for (std::size_t i = 0; i < rig.keep_outs.size(); ++i) {
    const KeepOut& keep_out = rig.keep_outs[i];
    for (const auto& [key, ends] :
         {std::pair{".pan[", &keep_out.pan_rad}, {".tilt[", &keep_out.tilt_rad}}) {
      if (!path.starts_with(list_path(list, i) + key) || !is_backwards(*ends)) continue;
      const FieldInfo& info = keep_out_pan_info();
      return QCoreApplication::translate(
                 "KeepOuts",
                 "It would end at %1, below where it begins, %2. Enter the lower angle as “from”.")
          .arg(shown_quantity((*ends)[1], info), shown_quantity((*ends)[0], info));
    }
  }
  return {};
}

}  // namespace gazewright
