#include "app/window/plot_table.h"

#include <QApplication>
#include <QClipboard>
#include <QDialogButtonBox>
#include <QHeaderView>
#include <QMimeData>
#include <QPushButton>
#include <QTableView>
#include <QVBoxLayout>

#include "app/plots/csv.h"
#include "app/plots/format.h"
#include "app/window/widgets.h"

namespace gazewright {
namespace {
constexpr int kDigits = 6;
}

CellsModel::CellsModel(const QStringList& header, const QVector<QStringList>& rows, QObject* parent)
    : QAbstractTableModel(parent), header_(header), rows_(rows) {}

int CellsModel::rowCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : int(rows_.size());
}

int CellsModel::columnCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : int(header_.size());
}

QVariant CellsModel::data(const QModelIndex& index, int role) const {
  const QString cell = rows_[index.row()].value(index.column());
  bool is_number = false;
  const double number = cell.toDouble(&is_number);
  if (role == Qt::DisplayRole) return is_number ? number_text(number, kDigits) : cell;
  if (role == Qt::TextAlignmentRole)
    return int(Qt::AlignVCenter | (is_number ? Qt::AlignRight : Qt::AlignLeft));
  return {};
}

QVariant CellsModel::headerData(int section, Qt::Orientation along, int role) const {
  if (role != Qt::DisplayRole) return {};
  return along == Qt::Horizontal ? QVariant(header_.value(section)) : QVariant(section + 1);
}

PlotTable::PlotTable(const PlotView& plot, QWidget* parent) : QDialog(parent) {
  setAttribute(Qt::WA_DeleteOnClose);
  setWindowTitle(tr("Data of “%1”").arg(plot.title()));
  auto* layout = new QVBoxLayout(this);
  QLabel* words = sentencesLabel(tr("What the plot says"));
  words->setText(plot.summary());
  words->setFocusPolicy(Qt::StrongFocus);
  layout->addWidget(words);
  const QString csv = plot.csv();
  QVector<QStringList> rows = csv_rows(csv);
  rows << QStringList();  // ends the last table
  for (qsizetype start = 0; start < rows.size(); ++start) {
    const qsizetype end = rows.indexOf(QStringList(), start);
    if (end == start) continue;
    auto* table = new QTableView;
    table->setModel(new CellsModel(rows[start], rows.mid(start + 1, end - start - 1), table));
    table->setAccessibleName(tr("Data of %1").arg(rows[start].join(QStringLiteral(", "))));
    table->horizontalHeader()->setSectionResizeMode(QHeaderView::Interactive);
    table->resizeColumnsToContents();
    table->setTabKeyNavigation(false);
    layout->addWidget(table, 1);
    start = end;
  }
  auto* buttons = new QDialogButtonBox(QDialogButtonBox::Close);
  QPushButton* copy = buttons->addButton(tr("&Copy"), QDialogButtonBox::ActionRole);
  connect(copy, &QPushButton::clicked, this, [csv] { copy_csv(csv); });
  connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
  layout->addWidget(buttons);
  resize(640, 520);
}

void copy_csv(const QString& csv) {
  auto* data = new QMimeData;
  data->setText(with_tabs(csv));
  data->setData(QStringLiteral("text/csv"), csv.toUtf8());
  QApplication::clipboard()->setMimeData(data);
}

}  // namespace gazewright
