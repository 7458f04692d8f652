#include "app/window/explain_text.h"

#include <QCoreApplication>
#include <QLocale>
#include <algorithm>

#include "app/plots/charts.h"
#include "app/plots/doubt_text.h"
#include "app/plots/format.h"
#include "app/plots/text.h"
#include "app/plots/theme.h"
#include "app/window/help_places.h"
#include "app/window/parts.h"
#include "app/window/quantity_text.h"

namespace gazewright {
namespace {

QString tr(const char* text, int count = -1) {
  return QCoreApplication::translate("Explain", text, nullptr, count);
}

QString link(const QString& target, const QString& text) {
  return QStringLiteral("<a href=\"%1\">%2</a>").arg(target.toHtmlEscaped(), text.toHtmlEscaped());
}

QString paragraph(const QString& title, const QString& text) {
  return QStringLiteral("<p><b>%1</b><br>%2</p>").arg(title.toHtmlEscaped(), text);
}

QString handbook_link(const HelpPlace& place, const QString& text) {
  return link(QStringLiteral("handbook:") + place.page + QChar('#') + place.section, text);
}

QString with_axis(const QString& text, std::optional<Axis> axis) {
  return axis ? text + QStringLiteral(", ") + mid_sentence(axis_word(*axis)) : text;
}

/// "Rotor inertia (pan motor)", "ball (mass; its place and shape count too)".
QString input_name(const InputUse& use, const Rig& rig) {
  const QString label = worded(use.label);
  if (use.path.starts_with("on_")) return label;
  const QString part = part_title(rig, card_of(use.path));
  return QStringLiteral("%1 (%2)").arg(label, mid_sentence(part));
}

QString input_value(const InputUse& use) {
  if (use.is_missing) return tr("missing");
  if (!use.choice.empty()) return qstring(use.choice);
  if (!use.info) return {};
  const QString shown = shown_quantity(use.quantity, *use.info);
  const QString spread = shown_spread(use.quantity, *use.info);
  const QString value = spread.isEmpty() ? shown : shown + QChar(' ') + spread;
  return use.path.starts_with("on_") && use.path.ends_with(']')
             ? tr("%1, its place and shape").arg(value)
             : value;
}

QString input_source(const InputUse& use) {
  if (use.is_missing || !use.info) return {};
  return source_word(use.quantity.source);
}

QString input_table(const std::vector<InputUse>& inputs, const Rig& rig) {
  if (inputs.empty()) return {};
  QString rows;
  for (const InputUse& use : inputs) {
    rows += QStringLiteral("<tr><td>%1&nbsp;&nbsp;</td><td>%2&nbsp;&nbsp;</td><td>%3</td></tr>")
                .arg(link(QStringLiteral("field:") + QString::fromStdString(use.path),
                          input_name(use, rig)),
                     input_value(use).toHtmlEscaped(), input_source(use).toHtmlEscaped());
  }
  return paragraph(tr("Inputs, with what they are now and where that is from"),
                   QStringLiteral("<table>%1</table>").arg(rows));
}

/// "Of 24 inputs 3 are estimates, 9 usual values and 1 is missing."
QString trust_of(const std::vector<InputUse>& inputs) {
  qsizetype estimates = 0, defaults = 0, unstated = 0, missing = 0;
  for (const InputUse& use : inputs) {
    if (use.is_missing) ++missing;
    if (use.is_missing || !use.info) continue;
    estimates += use.quantity.source == Source::estimate ? 1 : 0;
    defaults += use.quantity.source == Source::by_default ? 1 : 0;
    unstated += use.quantity.source == Source::unstated ? 1 : 0;
  }
  QStringList parts;
  if (missing) parts << tr("missing: %1").arg(missing);
  if (estimates) parts << tr("estimates: %1").arg(estimates);
  if (defaults) parts << tr("usual values: %1").arg(defaults);
  if (unstated) parts << tr("source not stated: %1").arg(unstated);
  if (parts.isEmpty()) return {};
  return tr("Of its %n inputs – %1.", int(inputs.size())).arg(parts.join(QStringLiteral(", ")));
}

QString figure_links(const std::vector<const Figure*>& figures, std::size_t most) {
  QStringList rows;
  for (const Figure* figure : figures) {
    if (figure->is_aside) continue;
    if (static_cast<std::size_t>(rows.size()) == most) break;
    rows << link(QStringLiteral("figure:") + QString::fromStdString(figure->id),
                 figure_name(*figure)) +
                QStringLiteral(": ") + figure_value(*figure).toHtmlEscaped();
  }
  return rows.join(QStringLiteral("<br>"));
}

/// What the figure's uncertainty is and what moves it most; empty where it is not in doubt.
QString doubt_section(const Doubts& doubts, const Explanation& figure, const Rig& rig) {
  constexpr std::size_t kMostShifts = 5;
  const DoubtedFigure* doubted = doubts.figure(figure.id);
  if (!doubted) return {};
  QString rows;
  for (std::size_t i = 0; i < std::min(doubted->shifts.size(), kMostShifts); ++i) {
    const Shift& shift = doubted->shifts[i];
    const Unknown& unknown = doubts.unknowns[shift.unknown];
    rows += QStringLiteral(
                "<tr><td>%1&nbsp;&nbsp;</td><td>%2&nbsp;&nbsp;</td><td>%3&nbsp;&nbsp;</td>"
                "<td>%4</td></tr>")
                .arg(link(QStringLiteral("field:") +
                              QString::fromStdString(field_path(rig, unknown.path)),
                          worded(unknown.label)),
                     doubted_value(unknown).toHtmlEscaped(),
                     shift_text(shift, *figure.info).toHtmlEscaped(),
                     share_text(shift.share).toHtmlEscaped());
  }
  QString how = tr("%1, two standard uncertainties (about 95 %). What moves it most, how far from "
                   "end to end of its range, and its share:")
                    .arg(plus_minus(*doubted, *figure.info));
  if (!doubted->is_known_whole)
    how = tr("At an end of a range it has no value, so this is the least: ") + how;
  return paragraph(tr("How far to trust it"),
                   how.toHtmlEscaped() + QStringLiteral("<table>%1</table>").arg(rows));
}

/// "pan.move" of "pan.move.time".
std::string_view subject_of(std::string_view id) {
  const std::size_t last = id.rfind('.');
  return last == std::string_view::npos ? id : id.substr(0, last);
}

QString verdict_line(const Finding& finding) {
  QString text = verdict_symbol(finding.verdict) + QChar(' ') + verdict_word(finding.verdict);
  if (finding.margin) text += tr(", margin %1").arg(margin_text(finding.margin));
  return text;
}

}  // namespace

QString source_word(Source source) {
  switch (source) {
    case Source::measured:
      return tr("measured");
    case Source::datasheet:
      return tr("datasheet");
    case Source::estimate:
      return tr("estimate");
    case Source::by_default:
      return tr("usual value, not entered");
    case Source::unstated:
      break;
  }
  return tr("entered, source not stated");
}

QString figure_name(const Figure& figure) {
  return with_axis(worded(figure.info->label), axis_of_id(figure.id));
}

QString figure_value(const Figure& figure) {
  if (!figure.value) return begins_as("needs %1", figure.because) ? tr("unknown") : tr("none");
  return format_value(figure.value, figure.info->si_unit, figure.info->unit);
}

QString explanation_of(const Explanation& figure, const Rig& rig, const Doubts* doubts) {
  const FigureInfo& info = *figure.info;
  QString html =
      QStringLiteral("<h3>%1</h3>").arg(with_axis(worded(info.label), figure.axis).toHtmlEscaped());
  if (figure.value) {
    const QString exact = QLocale().toString(*figure.value, 'g', 10);
    const QString unit = unit_text(info.si_unit);
    html += QStringLiteral("<p><big><b>%1</b></big><br>%2</p>")
                .arg(format_value(figure.value, info.si_unit, info.unit).toHtmlEscaped(),
                     tr("exactly %1").arg(exact + QChar(' ') + unit).toHtmlEscaped());
  } else {
    html += QStringLiteral("<p><big><b>%1</b></big><br>%2</p>")
                .arg(tr("no value"), reason_text(figure.because).toHtmlEscaped());
  }
  if (doubts) html += doubt_section(*doubts, figure, rig);
  html += paragraph(tr("Formula"), worded(info.formula).toHtmlEscaped());
  html += paragraph(tr("Source of the formula"), worded(info.source).toHtmlEscaped());
  const QString trust = trust_of(figure.inputs);
  QString holds = worded(figure.conditions).toHtmlEscaped();
  if (!trust.isEmpty())
    holds += (holds.isEmpty() ? QString() : QStringLiteral("<br>")) + trust.toHtmlEscaped();
  if (!holds.isEmpty()) html += paragraph(tr("Holds under these conditions"), holds);
  html += input_table(figure.inputs, rig);
  html += QStringLiteral("<p>%1</p>")
              .arg(handbook_link(help_for_figure(info),
                                 tr("In the handbook: %1").arg(qstring(figure.page))));
  html +=
      QStringLiteral("<p>%1</p>")
          .arg(tr("In files and lists: %1").arg(QString::fromStdString(figure.id)).toHtmlEscaped());
  return html;
}

QString explanation_of(const Finding& finding, const Rig& rig, const Analysis& analysis) {
  QString html =
      QStringLiteral("<h3>%1</h3><p><big><b>%2</b></big><br>%3</p>")
          .arg(with_axis(QString::fromStdString(finding.what), finding.axis).toHtmlEscaped(),
               verdict_line(finding).toHtmlEscaped(), reason_text(finding.because).toHtmlEscaped());
  const auto amount = [&](const std::optional<double>& value) {
    return format_value(value, finding.si_unit, finding.unit).toHtmlEscaped();
  };
  html +=
      paragraph(tr("Formula"), tr("margin = capacity / demand − 1; below 0 it fails, up to 15 % "
                                  "it is tight")
                                   .toHtmlEscaped());
  html +=
      paragraph(tr("Demand and capacity"),
                tr("demand %1, capacity %2").arg(amount(finding.demand), amount(finding.capacity)));
  std::vector<const Figure*> related;
  for (const Figure& figure : analysis.figures) {
    if (figure.info && subject_of(figure.id) == subject_of(finding.id)) related.push_back(&figure);
  }
  if (const QString list = figure_links(related, 12); !list.isEmpty())
    html += paragraph(tr("Figures of the same subject"), list);
  const std::vector<InputUse> inputs = inputs_of_finding(rig, finding);
  if (const QString trust = trust_of(inputs); !trust.isEmpty())
    html += paragraph(tr("How sure"), trust.toHtmlEscaped());
  html += input_table(inputs, rig);
  QStringList remedies;
  for (const Remedy& remedy : finding.remedies)
    remedies << QString::fromStdString(remedy.text).toHtmlEscaped();
  if (!remedies.isEmpty()) html += paragraph(tr("Remedies"), remedies.join(QStringLiteral("<br>")));
  html += QStringLiteral("<p>%1</p>")
              .arg(handbook_link(help_for_finding(finding.id), tr("In the handbook: findings")));
  return html;
}

QString explanation_of_field(const Rig& rig, const Analysis& analysis, const std::string& path) {
  const std::string_view paths[]{path};
  const std::vector<InputUse> uses = inputs_in_use(paths, Axis::pan, rig);
  const FieldInfo* info = find_info(path);
  QString html =
      QStringLiteral("<h3>%1</h3>")
          .arg((uses.empty() ? QString::fromStdString(path) : input_name(uses.front(), rig))
                   .toHtmlEscaped());
  if (uses.size() == 1) {
    html += QStringLiteral("<p><big><b>%1</b></big><br>%2</p>")
                .arg(input_value(uses.front()).toHtmlEscaped(),
                     input_source(uses.front()).toHtmlEscaped());
  }
  if (info) {
    html += paragraph(tr("What it is"), worded(info->help).toHtmlEscaped());
    if (const QString range = range_text(*info); !range.isEmpty())
      html += paragraph(tr("Allowed"), range.toHtmlEscaped());
    if (const QString usual = fallback_text(*info); !usual.isEmpty())
      html += paragraph(tr("Left empty"), usual.toHtmlEscaped());
  }
  const std::vector<const Figure*> figures = figures_on(rig, analysis, path);
  const auto counted = std::ranges::count_if(figures, [](const Figure* f) { return !f->is_aside; });
  if (counted > 0)
    html += paragraph(tr("What stands on it: %n figures", int(counted)), figure_links(figures, 60));
  html += QStringLiteral("<p>%1</p>")
              .arg(handbook_link(help_for_part(path), tr("In the handbook: the rig file")));
  return html;
}

}  // namespace gazewright
