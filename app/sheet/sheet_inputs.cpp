#include <algorithm>
#include <map>
#include <set>

#include "app/plots/choice_word.h"
#include "app/plots/format.h"
#include "app/plots/text.h"
#include "app/sheet/sheet_sections.h"
#include "app/sheet/sheet_table.h"
#include "app/window/card_groups.h"
#include "app/window/quantity_text.h"
#include "core/data/data_library.h"
#include "core/rig/fields.h"

/// Every input as it was written, with its spread and source; pan and tilt side by side.
namespace gazewright {
namespace {

QString default_text(const FieldInfo& info) {
  if (info.fallback) return format_value(*info.fallback, info.si_unit, info.unit);
  return worded(info.fallback_text);
}

/// What was written and, below, spread and source.
TableCell quantity_cell(const Quantity& quantity, const FieldInfo& info, const Theme& theme) {
  TableCell cell;
  if (!quantity.has_value()) {
    const QString fallback = default_text(info);
    cell.text = fallback.isEmpty() ? Plots::tr("missing") : Plots::tr("%1 (default)").arg(fallback);
    if (fallback.isEmpty()) cell.style.colour = theme.bad;
    return cell;
  }
  cell.text = shown_quantity(quantity, info);
  QStringList below;
  if (const QString spread = shown_spread(quantity, info); !spread.isEmpty()) below << spread;
  if (quantity.source != Source::unstated) below << source_text(quantity.source);
  cell.below = below.join(QStringLiteral(", "));
  return cell;
}

TableCell field_cell(const FieldRef& field, const Theme& theme) {
  if (const auto* quantity = std::get_if<QuantityRef>(&field)) {
    return quantity_cell(*quantity->quantity, *quantity->info, theme);
  }
  if (const auto* choice = std::get_if<ChoiceRef>(&field)) {
    if (!choice->choice->value.empty()) return {choice_word(choice->choice->value), {7.5}, {}};
    return {Plots::tr("%1 (default)").arg(choice_word(choice->info->options.front())), {7.5}, {}};
  }
  const std::string& text = *std::get<TextRef>(field).text;
  return {text.empty() ? QStringLiteral("–") : QString::fromStdString(text), {7.5}, {}};
}

QString label_of(const FieldRef& field) {
  return std::visit([](const auto& ref) { return worded(ref.info->label); }, field);
}

QString part_word(const QString& part) {
  static const std::map<QString, const char*> lists{
      {QStringLiteral("detectors"), QT_TRANSLATE_NOOP("Plots", "Detector %1")},
      {QStringLiteral("duty"), QT_TRANSLATE_NOOP("Plots", "Move %1 of the duty")},
      {QStringLiteral("materials"), QT_TRANSLATE_NOOP("Plots", "Material %1")}};
  if (const auto open = part.indexOf('['); open > 0) {
    const int number = part.mid(open + 1, part.indexOf(']') - open - 1).toInt() + 1;
    if (const auto list = lists.find(part.left(open)); list != lists.end())
      return Plots::tr(list->second).arg(number);
  }
  static const std::map<QString, const char*> words{
      {QStringLiteral("supply"), QT_TRANSLATE_NOOP("Plots", "Supply")},
      {QStringLiteral("surroundings"), QT_TRANSLATE_NOOP("Plots", "Surroundings")},
      {QStringLiteral("stand"), QT_TRANSLATE_NOOP("Plots", "Stand")},
      {QStringLiteral("motor"), QT_TRANSLATE_NOOP("Plots", "Motor")},
      {QStringLiteral("drive"), QT_TRANSLATE_NOOP("Plots", "Drive")},
      {QStringLiteral("gearbox"), QT_TRANSLATE_NOOP("Plots", "Gearbox")},
      {QStringLiteral("encoder"), QT_TRANSLATE_NOOP("Plots", "Encoder")},
      {QStringLiteral("friction"), QT_TRANSLATE_NOOP("Plots", "Friction")},
      {QStringLiteral("stops"), QT_TRANSLATE_NOOP("Plots", "Stops")},
      {QStringLiteral("cable"), QT_TRANSLATE_NOOP("Plots", "Cable")},
      {QStringLiteral("homing"), QT_TRANSLATE_NOOP("Plots", "Homing")},
      {QStringLiteral("loop"), QT_TRANSLATE_NOOP("Plots", "Loop")},
      {QStringLiteral("bracket"), QT_TRANSLATE_NOOP("Plots", "Bracket")},
      {QStringLiteral("bearing"), QT_TRANSLATE_NOOP("Plots", "Bearings")},
      {QStringLiteral("joint"), QT_TRANSLATE_NOOP("Plots", "Joint")},
      {QStringLiteral("balance"), QT_TRANSLATE_NOOP("Plots", "Counterweight")},
      {QStringLiteral("arm"), QT_TRANSLATE_NOOP("Plots", "Arm")},
      {QStringLiteral("pointing"), QT_TRANSLATE_NOOP("Plots", "Pointing")},
      {QStringLiteral("camera"), QT_TRANSLATE_NOOP("Plots", "Camera")},
      {QStringLiteral("task"), QT_TRANSLATE_NOOP("Plots", "Task")},
      {QStringLiteral("tracking"), QT_TRANSLATE_NOOP("Plots", "Tracking")},
      {QStringLiteral("axis_at"), QT_TRANSLATE_NOOP("Plots", "Place of the tilt axis")}};
  const auto word = words.find(part);
  return word == words.end() ? part : Plots::tr(word->second);
}

struct InputLine {
  QString key;  ///< of the part, "stops"
  QString part, label;
  std::optional<TableCell> pan, tilt, both;
};

QString coordinate(const QString& path) {
  const auto open = path.lastIndexOf('[');
  if (open < 0 || !path.endsWith(']')) return {};
  const int index = path.mid(open + 1, 1).toInt();
  return QStringLiteral(" ") + QChar('x' + index);
}

/// A detail that nobody entered.
bool is_detail_unsaid(const FieldRef& field) {
  const auto* quantity = std::get_if<QuantityRef>(&field);
  return quantity != nullptr && quantity->info->detail && !quantity->quantity->has_value();
}

bool is_unsaid(const FieldRef& field) {
  if (const auto* choice = std::get_if<ChoiceRef>(&field)) return choice->choice->value.empty();
  if (const auto* text = std::get_if<TextRef>(&field)) return text->text->empty();
  return is_detail_unsaid(field);
}

std::string part_of(const FieldRef& field) {
  return path_of(field).substr(0, path_of(field).rfind('.'));
}

/// Parts of which nobody entered anything, and nobody has to.
std::set<std::string> parts_unsaid(const std::vector<FieldRef>& fields) {
  std::set<std::string> unsaid, said;
  for (const FieldRef& field : fields) (is_unsaid(field) ? unsaid : said).insert(part_of(field));
  for (const std::string& part : said) unsaid.erase(part);
  return unsaid;
}

/// One line per field, in the order of the file; bodies and keep-outs have tables of their own.
std::vector<InputLine> lines_of(Rig& rig, const Theme& theme) {
  std::vector<InputLine> lines;
  std::map<QString, std::size_t> at;
  const std::vector<FieldRef> fields = all_fields(rig);
  const std::set<std::string> unsaid = parts_unsaid(fields);
  for (const FieldRef& field : fields) {
    QString path = QString::fromStdString(path_of(field));
    if (path.startsWith("on_pan") || path.startsWith("on_tilt")) continue;
    if (path.startsWith("keep_outs")) continue;
    if (path == "title" || path == "notes" || is_detail_unsaid(field)) continue;
    if (unsaid.contains(part_of(field))) continue;
    const bool pan = path.startsWith("pan."), tilt = path.startsWith("tilt.");
    if (pan || tilt) path = path.mid(path.indexOf('.') + 1);
    const auto [place, is_new] = at.emplace((pan || tilt ? "axis." : "") + path, lines.size());
    const QString part = path.left(path.indexOf(path.contains('.') ? '.' : '['));
    if (is_new)
      lines.push_back({part, part_word(part), label_of(field) + coordinate(path), {}, {}, {}});
    InputLine& line = lines[place->second];
    (pan    ? line.pan
     : tilt ? line.tilt
            : line.both) = field_applies(rig, path_of(field))
                               ? field_cell(field, theme)
                               : TableCell{QStringLiteral("–"), {7.5}, {}};
  }
  return lines;
}

QString shape_text(Rig& rig, const std::string& body_path, const Body& body) {
  struct Word {
    QString operator()(const Ball&) const { return Plots::tr("ball"); }
    QString operator()(const Shell&) const { return Plots::tr("shell"); }
    QString operator()(const Tube& tube) const {
      return Plots::tr("tube along %1").arg(QString::fromStdString(tube.along.value));
    }
    QString operator()(const Box&) const { return Plots::tr("box"); }
    QString operator()(const Point&) const { return Plots::tr("point"); }
    QString operator()(const Tensor&) const { return Plots::tr("tensor"); }
  };
  QStringList sizes;
  const bool list =
      std::holds_alternative<Box>(body.shape) || std::holds_alternative<Tensor>(body.shape);
  for (const FieldRef& field : fields_under(rig, body_path + ".shape")) {
    const auto* ref = std::get_if<QuantityRef>(&field);
    if (ref == nullptr) continue;
    const QString value = quantity_cell(*ref->quantity, *ref->info, {}).text;
    sizes << (list ? value : mid_sentence(label_of(field)) + ' ' + value);
  }
  const QString word = std::visit(Word{}, body.shape);
  return sizes.isEmpty()
             ? word
             : word + ' ' + sizes.join(list ? QStringLiteral(" × ") : QStringLiteral(", "));
}

void draw_bodies(SheetPage& page, Rig& rig) {
  std::vector<TableRow> rows;
  for (const bool on_tilt : {false, true}) {
    const auto& bodies = on_tilt ? rig.on_tilt : rig.on_pan;
    for (std::size_t i = 0; i < bodies.size(); ++i) {
      const Body& body = bodies[i];
      const std::string path = (on_tilt ? "on_tilt[" : "on_pan[") + std::to_string(i) + "]";
      QStringList centre;
      for (const Quantity& c : body.centre_m) {
        centre << quantity_cell(c, body_centre_info(), page.theme()).text;
      }
      TableRow row;
      row.cells = {{QString::fromStdString(body.name), {7.5}, {}},
                   {on_tilt ? Plots::tr("tilt") : Plots::tr("pan"), {7.5}, {}},
                   quantity_cell(body.mass_kg, body_mass_info(), page.theme()),
                   {centre.join(QStringLiteral(", ")), {7.5}, {}},
                   {shape_text(rig, path, body), {7.5}, {}}};
      rows.push_back(row);
    }
  }
  if (rows.empty()) return;
  page.heading(Plots::tr("Bodies"));
  draw_table(page,
             {{Plots::tr("Body"), 1.6, false},
              {Plots::tr("Turns with"), 0.8, false},
              {Plots::tr("Mass"), 1, true},
              {Plots::tr("Centre x, y, z"), 2, false},
              {Plots::tr("Shape"), 2.8, false}},
             rows);
}

void draw_keep_outs(SheetPage& page, const Rig& rig) {
  if (rig.keep_outs.empty()) return;
  std::vector<TableRow> rows;
  for (const KeepOut& keep_out : rig.keep_outs) {
    TableRow row;
    row.cells = {{QString::fromStdString(keep_out.name), {7.5}, {}}};
    for (const auto* ends : {&keep_out.pan_rad, &keep_out.tilt_rad}) {
      for (const Quantity& end : *ends)
        row.cells << quantity_cell(end, keep_out_pan_info(), page.theme());
    }
    rows.push_back(row);
  }
  page.heading(Plots::tr("Keep-outs"));
  draw_table(page,
             {{Plots::tr("Keep-out"), 1.6, false},
              {Plots::tr("Pan from"), 1, true},
              {Plots::tr("Pan to"), 1, true},
              {Plots::tr("Tilt from"), 1, true},
              {Plots::tr("Tilt to"), 1, true}},
             rows);
}

/// Lines with their parts as titles, in as many cells as `of` gives.
template <class CellsOf>
std::vector<TableCells> with_titles(const std::vector<InputLine>& lines, qsizetype columns,
                                    CellsOf of) {
  std::vector<TableCells> rows;
  QString part;
  for (const InputLine& line : lines) {
    if (line.part != part) {
      TableCells title(columns);
      title[0] = {line.part, {7.8, true}, {}};
      rows.push_back(title);
    }
    part = line.part;
    rows.push_back(of(line));
  }
  return rows;
}

/// Parts that are made, mounted or wired by these values.
bool is_to_build(const QString& key) {
  static const QStringList kBuilt{QStringLiteral("stops"),   QStringLiteral("homing"),
                                  QStringLiteral("bearing"), QStringLiteral("joint"),
                                  QStringLiteral("cable"),   QStringLiteral("arm"),
                                  QStringLiteral("supply")};
  return kBuilt.contains(key);
}

/// The inputs of the parts that are built, or of all others: those of the rig, then those of the
/// axes side by side. @param rig  may be written: the field tables point into it
void draw_lines(SheetPage& page, Rig& rig, bool to_build) {
  std::vector<InputLine> shared, of_axes;
  for (const InputLine& line : lines_of(rig, page.theme()))
    if (is_to_build(line.key) == to_build) (line.both ? shared : of_axes).push_back(line);
  const auto cell = [](const std::optional<TableCell>& c) { return c.value_or(TableCell{}); };
  const auto draw_shared = [&] {
    draw_in_two(page,
                with_titles(shared, 2,
                            [&](const InputLine& line) {
                              return TableCells{{line.label, {7.5}, {}}, cell(line.both)};
                            }),
                {{Plots::tr("Input"), 1.4, false}, {Plots::tr("Value"), 1.4, false}});
  };
  const auto draw_axes = [&] {
    draw_in_two(
        page,
        with_titles(of_axes, 3,
                    [&](const InputLine& line) {
                      return TableCells{{line.label, {7.5}, {}}, cell(line.pan), cell(line.tilt)};
                    }),
        {{Plots::tr("Input"), 1.3, false},
         {Plots::tr("Pan"), 1, false},
         {Plots::tr("Tilt"), 1, false}});
  };
  if (to_build) {
    draw_axes();
    page.skip(8);
    draw_shared();
  } else {
    draw_shared();
    page.skip(8);
    draw_axes();
  }
}

/// What the figures take from the user's own data files, with its source.
void draw_own_data(SheetPage& page, const Rig& rig) {
  std::vector<TableRow> rows;
  for (const OwnValue& value : own_values_of(rig)) {
    TableRow row;
    for (const std::string& text : {value.row, value.key, value.written, value.source, value.file})
      row.cells << TableCell{qstring(text), {7.5}, {}};
    rows.push_back(row);
  }
  if (rows.empty()) return;
  page.heading(Plots::tr("From own data files"));
  page.paragraph(Plots::tr("Values of the trade that are not the built-in ones."),
                 {7.5, false, page.theme().quiet});
  draw_table(page,
             {{Plots::tr("Row"), 1.2, false},
              {Plots::tr("Value of"), 1.2, false},
              {Plots::tr("Value"), 1, false},
              {Plots::tr("Source"), 3, false},
              {Plots::tr("File"), 1.2, false}},
             rows);
}

}  // namespace

QString source_text(Source source) {
  switch (source) {
    case Source::measured:
      return Plots::tr("measured");
    case Source::datasheet:
      return Plots::tr("datasheet");
    case Source::estimate:
      return Plots::tr("estimate");
    case Source::by_default:
      return Plots::tr("default");
    case Source::unstated:
      break;
  }
  return Plots::tr("source not stated");
}

void draw_sizes(SheetPage& page, const SheetContent& content) {
  page.heading(Plots::tr("Stops, screws, bearings, wiring and supply"));
  Rig rig = content.rig;
  draw_lines(page, rig, true);
  draw_bodies(page, rig);
  draw_keep_outs(page, rig);
}

void draw_inputs(SheetPage& page, const SheetContent& content) {
  page.heading(Plots::tr("Assumptions"));
  page.paragraph(
      Plots::tr("Every input as it was written, with its spread and source where they are stated. "
                "What nobody gave is marked default or missing. Stops, screws, bearings, wiring, "
                "supply and bodies stand with what is needed to build."),
      {7.5, false, page.theme().quiet});
  Rig rig = content.rig;
  draw_lines(page, rig, false);
  draw_own_data(page, rig);
}

}  // namespace gazewright
