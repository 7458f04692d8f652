#pragma once

#include <string>

#include "app/batch/options.h"
#include "core/analysis/analysis.h"
#include "core/analysis/missing.h"
#include "core/files/rig_file.h"

/// What each verb does with a rig that was read; every one returns an exit status. Those that write
/// a rig file, or may say where an entry is missing, get its text too.
/// @pre the rig of a LoadedRig is there
namespace gazewright::batch {

int run_figures(const Rig& rig, const Command& command);
int run_trace(const LoadedRig& loaded, const Command& command);
int run_sweep(const LoadedRig& loaded, const Command& command);
int run_travel(const LoadedRig& loaded, const Command& command);
int run_track(const LoadedRig& loaded, const Command& command);
int run_compare(const Rig& rig, const Command& command);
int run_doubts(const Rig& rig, const Command& command);
int run_settings(const Rig& rig, const Command& command);
int run_parts(const Rig& rig, const Command& command);
int run_sheet(const Rig& rig, const Command& command);
int run_shelf(const Command& command);  ///< needs no rig
int run_fit(const LoadedRig& loaded, const Command& command);

/// The three forms of `figures`.
std::string figures_table(const Rig& rig, const Analysis& analysis);
std::string figures_csv(const Analysis& analysis);
std::string figures_json(const Rig& rig, const Analysis& analysis);

/// What is missing, what waits for it and what to enter first: as lines of the table, nothing where
/// nothing is missing; and as an object of JSON.
std::string missing_table(const MissingInputs& missing);
std::string missing_json(const MissingInputs& missing);

/// Help of the whole program (no verb) or of one verb.
std::string help_text(std::optional<Verb> verb);

/// The whole program: arguments after its name to an exit status.
int run(std::span<const std::string_view> arguments);

}  // namespace gazewright::batch
