#include <QLineEdit>
#include <QScrollArea>
#include <QToolButton>
#include <QVBoxLayout>
#include <algorithm>

#include "app/plots/text.h"
#include "app/window/advice_row.h"
#include "app/window/card.h"
#include "app/window/choice_rows.h"
#include "app/window/document.h"
#include "app/window/field_label.h"
#include "app/window/parts.h"
#include "app/window/quantity_field.h"
#include "app/window/shelf_note.h"
#include "app/window/widgets.h"

/// The rows of a card in their groups: which there are, which are shown, which are folded away.
namespace gazewright {
namespace {

/// Groups in their order, choices before the numbers that depend on them.
int order_of(const FieldRef& field) {
  return 2 * group_of(path_of(field)).rank + (std::holds_alternative<QuantityRef>(field) ? 1 : 0);
}

bool is_given(const FieldRef& field) {
  if (const auto* ref = std::get_if<QuantityRef>(&field)) return ref->quantity->has_value();
  if (const auto* ref = std::get_if<ChoiceRef>(&field)) return !ref->choice->value.empty();
  return !std::get<TextRef>(field).text->empty();
}

std::string row_name(const std::string& path) { return path + " row"; }

}  // namespace

void Card::addSection(QVBoxLayout* rows, const QString& title, const std::string& prefix) {
  Rig rig = document_.rig();
  const QString part = mid_sentence(part_title(rig, part_));
  std::vector<FieldRef> fields = fields_under(rig, prefix);
  std::ranges::stable_sort(fields, {}, order_of);
  groups_.emplace_back();
  if (!title.isEmpty()) {
    groups_.back().heading = heading(title);
    rows->addWidget(groups_.back().heading);
  }
  if (prefix.ends_with(".loop")) addRow(rows, new AdviceRow(document_, *axis_of_part(prefix)));
  int rank = 0;
  for (const FieldRef& field : fields) {
    const FieldGroup group = group_of(path_of(field));
    if (group.rank != rank) addGroupHeading(rows, QString::fromStdString(prefix), group);
    rank = group.rank;
    CardRow* row = makeRow(field, part);
    addRow(rows, row);
    groups_.back().rows.emplace_back(row, path_of(field));
    if (const auto kind = part_kind(prefix); kind && path_of(field) == prefix + ".name")
      addRow(rows, new ShelfNote(document_, *axis_of_part(prefix), *kind, shelf_));
    if (groups_.back().fold && is_given(field)) open_.try_emplace(groups_.back().key, true);
  }
}

CardRow* Card::makeRow(const FieldRef& field, const QString& part) {
  CardRow* row = nullptr;
  if (const auto* text = std::get_if<TextRef>(&field)) {
    row = new TextField(document_, text->path, *text->info, part);
  } else if (const auto* choice = std::get_if<ChoiceRef>(&field)) {
    row = new ChoiceField(document_, choice->path, *choice->info, part);
  } else {
    const auto& ref = std::get<QuantityRef>(field);
    row = new QuantityField(document_, ref.path, *ref.info, field_label(ref), part);
  }
  row->setObjectName(QString::fromStdString(row_name(path_of(field))));
  return row;
}

void Card::addGroupHeading(QVBoxLayout* rows, const QString& prefix, const FieldGroup& group) {
  Group made;
  if (group.folds) {
    made.fold = elidedButton({}, tr("Show or hide these fields"));
    made.fold->setObjectName(group.heading);
    made.fold->setMinimumWidth(1);  // a long heading must not widen the card
    setKind(made.fold, "fold");
    made.key = prefix + QChar(' ') + group.heading;
    connect(made.fold, &QToolButton::clicked, this, [this, key = made.key] {
      open_[key] = !open_[key];
      showRows();
    });
    made.heading = made.fold;
    rows->addWidget(made.fold, 0, Qt::AlignLeft);
  } else {
    made.heading = heading(group.heading);
    rows->addWidget(made.heading);
  }
  groups_.push_back(std::move(made));
}

void Card::showRows() {
  for (const Group& group : groups_) {
    const bool open = !group.fold || open_[group.key];
    bool any = group.rows.empty();
    for (const auto& [row, path] : group.rows) {
      const bool applies = field_applies(document_.rig(), path);
      any = any || applies;
      row->setVisible(applies && open);
    }
    if (group.heading) group.heading->setVisible(any);
    if (!group.fold) continue;
    group.fold->setText((open ? QStringLiteral("▾ ") : QStringLiteral("▸ ")) +
                        group.fold->objectName());
  }
}

void Card::unfold(const QString& part) {
  const CardRow* wanted = rowOf(part.toStdString());
  for (const Group& group : groups_) {
    if (!group.fold || open_[group.key]) continue;
    for (const auto& [row, path] : group.rows) {
      if (row == wanted) open_[group.key] = true;
    }
  }
  showRows();
}

/// Of a list or a whole part, the first that shows something of it.
CardRow* Card::rowOf(const std::string& path) const {
  const auto named = [&](auto fits) {
    const auto at = std::ranges::find_if(
        rows_, [&](const CardRow* row) { return fits(row->objectName().toStdString()); });
    return at == rows_.end() ? nullptr : *at;
  };
  if (CardRow* row = named([&](const std::string& name) { return name == row_name(path); }))
    return row;
  return named([&](const std::string& name) {
    return name.starts_with(path + '[') || name.starts_with(path + '.');
  });
}

void Card::focusField(const std::string& path) {
  CardRow* row = rowOf(path);
  if (!row) return;
  const auto controls = row->findChildren<QWidget*>();
  const auto control = std::ranges::find_if(
      controls, [](const QWidget* each) { return each->focusPolicy() & Qt::TabFocus; });
  if (control == controls.end()) return;
  (*control)->setFocus(Qt::OtherFocusReason);
  if (auto* edit = qobject_cast<QLineEdit*>(*control)) edit->selectAll();
  scroll_->ensureWidgetVisible(row);
}

void Card::typeInto(const QString& text) {
  if (auto* edit = qobject_cast<QLineEdit*>(window()->focusWidget())) {
    edit->selectAll();
    edit->insert(text);
    edit->setModified(true);
  }
}

}  // namespace gazewright
