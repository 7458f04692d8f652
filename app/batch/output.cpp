#include "app/batch/output.h"

#include <cerrno>
#include <charconv>
#include <cmath>
#include <cstdio>
#include <cstring>

#include "core/analysis/missing.h"
#include "core/files/missing_places.h"
#include "core/units/units.h"

namespace gazewright::batch {

std::string number(double value) {
  char text[40];
  return {text, std::to_chars(text, text + sizeof text, value).ptr};
}

std::string cell(const std::optional<double>& value) {
  return value && std::isfinite(*value) ? number(*value) : std::string();
}

std::string csv_line(const std::vector<double>& values) {
  std::string text;
  for (const double& value : values) text += (&value == values.data() ? "" : ",") + number(value);
  return text + '\n';
}

std::string rounded(double value) {
  // Integers of up to six digits stay whole; 1280 columns are not 1.28e+03.
  const double size = std::abs(value);
  char text[40];
  std::to_chars_result end{};
  if (size >= 100 && size < 1e6) {
    const double whole = std::pow(10, std::floor(std::log10(size)) - 2);
    end = std::to_chars(text, text + sizeof text, std::round(value / whole) * whole,
                        std::chars_format::fixed, 0);
  } else {
    end = std::to_chars(text, text + sizeof text, value, std::chars_format::general, 3);
  }
  std::string shown(text, end.ptr);
  if (shown.starts_with('-')) shown.replace(0, 1, "−");
  return shown;
}

Shown shown(double value_si, std::string_view si_unit, std::string_view unit) {
  const double value = from_si(value_si, si_unit, unit);
  return {rounded(value), unit == "1" ? "" : pretty_unit(unit)};
}

std::string with_unit(const Shown& value) {
  if (value.unit.empty()) return value.value;
  return value.value + (value.unit == "°" ? "" : " ") + value.unit;
}

int write_out(std::string_view text, int status) {
  errno = 0;
  const bool written = std::fwrite(text.data(), 1, text.size(), stdout) == text.size();
  if (written && std::fflush(stdout) == 0) return status;
  if (errno == EPIPE)
    return complain("the reader of the output went away before everything was written",
                    "let it read to the end, or write to a file", kNotWritten);
  return complain("the output could not be written: " + std::string(std::strerror(errno)),
                  "make room or write somewhere else", kNotWritten);
}

int write_text(const std::string& file, std::string_view text) {
  if (file.empty()) return write_out(text);
  const auto problem = save_text(file, text);
  return problem ? complain(to_text(*problem), {}, kNotWritten) : kDone;
}

int complain(std::string_view problem, std::string_view fix, int status) {
  std::string text = "gazewright-batch: " + std::string(problem) + '\n';
  if (!fix.empty()) text += "  fix: " + std::string(fix) + '\n';
  std::fwrite(text.data(), 1, text.size(), stderr);
  return status;
}

int complain_of_missing(std::string_view what, std::string_view because, const LoadedRig& loaded,
                        const std::string& file) {
  complain("the rig cannot give " + std::string(what) + ": it " + std::string(because),
           "add the missing values to the rig file", kBadRig);
  tell(places_of_missing(loaded.text, file, needs_in(because)));
  return kBadRig;
}

void tell(const std::vector<Diagnostic>& diagnostics) {
  for (const Diagnostic& diagnostic : diagnostics) {
    const std::string text = to_text(diagnostic) + '\n';
    std::fwrite(text.data(), 1, text.size(), stderr);
  }
}

}  // namespace gazewright::batch
