#pragma once

#include <QString>
#include <string_view>

#include "app/plots/plot_view.h"

/// Where the handbook speaks of something on screen.
namespace gazewright {

struct HelpPlace {
  QString page;     ///< "motion.md"
  QString section;  ///< heading, or words that are there; empty: the page's top
  bool operator==(const HelpPlace&) const = default;
};

/// Of a field or of the card of a part: "pan.motor.rotor_inertia", "on_tilt[0]", "task".
HelpPlace help_for_part(std::string_view path);
HelpPlace help_for_plot(PlotKind kind);
HelpPlace help_for_finding(std::string_view id);
HelpPlace help_for_figure(const FigureInfo& info);
/// A heading of the page about the window: "Findings", "Drive lines", "Drawing".
HelpPlace help_for_window(const QString& section);

}  // namespace gazewright
