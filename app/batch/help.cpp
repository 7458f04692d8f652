#include "app/batch/verbs.h"

/// The help is the manual: whoever reads it can use the program.
namespace gazewright::batch {
namespace {

constexpr const char* kProgram =
    R"(gazewright-batch: figures, traces, sweeps and the design sheet of a pan-tilt rig, without a display

  gazewright-batch VERB [options] RIG

RIG is a rig file (.rig.yaml), or - to read it from standard input. Options may stand before or
after it; -- ends them, for a file whose name begins with -.

Verbs
  figures RIG [--json | --csv] [--strict]
      Every figure and finding of the rig: a table to read, JSON or CSV in SI units.
  trace RIG --axis pan|tilt [--profile NAME] [--for TIME]
      The step response of one axis, or its move along a profile, as CSV, a row for each control
      sample.
  trace RIG --both [--hold pan|tilt] [--for TIME]
      The same of both axes at once, which push each other and share the supply.
  sweep RIG --axis pan|tilt --ratio FROM:TO:STEP
      Times, torque, speed and acceleration of one axis against its gear ratio, as CSV.
  travel RIG [--step ANGLE] [--out FILE.csv]
      Which poses of pan and tilt can be reached, and what keeps it from the others, as CSV.
  track RIG [--path FILE.csv [--save FILE.rig.yaml]] [--out FILE.csv]
      How each detector keeps the target in the picture over time, as CSV.
  compare RIG [--json | --csv] [--all]
      The present design and the variants of the rig side by side.
  doubts RIG [--json | --csv]
      How far the main figures can be trusted, and which value is worth measuring first.
  settings RIG [--json | --csv]
      What to set in the drive of each axis, and with what to begin at the first power-up.
  parts RIG [--json | --csv]
      Which part goes where: number, name, axis, main figures, mass.
  sheet RIG --out FILE.pdf [--paper a4|letter]
      The design sheet to build from, as PDF.
  shelf [--list] [--shelf DIR]
      Your parts shelf: where it is, and which parts are on it.
  fit RIG [--shelf DIR] [--drives] [--most N] [--json | --csv] [--save FILE.rig.yaml]
      Which motors and gearboxes of the shelf fit the rig best, on both axes.

Values of the trade (materials, screws, wires ...) are built in; files of the same form in the
folder gazewright/data of $XDG_DATA_HOME (else ~/.local/share) add to them or change them. Every
verb takes --data FOLDER to use another folder; what is wrong in it is named and the rest is used.

  gazewright-batch VERB --help    says more about a verb
  gazewright-batch --version      says which version this is

Examples
  gazewright-batch figures sample-rigs/quick-newt.rig.yaml
  gazewright-batch figures --json owl.rig.yaml > owl.json
  gazewright-batch sweep owl.rig.yaml --axis pan --ratio 4:40:0.5 > pan.csv
  gazewright-batch sheet owl.rig.yaml --out owl.pdf

Exit status
  0  done
  1  done, and a finding fails (figures --strict only)
  2  wrong usage
  3  the rig file cannot be read or is not valid, or it lacks what the verb needs
  4  the result could not be written

Results go to standard output. Problems and warnings go to standard error, those of a rig file as
file:line:column with a mend below. Numbers have a decimal point in every locale.
)";

constexpr const char* kFigures =
    R"(gazewright-batch figures RIG [--json | --csv] [--strict]

Prints every figure and every finding of the rig.

  (no option)  a table to read: inputs that are missing, and the few to fill in first; findings with
               verdict, demand, capacity, margin, reason and remedy, the worst first; then the
               figures, three significant digits in everyday units, and the homing plan of each
               axis
  --json       {"rig": title, "figures": {id: number or null}, "findings": [{"id", "axis",
               "verdict", "demand", "capacity", "margin", "because", "remedy"}],
               "homing": {"pan": [step, ...], "tilt": [step, ...]},
               "missing": {"figures": how many wait, "findings", "first": [entry], "then":
               {"figures", "findings"}, "entries": [entry]}}, an entry being {"path", "part",
               "label", "figures", "findings"}, the one that most waits for first; "first" are the
               few to begin with, "then" what waits for nothing else;
               and, where figures rest on your own data files, "own_data": [{"file", "row", "key",
               "value", "source"}],
               in SI units with every digit; axis is pan, tilt or both; verdict is holds, tight,
               fails or unknown; what is not known is null
  --csv        columns id, value, unit, because: the figures in SI units with every digit; an empty
               value has its reason in the last column
  --strict     exit status 1 where a finding fails, for scripts that guard a rig

A figure whose inputs are missing is unknown: empty, with the reason. It is never zero. An axis that
cannot move or never settles is an answer too: the figure is empty and a finding says why.

Examples
  gazewright-batch figures owl.rig.yaml
  gazewright-batch figures owl.rig.yaml --strict --csv > figures.csv || echo "look at the findings"
  gazewright-batch figures owl.rig.yaml --json | python3 -c \
    'import json,sys; print(json.load(sys.stdin)["figures"]["pan.step.settle_time"])'
)";

