#include "core/shelf/fit.h"

#include <algorithm>
#include <cmath>

#include "app/batch/output.h"
#include "app/batch/shelf_choice.h"
#include "app/batch/verbs.h"
#include "core/analysis/say.h"
#include "core/files/missing_places.h"

namespace gazewright::batch {
namespace {

const std::string& name_at(const Shelf& shelf, std::size_t entry) {
  return shelf.entries[entry].part.name;
}
std::optional<double> finite(double value) {
  return std::isfinite(value) ? std::optional(value) : std::nullopt;
}
std::string milliseconds(const std::optional<double>& time_s, const char* without) {
  return time_s ? say(*time_s, "s", "ms") : without;
}
std::string parts_in_words(const Shelf& shelf, const FitParts& parts) {
  std::string text =
      one_line(name_at(shelf, parts.motor)) + " with " + one_line(name_at(shelf, parts.gearbox));
  if (parts.drive) text += ", " + one_line(name_at(shelf, *parts.drive));
  return text;
}

std::string failing_in_words(const FitSimulated& simulated) {
  constexpr std::size_t kMost = 3;
  std::string text;
  for (std::size_t i = 0; i < std::min(kMost, simulated.failing.size()); ++i)
    text += (i == 0 ? "\n     fails: " : ", ") + simulated.failing[i];
  return text + (simulated.failing.size() > kMost ? " ..." : "");
}

std::string no_gains_in_words(const FitSimulated& simulated) {
  std::string text;
  for (const Axis axis : kAxes)
    if (const auto& why = simulated.no_gains[static_cast<std::size_t>(axis)]; !why.empty())
      text +=
          std::string("\n     no gains are advised for ") + gazewright::name_of(axis) + ": " + why;
  return text;
}

std::string settling_in_words(const FitSimulated& simulated) {
  if (!simulated.settle_needs.empty())
    return "settling unknown: " + say_needs(simulated.settle_needs, 2);
  const auto slower_s = simulated.slower_s();
  return slower_s ? "settles in " + say(*slower_s, "s", "ms") : "never settles";
}

std::string simulated_in_words(const FitRow& row) {
  if (!row.simulated) return {};
  const FitSimulated& s = *row.simulated;
  return "; simulated: " + settling_in_words(s) + ", findings: " + std::to_string(s.fails) +
         " fail, " + std::to_string(s.tight) + " tight, " + std::to_string(s.unknown) + " unknown" +
         failing_in_words(s) + no_gains_in_words(s);
}

std::string counts_of(const Fits& fits) {
  std::string text = std::to_string(fits.combinations) +
                     " combinations: " + std::to_string(fits.fitting) + " fit, " +
                     std::to_string(fits.failing) + " fail, " + std::to_string(fits.lacking) +
                     " lack data\n";
  for (const FitLimit limit : kFitLimits)
    if (const std::size_t count = fits.failing_by[static_cast<std::size_t>(limit)]; count > 0)
      text += "  " + std::to_string(count) + " by the " + words_of(limit) + '\n';
  if (fits.compared > 0)
    text += "of " + std::to_string(fits.compared) + " pairs of the simulated ones " +
            std::to_string(fits.same_order) + " stand in the order of the ranking\n";
  return text;
}

std::string table_of(const Fits& fits, const Shelf& shelf) {
  std::string text = counts_of(fits);
  for (const FitRow& row : fits.rows) {
    text += '\n' + padded_left(std::to_string(row.rank), 3) + "  " +
            milliseconds(finite(std::max(row.time_s[0], row.time_s[1])), "no move") + ", " +
            say(row.mass_kg, "kg", "g") + simulated_in_words(row) + '\n';
    for (const Axis axis : kAxes)
      text += "     " + padded(gazewright::name_of(axis), 5) +
              parts_in_words(shelf, row.parts[static_cast<std::size_t>(axis)]) + '\n';
    text += "     " + one_line(row.reason) + '\n';
  }
  for (const FitNeeds& needs : fits.needs)
    text += "\nnot ranked: " + one_line(name_at(shelf, needs.entry)) + ' ' +
            say_needs(needs.fields) + '\n';
  for (const std::string& remark : fits.remarks) text += "\nnote: " + remark + '\n';
  return text;
}

std::string csv_of(const Fits& fits, const Shelf& shelf) {
  std::string text =
      "rank,verdict,pan_motor,pan_gearbox,pan_drive,tilt_motor,tilt_gearbox,tilt_drive,"
      "pan_time_s,tilt_time_s,margin,mass_kg,pan_settle_s,tilt_settle_s,findings_fail,reason\n";
  for (const FitRow& row : fits.rows) {
    text += std::to_string(row.rank) + (row.fits ? ",fits" : ",fails");
    for (const FitParts& parts : row.parts)
      text += ',' + csv_field(name_at(shelf, parts.motor)) + ',' +
              csv_field(name_at(shelf, parts.gearbox)) + ',' +
              (parts.drive ? csv_field(name_at(shelf, *parts.drive)) : "");
    for (const double time_s : row.time_s) text += ',' + cell(finite(time_s));
    text += ',' + cell(row.margin) + ',' + number(row.mass_kg);
    for (std::size_t i = 0; i < 2; ++i)
      text += ',' + (row.simulated ? cell(row.simulated->settle_s[i]) : std::string());
    text += ',' + (row.simulated ? std::to_string(row.simulated->fails) : std::string()) + ',' +
            csv_field(row.reason) + '\n';
  }
  return text;
}

std::string json_of(const FitRow& row, const Shelf& shelf) {
  std::string text = "{\"rank\": " + std::to_string(row.rank) +
                     ", \"verdict\": " + (row.fits ? "\"fits\"" : "\"fails\"");
  for (const Axis axis : kAxes) {
    const auto i = static_cast<std::size_t>(axis);
    const FitParts& parts = row.parts[i];
    text += std::string(", \"") + gazewright::name_of(axis) +
            "\": {\"motor\": " + json_string(name_at(shelf, parts.motor)) +
            ", \"gearbox\": " + json_string(name_at(shelf, parts.gearbox)) +
            ", \"drive\": " + (parts.drive ? json_string(name_at(shelf, *parts.drive)) : "null") +
            ", \"time\": " + json_or_null(finite(row.time_s[i])) + ", \"settle\": " +
            json_or_null(row.simulated ? row.simulated->settle_s[i] : std::nullopt) + '}';
  }
  text += ", \"settle_needs\": [";
  if (row.simulated)
    for (const std::string& path : row.simulated->settle_needs)
      text += (text.ends_with('[') ? "" : ", ") + json_string(path);
  text += "], \"margin\": " + json_or_null(row.margin) + ", \"mass\": " + number(row.mass_kg) +
          ", \"findings_fail\": " +
          (row.simulated ? std::to_string(row.simulated->fails) : std::string("null")) +
          ", \"reason\": " + json_string(row.reason) + ", \"values\": {";
  for (std::size_t i = 0; i < row.values.size(); ++i)
    text += (i > 0 ? ", " : "") + json_string(row.values[i].path) + ": " +
            number(row.values[i].value_si);
  return text + "}}";
}

std::string json_of(const Rig& rig, const Fits& fits, const Shelf& shelf) {
  const auto list = [](const auto& items, auto text_of) {
    std::string text;
    for (const auto& item : items) text += (text.empty() ? "\n    " : ",\n    ") + text_of(item);
    return '[' + text + (items.empty() ? "]" : "\n  ]");
  };
  std::string by;
  for (const FitLimit limit : kFitLimits)
    by += (by.empty() ? "" : ", ") + json_string(words_of(limit)) + ": " +
          std::to_string(fits.failing_by[static_cast<std::size_t>(limit)]);
  return "{\n  \"rig\": " + json_string(rig.title) +
         ",\n  \"combinations\": " + std::to_string(fits.combinations) +
         ",\n  \"fitting\": " + std::to_string(fits.fitting) +
         ",\n  \"failing\": " + std::to_string(fits.failing) +
         ",\n  \"lacking\": " + std::to_string(fits.lacking) + ",\n  \"failing_by\": {" + by +
         "},\n  \"pairs\": " + std::to_string(fits.compared) +
         ",\n  \"pairs_in_order\": " + std::to_string(fits.same_order) + ",\n  \"rows\": " +
         list(fits.rows, [&](const FitRow& row) { return json_of(row, shelf); }) +
         ",\n  \"needs\": " +
         list(fits.needs,
              [&](const FitNeeds& needs) {
                return "{\"part\": " + json_string(name_at(shelf, needs.entry)) +
                       ", \"because\": " + json_string(say_needs(needs.fields)) + '}';
              }) +
         ",\n  \"remarks\": " +
         list(fits.remarks, [](const std::string& remark) { return json_string(remark); }) +
         ",\n  \"also_missing\": " +
         list(fits.also_missing, [](const std::string& path) { return json_string(path); }) +
         "\n}\n";
}

/// Which gains the saved rig goes without, and why.
void tell_missing_gains(const FitRow& row) {
  if (!row.simulated) {
    complain("no gains are written: the first row cannot move, so it was not simulated", {}, kDone);
    return;
  }
  for (const Axis axis : kAxes)
    if (const auto& why = row.simulated->no_gains[static_cast<std::size_t>(axis)]; !why.empty())
      complain(std::string("no gains are written for ") + gazewright::name_of(axis) + ": " + why,
               {}, kDone);
}

/// What keeps single measures, the simulation and the gains from being known, with place and mend.
void tell_also_missing(const Fits& fits, const LoadedRig& loaded, const Command& command) {
  if (fits.also_missing.empty()) return;
  complain("without these not every measure, settling time and gain can be given", {}, kDone);
  auto places = places_of_missing(loaded.text, command.file(), fits.also_missing);
  for (Diagnostic& place : places) place.weight = Diagnostic::Weight::warning;
  tell(places);
}

int save_best(const LoadedRig& loaded, const Fits& fits, const Shelf& shelf,
              const std::string& file) {
  if (fits.rows.empty())
    return complain("no combination can be ranked, so there is no rig to save",
                    "give the parts of the shelf the data that they need", kBadRig);
  const FitRow& best = fits.rows.front();
  const int status = write_text(file, write_rig(with_fit(*loaded.rig, shelf, best), loaded.text));
  if (status == kDone) tell_missing_gains(best);
  return status;
}

}  // namespace

int run_fit(const LoadedRig& loaded, const Command& command) {
  const Rig& rig = *loaded.rig;
  const auto shelf = chosen_shelf(command);
  if (!shelf) return kBadRig;
  const Fits fits = rank_fits(rig, *shelf, {.drives = command.drives, .most = command.most});
  if (!fits.because.empty()) {
    const int status = complain_of_missing("a ranking", fits.because, loaded, command.file());
    tell_also_missing(fits, loaded, command);
    return status;
  }
  tell_also_missing(fits, loaded, command);
  if (!command.save.empty())
    if (const int status = save_best(loaded, fits, *shelf, command.save); status != kDone)
      return status;
  const Form form = command.form.value_or(Form::table);
  return write_out(form == Form::json  ? json_of(rig, fits, *shelf)
                   : form == Form::csv ? csv_of(fits, *shelf)
                                       : table_of(fits, *shelf));
}

}  // namespace gazewright::batch
