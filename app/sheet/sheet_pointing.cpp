#include "app/plots/charts.h"
#include "app/plots/format.h"
#include "app/plots/picture_plot.h"
#include "app/plots/text.h"
#include "app/sheet/sheet_sections.h"
#include "app/sheet/sheet_table.h"

/// What makes each axis point amiss, what would change it, and what turning does to the picture.
namespace gazewright {
namespace {

const TextStyle kPlain{7.5}, kBold{7.5, true};

TableCell cell(const QString& text, const TextStyle& style = kPlain) { return {text, style, {}}; }

/// An angle as degrees, pixels and millimetres at the target; the last two where they are known.
struct Angles {
  std::optional<double> px_per_rad, distance_m;

  explicit Angles(const SheetContent& content)
      : px_per_rad(content.analysis.value("camera.pixels_per_radian")),
        distance_m(content.rig.task.target_distance_m.si) {}

  QVector<TableCell> cells(const QString& name, double rad, const TextStyle& style) const {
    const auto times = [rad](std::optional<double> factor) {
      return factor ? std::optional(rad * *factor) : std::nullopt;
    };
    return {cell(name, style), cell(format_value(rad, "rad", "deg"), style),
            cell(format_value(times(px_per_rad), "1", "px"), style),
            cell(format_value(times(distance_m), "m", "mm"), style)};
  }
};

void add_sum(std::vector<TableRow>& rows, const SheetContent& content, const Angles& angles,
             Axis axis, const char* figure, const QString& name) {
  const auto rad = content.analysis.value(chart_parts::figure_id(axis, figure));
  if (!rad) return;
  TableRow row;
  row.cells = angles.cells(name, *rad, kBold);
  row.cells << cell({}) << cell({}) << cell({});
  rows.push_back(row);
}

void add_axis(std::vector<TableRow>& rows, const SheetContent& content, const Angles& angles,
              Axis axis) {
  const PointingBudget& budget = content.analysis.pointing[std::size_t(axis)];
  rows.push_back({axis_word(axis), {}});
  double squares = 0;
  for (const PointingTerm& term : budget.terms) squares += term.deviation_rad * term.deviation_rad;
  for (const PointingTerm& term : budget.terms) {
    TableRow row;
    row.cells = angles.cells(pointing_word(term.id), term.half_width_rad, kPlain);
    const double part = squares > 0 ? term.deviation_rad * term.deviation_rad / squares : 0;
    row.cells << cell(QString::fromStdString(term.distribution))
              << cell(format_value(term.deviation_rad, "rad", "deg"))
              << cell(format_value(part, "1", "%", 2));
    rows.push_back(row);
  }
  add_sum(rows, content, angles, axis, "pointing.rss", Plots::tr("Root-sum-square of the largest"));
  add_sum(rows, content, angles, axis, "pointing.worst", Plots::tr("Worst case, their sum"));
  add_sum(rows, content, angles, axis, "pointing.expanded",
          Plots::tr("Expanded, twice the combined deviation"));
}

void draw_budget(SheetPage& page, const SheetContent& content) {
  std::vector<TableRow> rows;
  const Angles angles(content);
  for (const Axis axis : kAxes)
    if (!content.analysis.pointing[std::size_t(axis)].terms.empty())
      add_axis(rows, content, angles, axis);
  if (!rows.empty())
    draw_table(page,
               {{Plots::tr("Error"), 2.2, false},
                {Plots::tr("Largest, ±"), 1, true},
                {Plots::tr("In the picture"), 1, true},
                {Plots::tr("At the target"), 1, true},
                {Plots::tr("Distribution"), 1.9, false},
                {Plots::tr("Deviation"), 1, true},
                {Plots::tr("Part"), 0.6, true}},
               rows);
  for (const Axis axis : kAxes) {
    QStringList reasons;
    for (const std::string& why : content.analysis.pointing[std::size_t(axis)].missing)
      reasons << reason_text(why);
    if (reasons.isEmpty()) continue;
    page.skip(2);
    page.paragraph(
        Plots::tr("%1, not counted: %2.").arg(axis_word(axis), reasons.join(QStringLiteral("; "))),
        {7, false, page.theme().quiet});
  }
}

/// A row of figures of both axes.
TableRow of_axes(const SheetContent& content, const QString& name, const char* figure) {
  TableRow row;
  row.cells = {cell(name)};
  for (const Axis axis : kAxes)
    row.cells << cell(figure_text(content.analysis.figure(chart_parts::figure_id(axis, figure))));
  return row;
}

void draw_other_ways(SheetPage& page, const SheetContent& content) {
  page.skip(6);
  page.paragraph(Plots::tr("The same root-sum-square if it were built otherwise, with the same "
                           "encoder, and what would hold the teeth on one side."),
                 {7.5, false, page.theme().quiet});
  draw_table(
      page,
      {{Plots::tr("Otherwise"), 3, false},
       {Plots::tr("Pan"), 1, true},
       {Plots::tr("Tilt"), 1, true}},
      {of_axes(content, Plots::tr("Encoder at the motor"), "pointing.rss_motor_side"),
       of_axes(content, Plots::tr("Encoder at the output"), "pointing.rss_output_side"),
       of_axes(content, Plots::tr("Teeth held together by preload or bias"), "pointing.rss_held"),
       of_axes(content, Plots::tr("Pull of weight and cable that holds them everywhere"),
               "pointing.teeth_torque"),
       of_axes(content, Plots::tr("Bias that is missing for it"), "pointing.bias_needed")});
}

TableRow speed_row(const QString& name, std::optional<double> speed_radps,
                   std::optional<double> blur_px, std::optional<double> skew_px) {
  TableRow row;
  row.cells = {cell(name), cell(format_value(speed_radps, "rad/s", "deg/s")),
               cell(format_value(blur_px, "1", "px")), cell(format_value(skew_px, "1", "px"))};
  return row;
}

void draw_speeds(SheetPage& page, const SheetContent& content) {
  const Analysis& a = content.analysis;
  if (!a.value("camera.sharp_speed")) return;
  page.skip(6);
  page.paragraph(
      Plots::tr("Turning while a picture is taken: smear over the exposure, lean or "
                "stretch over the readout of a rolling shutter (none with a global one). "
                "Following: less smear in 95 % of the pictures."),
      {7.5, false, page.theme().quiet});
  std::vector<TableRow> rows;
  for (const DetectorRun& run : a.tracking.detectors)
    rows.push_back(speed_row(Plots::tr("Following, %1").arg(QString::fromStdString(run.name)),
                             a.tracking.peak_speed_radps[0], run.blur_px, run.skew_px));
  rows.push_back(speed_row(Plots::tr("Pan at top speed, if the loop's limit fails"),
                           a.value("pan.output.speed_top"), a.value("camera.blur_px"),
                           a.value("camera.skew_px")));
  rows.push_back(speed_row(Plots::tr("Tilt at top speed, if the loop's limit fails"),
                           a.value("tilt.output.speed_top"), a.value("camera.blur_tilt_px"),
                           a.value("camera.skew_tilt_px")));
  rows.push_back(
      speed_row(Plots::tr("Smear of one pixel"), a.value("camera.sharp_speed"), 1.0, {}));
  if (const auto straight = a.value("camera.straight_speed"))
    rows.push_back(speed_row(Plots::tr("Lean of one pixel"), straight, {}, 1.0));
  draw_table(page,
             {{Plots::tr("Turning"), 3, false},
              {Plots::tr("Speed"), 1, true},
              {Plots::tr("Smear"), 1, true},
              {Plots::tr("Lean"), 1, true}},
             rows);
}

}  // namespace

void draw_pointing(SheetPage& page, const SheetContent& content) {
  page.ensure(120);
  page.heading(Plots::tr("Pointing"));
  page.paragraph(
      Plots::tr("How far off each axis may look where it stands, and by what. Combined by the GUM "
                "(JCGM 100): parts by the square of their standard deviations; 95 of 100 errors "
                "are within the expanded one."),
      {7.5, false, page.theme().quiet});
  draw_budget(page, content);
  draw_other_ways(page, content);
  draw_speeds(page, content);
}

}  // namespace gazewright