constexpr const char* kTrace =
    R"(gazewright-batch trace RIG --axis pan|tilt [--profile NAME] [--for TIME]
gazewright-batch trace RIG --both [--hold pan|tilt] [--for TIME]

Prints the answer of one axis to a step by its task move, from rest, as CSV. There is one row for
each control sample, the first at time 0.

  --axis     the axis, pan or tilt; the other one is taken to stand still and to draw nothing
  --profile  with --axis: the planned move it follows instead of the step: trapezoid, jerk-limited,
             minimum-jerk or minimum-time; step is what it does without
  --both     both axes make their moves at once: they push each other, and share the supply
  --hold     with --both: this axis holds its place while the other one moves
  --for      how long: seconds, or a number with a unit; up to 60 s, 0.6 s where not given

Columns
  time_s           time since the step, or since the planned move began
  angle_rad        angle of the output, from where the step began
  speed_rad_s      speed of the output
  motor_angle_rad  angle of the motor; over the ratio it leads or lags the output by up to half
                   the backlash, and the wind-up of the gearbox
  current_A        phase current amplitude that acts, signed as its torque
  bus_A            current from the supply; negative where the motor returns energy

With --both the columns are time_s, then these of each axis as pan_angle_rad ... pan_current_A and
tilt_angle_rad ... tilt_current_A, then bus_A of both together; there is one row for each control
sample of the quicker drive.

Where the rig lacks an input of the step, nothing is printed, a sentence names it and the exit
status is 3.

Examples
  gazewright-batch trace owl.rig.yaml --axis pan > pan.csv
  gazewright-batch trace owl.rig.yaml --axis tilt --for "250 ms" > tilt.csv
  gazewright-batch trace owl.rig.yaml --axis pan --profile jerk-limited > smooth.csv
  gazewright-batch trace owl.rig.yaml --both > both.csv
)";

constexpr const char* kSweep =
    R"(gazewright-batch sweep RIG --axis pan|tilt --ratio FROM:TO:STEP

Prints what one axis does at each gear ratio, everything else as in the rig, as CSV.

  --axis   the axis, pan or tilt
  --ratio  the ratios: first, last and step, 10000 at most; 4:40:0.5 is 4, 4.5, 5 ... 40

Columns
  ratio                motor speed over output speed
  shortest_time_s      the task move from rest to rest with ideal switching of the torque
  settle_time_s        the same move through the loop, until it stays inside the settle band
  peak_torque_Nm       at the output, standing still
  top_speed_rad_s      at the output
  acceleration_rad_s2  from rest at the rest pose

An empty cell is an answer that does not exist at that ratio (it cannot move, or does not settle
while it is watched) or that lacks an input. Where the rig lacks what the whole sweep needs, a
sentence names it and the exit status is 3.

Example
  gazewright-batch sweep owl.rig.yaml --axis pan --ratio 4:40:0.5 > pan.csv
)";

constexpr const char* kTravel =
    R"(gazewright-batch travel RIG [--step ANGLE] [--out FILE.csv]

Prints a grid of poses around the middle of both travels, as CSV: whether the rig can reach each of
them, and what keeps it from the others.

  --step  from pose to pose, an angle with its unit from 0.25 deg to 30 deg; 2 deg where not given
  --out   the file to write; standard output where not given

Columns
  pan_rad   pan angle, running first
  tilt_rad  tilt angle, positive looks up
  reach     1 where the pose can be reached, else 0
  limit     none, or the first of these that keeps it away: pan stop, pan cable, pan soft limit,
            tilt stop, tilt cable, tilt soft limit, collision, keep-out

Collisions are those of bodies that tilt with bodies on pan and with the stand, met on the way from
tilt 0. Where the rig lacks a stop, a cable, a size or a place, nothing is printed, a sentence names
it and the exit status is 3.

Example
  gazewright-batch travel owl.rig.yaml --step 5deg --out reach.csv
)";

