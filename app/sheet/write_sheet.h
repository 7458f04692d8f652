#pragma once

#include <array>
#include <filesystem>
#include <optional>
#include <string>

#include "core/analysis/analysis.h"
#include "core/analysis/compare.h"
#include "core/analysis/doubts.h"
#include "core/analysis/sweep.h"
#include "core/files/rig_file.h"

/// The design sheet: a PDF to build from. This header knows no Qt, so that the batch program can
/// call it.
namespace gazewright {

enum class Paper { a4, letter };

struct SheetOptions {
  Paper paper = Paper::a4;
  std::string date;                      ///< as it shall read; empty: today
  std::string file_name;                 ///< of the rig file, for the title block
  std::string revision;                  ///< empty: a blank line to write on
  std::optional<Comparison> comparison;  ///< with the rig's variants; empty: left out
  std::optional<Doubts> doubts{};        ///< of the analysis; empty: left out
};

/// Writes the sheet. Needs no display: where the program has no QApplication, one is made on the
/// offscreen platform. The file is replaced only when the whole sheet is written; a missing folder,
/// a full disk or a read-only target is a sentence and leaves the old file. Empty: done.
/// @param sweeps  by Axis; null leaves the plot of time against ratio out.
std::optional<Diagnostic> write_sheet(const Rig& rig, const Analysis& analysis,
                                      const std::array<RatioSweep, 2>* sweeps,
                                      const std::filesystem::path& out,
                                      const SheetOptions& options = {});

}  // namespace gazewright
