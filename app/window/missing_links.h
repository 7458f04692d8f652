#pragma once

#include <QLabel>
#include <QString>
#include <span>

#include "core/analysis/missing.h"

namespace gazewright {

/// Entries of a rig as links to their fields, by card: "Pan motor: rotor inertia (63)". Rich text.
/// @param counted  with how much waits for each, in brackets
QString missing_links(const Rig& rig, std::span<const MissingEntry> entries, bool counted);
/// The same of paths alone.
QString missing_links(const Rig& rig, std::span<const std::string> paths);

/// "12 figures, 9 findings"; what there is none of is left out.
QString waiting_text(std::size_t figures, std::size_t findings);

/// Rich text with links, for mouse and keyboard. The path of the one that is pressed comes with
/// linkActivated().
QLabel* linksLabel(const QString& name);
/// The text of a label without its tags.
QString plain_text(const QLabel& label);

}  // namespace gazewright
