#include "app/window/list_rows.h"

#include <QCoreApplication>
#include <QHBoxLayout>
#include <QLabel>
#include <QToolButton>

#include "app/window/document.h"
#include "app/window/widgets.h"

namespace gazewright {
namespace {

QString words(const char* text) { return QCoreApplication::translate("CardLists", text); }

}  // namespace

std::string list_path(const CardList& list, std::size_t index) {
  return std::string(list.key) + "[" + std::to_string(index) + "]";
}

ListHead::ListHead(Document& document, const ListPlace& place)
    : document_(document), place_(place), title_(heading({})) {
  const CardList& list = *place.list;
  setObjectName(QString::fromStdString(list_path(list, place.index)) + QStringLiteral(" head"));
  title_->setWordWrap(true);  // a long name must not widen the card
  auto* away = textButton(tr("Remove"), words(list.remove_help));
  away->setObjectName(QLatin1String(list.button) + QStringLiteral(".remove"));
  auto* line = new QHBoxLayout(this);
  line->setContentsMargins(0, 6, 0, 0);
  line->addWidget(title_, 1);
  line->addWidget(away);
  connect(away, &QToolButton::clicked, this, [this] {
    const Rig& rig = document_.rig();
    document_.edit(tr("remove %1").arg(place_.list->title(rig, place_.index)),
                   place_.list->without(rig, place_.index));
  });
  refresh();
}

void ListHead::refresh() {
  const Rig& rig = document_.rig();
  if (place_.index < place_.list->count(rig))
    title_->setText(place_.list->title(rig, place_.index));
}

ListAdd::ListAdd(Document& document, const CardList& list)
    : document_(document),
      list_(list),
      hint_(quietLabel(*list.hint == 0 ? QString() : words(list.hint))),
      add_(textButton(words(list.add), words(list.add_help))) {
  hint_->setWordWrap(true);
  add_->setObjectName(QLatin1String(list.button) + QStringLiteral(".add"));
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(0, 6, 0, 0);
  layout->addWidget(hint_);
  layout->addWidget(add_, 0, Qt::AlignLeft);
  connect(add_, &QToolButton::clicked, this, [this] {
    const std::string part = list_path(list_, list_.count(document_.rig()));
    document_.edit(words(list_.added), list_.with_new(document_.rig()));
    emit partChosen(QString::fromStdString(part));
  });
  refresh();
}

void ListAdd::refresh() {
  const std::size_t count = list_.count(document_.rig());
  hint_->setVisible(count == 0 && !hint_->text().isEmpty());
  add_->setEnabled(count < list_.most);
}

}  // namespace gazewright
