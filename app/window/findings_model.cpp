#include "app/window/findings_model.h"

#include <QFont>
#include <algorithm>

#include "app/plots/charts.h"
#include "app/plots/format.h"

namespace gazewright {
namespace {

QString remedy_texts(const Finding& finding) {
  QStringList texts;
  for (const Remedy& remedy : finding.remedies) texts << QString::fromStdString(remedy.text);
  return texts.join(QStringLiteral("; "));
}

/// The keys of what a reason names, for whoever writes the file.
QString keys_text(const Finding& finding) {
  const QStringList keys = keys_in(finding.because);
  return keys.isEmpty()
             ? QString()
             : FindingsModel::tr("In the rig file: %1").arg(keys.join(QStringLiteral(", ")));
}

/// To look at, while no remedies are in.
bool is_same_but_for_numbers(const Finding& a, const Finding& b) {
  return a.verdict == b.verdict && a.axis == b.axis && a.what == b.what;
}

}  // namespace

/// A row or its numbers are painted again only where it has something else to say: most keep still
/// in a drag.
void FindingsModel::setFindings(const std::vector<Finding>& findings, bool remediesAreIn) {
  const bool sameRows =
      std::equal(findings.begin(), findings.end(), findings_.begin(), findings_.end(),
                 [](const Finding& a, const Finding& b) { return a.id == b.id; });
  const bool allChange = remedies_are_in_ != remediesAreIn || !open_.empty();
  remedies_are_in_ = remediesAreIn;
  open_.clear();
  if (sameRows) {
    for (std::size_t i = 0; i < findings.size(); ++i) {
      if (!allChange && findings[i] == findings_[i]) continue;
      const bool onlyNumbers =
          !allChange && !remediesAreIn && is_same_but_for_numbers(findings[i], findings_[i]);
      findings_[i] = findings[i];
      const int row = static_cast<int>(i);
      emit dataChanged(index(row, onlyNumbers ? demand : 0),
                       index(row, onlyNumbers ? margin : kColumns - 1));
    }
    return;
  }
  beginResetModel();
  findings_ = findings;
  endResetModel();
}

void FindingsModel::setOpen(std::vector<OpenVerdict> open) {
  open_ = std::move(open);
  if (!findings_.empty()) emit dataChanged(index(0, 0), index(rowCount() - 1, kColumns - 1));
}

QString FindingsModel::openText(const Finding& finding) const {
  const auto at = std::ranges::find(open_, finding.id, &OpenVerdict::finding);
  return at == open_.end() ? QString() : QString::fromStdString(at->text);
}

void FindingsModel::setTheme(const Theme& theme) {
  theme_ = theme;
  if (!findings_.empty()) emit dataChanged(index(0, 0), index(rowCount() - 1, kColumns - 1));
}

int FindingsModel::rowOf(const std::string& id) const {
  const auto at = std::ranges::find(findings_, id, &Finding::id);
  return at == findings_.end() ? -1 : static_cast<int>(at - findings_.begin());
}

QString FindingsModel::summary() const {
  const auto count = [&](Verdict kind) {
    return std::ranges::count(findings_, kind, &Finding::verdict);
  };
  QStringList parts;
  const auto add = [&](Verdict kind, const QString& one, const QString& many) {
    const auto n = count(kind);
    if (n > 0) parts << (n == 1 ? one : many.arg(n));
  };
  add(Verdict::fails, tr("1 fails"), tr("%1 fail"));
  add(Verdict::tight, tr("1 tight"), tr("%1 tight"));
  add(Verdict::unknown, tr("1 unknown"), tr("%1 unknown"));
  add(Verdict::holds, tr("1 holds"), tr("%1 hold"));
  return parts.join(QStringLiteral(", "));
}

int FindingsModel::rowCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : static_cast<int>(findings_.size());
}
int FindingsModel::columnCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : kColumns;
}

QString FindingsModel::text(const Finding& finding, int column) const {
  switch (column) {
    case verdict:
      return verdict_symbol(finding.verdict) + QStringLiteral(" ") + verdict_word(finding.verdict) +
             (openText(finding).isEmpty() ? QString() : QStringLiteral(" ±"));
    case axis:
      return finding.axis ? axis_word(*finding.axis) : tr("Both");
    case what:
      return QString::fromStdString(finding.what);
    case demand:
      return format_value(finding.demand, finding.si_unit, finding.unit);
    case capacity:
      return format_value(finding.capacity, finding.si_unit, finding.unit);
    case margin:
      return margin_text(finding.margin);
    case remedy: {
      if (!remedies_are_in_) return QStringLiteral("…");
      const QString text =
          finding.remedies.empty() ? reason_text(finding.because) : remedy_texts(finding);
      const QString open = openText(finding);
      return open.isEmpty() ? text : open + QStringLiteral("; ") + text;
    }
    default:
      return {};
  }
}

QVariant FindingsModel::colour(const Finding& finding, int column) const {
  if (column == verdict) return verdict_colour(theme_, finding.verdict);
  if (column == axis && finding.axis) return axis_text_colour(theme_, *finding.axis);
  if (column == remedy || column == margin) return theme_.quiet;
  return theme_.text;
}

QVariant FindingsModel::data(const QModelIndex& index, int role) const {
  const Finding& at = finding(index.row());
  switch (role) {
    case Qt::DisplayRole:
      return text(at, index.column());
    case Qt::ForegroundRole:
      return colour(at, index.column());
    case Qt::ToolTipRole: {
      QString tip = reason_text(at.because);
      if (const QString keys = keys_text(at); !keys.isEmpty()) tip += QStringLiteral("\n") + keys;
      if (const QString remedies = remedy_texts(at); !remedies.isEmpty()) {
        tip += QStringLiteral("\n") + remedies;
      }
      if (const QString open = openText(at); !open.isEmpty()) tip.prepend(open + "; ");
      return QStringLiteral("<p>%1</p>").arg(tip.toHtmlEscaped());
    }
    case Qt::TextAlignmentRole:
      if (index.column() == demand || index.column() == capacity || index.column() == margin) {
        return QVariant(Qt::AlignRight | Qt::AlignVCenter);
      }
      return QVariant(Qt::AlignLeft | Qt::AlignVCenter);
    case Qt::FontRole:
      if (index.column() == verdict && at.verdict == Verdict::fails) {
        QFont bold;
        bold.setBold(true);
        return bold;
      }
      return {};
    default:
      return {};
  }
}

QVariant FindingsModel::headerData(int section, Qt::Orientation orientation, int role) const {
  if (orientation != Qt::Horizontal) return {};
  if (role == Qt::TextAlignmentRole) {
    const bool number = section == demand || section == capacity || section == margin;
    return QVariant((number ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignVCenter);
  }
  if (role != Qt::DisplayRole) return {};
  const QString words[] = {
      tr("Verdict"),  tr("Axis"), tr("What"),   tr("Demand"),
      tr("Capacity"), {},         tr("Margin"), tr("What would make it hold, or why it does")};
  return words[section];
}

}  // namespace gazewright
