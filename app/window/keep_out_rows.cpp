#include "app/window/keep_out_rows.h"

#include <QCoreApplication>
#include <QHBoxLayout>
#include <QLabel>
#include <QToolButton>
#include <algorithm>

#include "app/window/document.h"
#include "app/window/edits.h"
#include "app/window/quantity_text.h"
#include "app/window/widgets.h"
#include "core/rig/fields.h"
#include "core/rig/keep_outs.h"

namespace gazewright {
namespace {

QString tr(const char* text) { return QCoreApplication::translate("KeepOuts", text); }

}  // namespace

std::string keep_out_path(std::size_t index) {
  return std::string(kKeepOutsCard) + "[" + std::to_string(index) + "]";
}

QString keep_out_title(const Rig& rig, std::size_t index) {
  const std::string& name = rig.keep_outs[index].name;
  return name.empty() ? tr("Keep-out %1").arg(index + 1) : QString::fromStdString(name);
}

QString keep_out_problem(const Rig& rig, const std::string& path) {
  for (std::size_t i = 0; i < rig.keep_outs.size(); ++i) {
    const KeepOut& keep_out = rig.keep_outs[i];
    for (const auto& [key, ends] :
         {std::pair{".pan[", &keep_out.pan_rad}, {".tilt[", &keep_out.tilt_rad}}) {
      if (!path.starts_with(keep_out_path(i) + key) || !is_backwards(*ends)) continue;
      const FieldInfo& info = keep_out_pan_info();
      return tr("It would end at %1, below where it begins, %2. Enter the lower angle as “from”.")
          .arg(shown_quantity((*ends)[1], info), shown_quantity((*ends)[0], info));
    }
  }
  return {};
}

KeepOutHead::KeepOutHead(Document& document, std::size_t index)
    : document_(document), index_(index) {
  setObjectName(QString::fromStdString(keep_out_path(index)) + QStringLiteral(" head"));
  title_ = heading({});
  auto* away = textButton(tr("Remove"), tr("Take this keep-out away; undo brings it back"));
  away->setObjectName(QStringLiteral("keep_out.remove"));
  auto* line = new QHBoxLayout(this);
  line->setContentsMargins(0, 6, 0, 0);
  line->addWidget(title_, 1);
  line->addWidget(away);
  connect(away, &QToolButton::clicked, this, [this] {
    const Rig& rig = document_.rig();
    document_.edit(tr("remove %1").arg(keep_out_title(rig, index_)),
                   with_keep_out_removed(rig, index_));
  });
  refresh();
}

void KeepOutHead::refresh() {
  if (index_ < document_.rig().keep_outs.size()) {
    title_->setText(keep_out_title(document_.rig(), index_));
  }
}

KeepOutAdd::KeepOutAdd(Document& document) : document_(document) {
  hint_ = quietLabel(
      tr("A keep-out is a window of pan by tilt that the camera must stay out of: a lamp that "
         "blinds it, a wall it would meet. The reach map shows it, and the task's move is held "
         "against it."));
  hint_->setWordWrap(true);
  add_ = textButton(tr("Add a keep-out"), tr("Add a window of 30° by 30° to start from"));
  add_->setObjectName(QStringLiteral("keep_out.add"));
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(0, 6, 0, 0);
  layout->addWidget(hint_);
  layout->addWidget(add_, 0, Qt::AlignLeft);
  connect(add_, &QToolButton::clicked, this, [this] {
    const QString part = QString::fromStdString(keep_out_path(document_.rig().keep_outs.size()));
    document_.edit(tr("add a keep-out"), with_new_keep_out(document_.rig()));
    emit partChosen(part);
  });
  refresh();
}

void KeepOutAdd::refresh() {
  hint_->setVisible(document_.rig().keep_outs.empty());
  add_->setEnabled(document_.rig().keep_outs.size() < kMostKeepOuts);
}

}  // namespace gazewright