constexpr const char* kTrack =
    R"(gazewright-batch track RIG [--path FILE.csv [--save FILE.rig.yaml]] [--out FILE.csv]

Prints where the target is, where the axes look and where the target stands in the picture while
the rig follows it, as CSV: the target of the rig's part tracking, by each of its detectors.

  --path  a path for the target instead: CSV with a line for each point, time in seconds, pan and
          tilt in degrees; a first line without numbers is a header
  --save  writes the rig with that path in it, so that the rig file needs no other file; another
          file than the rig's own
  --out   the file to write; standard output where not given

Columns
  time_s              from the start, a row every 1 to 100 ms
  target_pan_rad      angles that point at the target
  target_tilt_rad
  pan_rad_1           angles of the axes, with the first detector of the rig's list
  tilt_rad_1
  pan_error_px_1      where the target stands in the picture, from the centre, with the first
  tilt_error_px_1     detector; then the same four for the second one, and so on

Where the rig lacks an input, nothing is printed, a sentence names it and the exit status is 3.

Examples
  gazewright-batch track owl.rig.yaml > track.csv
  gazewright-batch track owl.rig.yaml --path dancer.csv --save dancer.rig.yaml --out track.csv
)";

constexpr const char* kCompare =
    R"(gazewright-batch compare RIG [--json | --csv] [--all]

Prints the present design and every variant of the rig file side by side: the inputs that differ,
the main figures, how many findings there are of each verdict, the worst margin, and the findings
whose verdict differs.

  (no option)  a table to read, three significant digits in everyday units; what differs from the
               present design carries its difference or the word differs, the best figure of a row
               the word best
  --json       {"rig": title, "designs": [{"name", "note"}], "inputs": [row], "figures": [row],
               "findings": [row]}, the present design first; a row is {"id", "label", "unit",
               "cells": [{"value", "word", "differs", "best"}]} in SI units with every digit
  --csv        columns part, id, unit, then one for each design: values in SI units with every
               digit, or words
  --all        every figure, not only the main ones

An input that is missing counts by its default. Bodies and other parts with a name are compared by
that name, wherever they stand in their list. Where the rig holds no variants, nothing is printed, a
sentence says so and the exit status is 3.

Examples
  gazewright-batch compare owl.rig.yaml
  gazewright-batch compare owl.rig.yaml --all --csv > variants.csv
)";

constexpr const char* kDoubts =
    R"(gazewright-batch doubts RIG [--json | --csv]

Prints how far the main figures can be trusted, and which input is worth measuring first. Each input
that is not known exactly is put to both ends of its range, the others as entered; what that does to
a figure is added up by root-sum-square and said as its expanded uncertainty, k = 2.

  (no option)  a table to read: inputs worth measuring, the best first; each figure with its
               uncertainty and the input that moves it most; the inputs in doubt, and how many are
               taken as exact
  --json       {"rig": title, "coverage": 2, "exact": how many, "unknowns": [{"path", "label",
               "unit", "value", "spread", "stated", "source"}], "figures": [{"id", "unit", "value",
               "uncertainty", "whole", "shifts": [{"unknown", "low", "high", "because", "share"}]}],
               "worth": [{"unknown", "share", "most_of", "text"}],
               "open": [{"finding", "text", "turned_by"}]}
               in SI units with every digit; an unknown is named by its path; open are the
               verdicts that the doubt may turn
  --csv        columns figure, unit, value, uncertainty, unknown, low, high, share, because: a row
               for each figure and input that moves it, in SI units with every digit

In doubt are inputs that state a spread, and those whose source is an estimate, a data sheet or the
default, by the usual spread of their kind (data file spreads). Measured values and values without a
source are taken as exact where they state none. A figure with "at least" has none at an end of some
range: the reason is in the column because. Where no input is in doubt, nothing is printed, a
sentence says so and the exit status is 3.

Examples
  gazewright-batch doubts owl.rig.yaml
  gazewright-batch doubts owl.rig.yaml --csv > doubts.csv
)";

constexpr const char* kSettings =
    R"(gazewright-batch settings RIG [--json | --csv]

Prints what to set in the drive of each axis: motor, limits, gear and encoder, loops in units of the
output and of the motor, travel and homing, bus. Beside each value stands the one for the first
power-up where that is lower, and the field or figure that it comes from. Compare units and
conventions with the drive's own manual, which comes first.

  (no option)  a table to read for each axis
  --json       {"rig": title, "conventions", "caution", "settings": [{"axis", "key", "group",
               "label", "unit", "value", "first", "text", "from", "formula"}]} in SI units with
               every digit; a value that is not known is null and "text" says what it needs;
               "first" is null where it is the same
  --csv        columns axis, key, unit, value, first, from, formula, text, in SI units

