#include "app/window/duty_rows.h"

#include <QCoreApplication>
#include <QHBoxLayout>
#include <QLabel>
#include <QToolButton>
#include <charconv>

#include "app/window/document.h"
#include "app/window/edits.h"
#include "app/window/widgets.h"

namespace gazewright {
namespace {

QString tr(const char* text) { return QCoreApplication::translate("Duty", text); }

}  // namespace

std::optional<std::size_t> duty_index(std::string_view path) {
  constexpr std::string_view kStart = "duty[";
  if (!path.starts_with(kStart)) return {};
  std::size_t index = 0;
  const char *from = path.data() + kStart.size(), *end = path.data() + path.size();
  const auto [at, fault] = std::from_chars(from, end, index);
  return fault == std::errc() && at != end && *at == ']' ? std::optional(index) : std::nullopt;
}

QString duty_move_title(std::size_t index) { return tr("Move %1 of the duty").arg(index + 1); }

DutyHead::DutyHead(Document& document, std::size_t index) {
  setObjectName(QStringLiteral("duty[%1] head").arg(index));
  auto* away = textButton(tr("Remove"), tr("Take this move away; undo brings it back"));
  away->setObjectName(QStringLiteral("duty.remove %1").arg(index));
  auto* line = new QHBoxLayout(this);
  line->setContentsMargins(0, 6, 0, 0);
  line->addWidget(heading(duty_move_title(index)), 1);
  line->addWidget(away);
  connect(away, &QToolButton::clicked, this, [&document, index] {
    document.edit(tr("remove a move of the duty"), with_duty_move_removed(document.rig(), index));
  });
}

DutyAdd::DutyAdd(Document& document) : document_(document) {
  hint_ = quietLabel(
      tr("Without a list of moves, the task's move is made to and fro at the pace above. A list is "
         "repeated without end: go to these angles, rest there, go on. Motors are warmed by it."));
  hint_->setWordWrap(true);
  add_ =
      textButton(tr("Add a move to the duty"), tr("Another pair of angles to go to, with a rest"));
  add_->setObjectName(QStringLiteral("duty.add"));
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(0, 6, 0, 0);
  layout->addWidget(hint_);
  layout->addWidget(add_, 0, Qt::AlignLeft);
  connect(add_, &QToolButton::clicked, this, [this] {
    document_.edit(tr("add a move to the duty"), with_new_duty_move(document_.rig()));
  });
  refresh();
}

void DutyAdd::refresh() {
  hint_->setVisible(document_.rig().duty.empty());
  add_->setEnabled(document_.rig().duty.size() < kMostDutyMoves);
}

}  // namespace gazewright
