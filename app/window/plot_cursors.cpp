#include "app/window/plot_cursors.h"

#include <QApplication>
#include <QCheckBox>
#include <QClipboard>
#include <QDialogButtonBox>
#include <QFormLayout>
#include <QLineEdit>
#include <QLocale>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QVBoxLayout>
#include <cmath>
#include <limits>

#include "app/plots/chart_plot.h"
#include "app/plots/format.h"
#include "app/window/widgets.h"

namespace gazewright {
namespace {

/// A number as people here write it, or with a decimal point. Empty where it is none.
std::optional<double> number_of(QString text) {
  text = text.trimmed().replace(QChar(0x2212), '-');
  bool ok = false;
  double value = QLocale().toDouble(text, &ok);
  if (!ok) value = QLocale::c().toDouble(text, &ok);
  if (!ok || !std::isfinite(value)) return {};
  return value;
}

}  // namespace

PlotCursors::PlotCursors(PlotView* plot, QWidget* parent) : QDialog(parent), plot_(plot) {
  setAttribute(Qt::WA_DeleteOnClose);
  setWindowTitle(tr("Cursors of “%1”").arg(plot->title()));
  const QString unit = plot->charts().front()->cursorUnit();
  a_ = placeEdit(tr("Cursor A"));
  b_ = placeEdit(tr("Cursor B"));
  held_ = new QCheckBox(tr("&Hold cursor A where it is"));
  held_->setChecked(plot->options().held);
  table_ = new QPlainTextEdit;
  table_->setReadOnly(true);
  table_->setTabChangesFocus(true);
  table_->setLineWrapMode(QPlainTextEdit::NoWrap);
  table_->setAccessibleName(tr("What the cursors read"));
  table_->setTabStopDistance(14 * fontMetrics().averageCharWidth());
  auto* form = new QFormLayout;
  form->addRow(axis_title(tr("Cursor &A"), unit), a_);
  form->addRow(axis_title(tr("Cursor &B"), unit), b_);
  auto* buttons = new QDialogButtonBox(QDialogButtonBox::Close);
  QPushButton* copy = buttons->addButton(tr("&Copy"), QDialogButtonBox::ActionRole);
  for (QAbstractButton* button : buttons->buttons())
    static_cast<QPushButton*>(button)->setAutoDefault(false);
  auto* layout = new QVBoxLayout(this);
  layout->addLayout(form);
  layout->addWidget(held_);
  layout->addWidget(table_, 1);
  layout->addWidget(buttons);
  resize(460, 320);
  connect(copy, &QPushButton::clicked, this,
          [this] { QApplication::clipboard()->setText(table()); });
  connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
  connect(held_, &QCheckBox::toggled, this, [this](bool held) {
    PlotOptions options = plot_->options();
    options.held = held;
    plot_->setOptions(options);
  });
  connect(plot, &PlotView::optionsChanged, this,
          [this] { held_->setChecked(plot_->options().held); });
  connect(plot, &PlotView::cursorsChanged, this, &PlotCursors::refresh);
  connect(plot, &QObject::destroyed, this, &QDialog::close);
  refresh();
}

QLineEdit* PlotCursors::placeEdit(const QString& name) {
  auto* edit = new QLineEdit;
  edit->setAccessibleName(name);
  edit->setPlaceholderText(tr("not set"));
  connect(edit, &QLineEdit::editingFinished, this, [this, edit] { place(edit); });
  return edit;
}

/// An entry that is no number brings the present place back.
void PlotCursors::place(QLineEdit* edit) {
  if (!plot_ || !edit->isModified()) return;
  edit->setModified(false);
  const auto number = number_of(edit->text());
  if (number || edit->text().trimmed().isEmpty()) {
    const auto cursor = edit == a_ ? ChartPlot::Cursor::a : ChartPlot::Cursor::b;
    plot_->charts().front()->placeCursor(cursor,
                                         number.value_or(std::numeric_limits<double>::quiet_NaN()));
  }
  refresh();
}

QString PlotCursors::table() const { return table_->toPlainText(); }

void PlotCursors::refresh() {
  if (!plot_) return;
  const ChartPlot* chart = plot_->charts().front();
  for (QLineEdit* edit : {a_, b_}) {
    if (edit->isModified()) continue;  // being typed
    const double at = chart->cursorPlace(edit == a_ ? ChartPlot::Cursor::a : ChartPlot::Cursor::b);
    edit->setText(std::isfinite(at) ? QLocale().toString(at, 'g', 8) : QString());
  }
  if (const QString text = plot_->readout(); text != table()) table_->setPlainText(text);
}

}  // namespace gazewright