Examples
  gazewright-batch settings owl.rig.yaml
  gazewright-batch settings owl.rig.yaml --csv > settings.csv
)";

constexpr const char* kParts =
    R"(gazewright-batch parts RIG [--json | --csv]

Prints the list of parts: motors, drives, gearboxes, encoders, bearings, screws and cables of each
axis, camera, supply, and every body. A body that stands for a motor or gearbox says so: it is not
needed twice.

  (no option)  a table to read
  --json       {"rig": title, "parts": [{"number", "part", "name", "axis", "mass", "key",
               "because"}]}, the mass of one in kg; null where it is not known or none is due
  --csv        columns number, part, name, axis, mass_kg, key, because

Examples
  gazewright-batch parts owl.rig.yaml
  gazewright-batch parts owl.rig.yaml --csv > parts.csv
)";

constexpr const char* kSheet =
    R"(gazewright-batch sheet RIG --out FILE.pdf [--paper a4|letter]

Writes the design sheet as PDF: first the drawing, what fails or is tight and what to do, and the
drive lines; then what to build from, with drive settings, parts, sizes, homing and cautions; then
plots, what holds, figures, and assumptions with the source of each input. No display is needed.

  --out    the file to write; it is replaced only when the whole sheet is written
  --paper  a4 (where not given) or letter

A file that cannot be written is a sentence, the old file stays as it was, and the exit status is 4.

Example
  gazewright-batch sheet owl.rig.yaml --out owl.pdf --paper letter
)";

constexpr const char* kShelf =
    R"(gazewright-batch shelf [--list] [--shelf DIR]

Says where the parts shelf is and how many parts of each kind are on it. The shelf is a folder with a
file for each part, $XDG_DATA_HOME/gazewright/shelf where not named; until that folder is there, the
built-in generic parts take its place. A file that cannot be read is named and left out.

  --list   every part with two or three of its figures
  --shelf  another folder

Example
  gazewright-batch shelf --list
)";

constexpr const char* kFit =
    R"(gazewright-batch fit RIG [--shelf DIR] [--drives] [--most N] [--json | --csv] [--save FILE]

Ranks every motor of the parts shelf with every gearbox, on both axes, by the time of the task's move,
then by the least margin and by mass. Each combination is weighed in closed form: torque to start, time,
the gearbox's rated torque over the duty, heat of the winding, gap in the picture. The best five are then
simulated in full with the gains that are advised for them, and stand in the order of their simulated
times. A part that lacks data is named and not ranked.

  --shelf   another folder of parts than your own
  --drives  each combination also with every drive of the shelf; else the rig's drives stay
  --most    rows of the answer, 1 to 1000, 20 where not given
  --json    counts, rows, parts that lack data and remarks, in SI units; what is not known is null
  --csv     a row for each combination: rank, verdict, the parts, times, margin, mass, simulated times,
            failing findings, reason
  --save    writes the rig with the parts of the first row, and with the limits and gains that go with
            them; comments and layout stay. Where no gains can be advised, it says why. The rig file
            itself is not overwritten

Where the rig lacks an input of the move, nothing is printed, all that is missing for both axes is
named with its place in the file and how to mend it, and the exit status is 3. What only single
measures, the simulation or the gains lack is named in the same way, and the rest is ranked.

Examples
  gazewright-batch fit owl.rig.yaml
  gazewright-batch fit owl.rig.yaml --most 100 --csv > fits.csv
  gazewright-batch fit owl.rig.yaml --save owl-refitted.rig.yaml
)";

}  // namespace

std::string help_text(std::optional<Verb> verb) {
  if (!verb) return kProgram;
  switch (*verb) {
    case Verb::figures:
      return kFigures;
    case Verb::trace:
      return kTrace;
    case Verb::sweep:
      return kSweep;
    case Verb::travel:
      return kTravel;
    case Verb::track:
      return kTrack;
    case Verb::compare:
      return kCompare;
    case Verb::doubts:
      return kDoubts;
    case Verb::settings:
      return kSettings;
    case Verb::parts:
      return kParts;
    case Verb::sheet:
      return kSheet;
    case Verb::shelf:
      return kShelf;
    case Verb::fit:
      return kFit;
  }
  return kProgram;
}

}  // namespace gazewright::batch
