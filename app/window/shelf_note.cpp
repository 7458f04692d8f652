#include "app/window/shelf_note.h"

#include <QLabel>
#include <QVBoxLayout>

#include "app/plots/text.h"
#include "app/window/document.h"
#include "app/window/widgets.h"

namespace gazewright {

ShelfNote::ShelfNote(Document& document, Axis axis, PartKind kind,
                     const std::shared_ptr<const Shelf>& shelf)
    : document_(document), axis_(axis), kind_(kind), shelf_(shelf), note_(new QLabel) {
  note_->setWordWrap(true);
  setKind(note_, "note");
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->addWidget(note_);
  refresh();
}

/// Of two parts of one name the nearer one counts.
void ShelfNote::refresh() {
  const AxisParts& parts = document_.rig().axis(axis_);
  const std::string& name = kind_ == PartKind::motor ? parts.motor.name : parts.gearbox.name;
  std::optional<std::vector<std::string_view>> fewest;
  for (const std::size_t entry : shelf_ ? shelf_->of(kind_) : std::vector<std::size_t>()) {
    const ShelfPart& part = shelf_->entries[entry].part;
    if (name.empty() || part.name != name) continue;
    auto labels = differences(document_.rig(), axis_, part);
    if (!fewest || labels.size() < fewest->size()) fewest = std::move(labels);
  }
  QStringList words;
  if (fewest)
    for (const std::string_view label : *fewest) words << mid_sentence(worded(label));
  note_->setText(words.isEmpty()
                     ? QString()
                     : tr("Changed: not as “%1” on the shelf in %2.")
                           .arg(QString::fromStdString(name), words.join(QStringLiteral(", "))));
  setVisible(!words.isEmpty());
}

QString ShelfNote::text() const { return note_->text(); }

}  // namespace gazewright
