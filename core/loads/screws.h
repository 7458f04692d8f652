#pragma once

#include <string_view>

/// Screws of a bolted joint and the hold of a shaft. Sources and limits:
/// resources/handbook/loads.md.
namespace gazewright {

/// A metric thread and the head of its cap screw: a row of resources/data/threads.yaml.
struct Thread {
  std::string_view name;       ///< "M4"
  double diameter_m, pitch_m;  ///< d, P
  double head_mean_m;          ///< mean diameter on which the head rubs

  double pitch_diameter_m() const { return diameter_m - 0.6495 * pitch_m; }   ///< d2, ISO 724
  double minor_diameter_m() const { return diameter_m - 1.22687 * pitch_m; }  ///< d3
  double stress_area_m2() const;  ///< As = π/4·(d − 0.9382·P)², ISO 898-1
};
const Thread* find_thread(std::string_view name);  ///< null: not in the table

/// Strength of a property class: a row of resources/data/screws.yaml.
struct ScrewClass {
  std::string_view name;        ///< "8.8", "A2-70"
  double proof_Pa, tensile_Pa;  ///< Sp, or the 0.2 % proof strength of stainless steel; Rm
};
const ScrewClass* find_screw_class(std::string_view name);  ///< null: not in the table

/// K of T = K·d·F: (0.159·P + 0.578·d2·µ + head/2·µ)/d, 60° thread. Source: ISO 16047 and VDI 2230,
/// from memory.
double nut_factor(const Thread& thread, double friction);
/// F = T/(K·d). Source: T. H. Wentzell, Machine Design, ex. 6.1. [N]
double preload_N(double torque_Nm, double nut_factor, double diameter_m);
/// Rules for tightening, with their sources in resources/data/joints.yaml. Shares.
struct JointRules {
  double preload_scatter;  ///< what a torque wrench leaves the preload off, either way
  double left_in_plastic;  ///< of the preload where plastic is clamped or holds the thread
  double of_proof;         ///< of the proof stress while tightening
  double of_pull_out;      ///< of the force that pulls an insert out
};
const JointRules& joint_rules();

/// Stress while tightening, pull and twist together by von Mises on the stress area. [Pa]
double tightening_stress_Pa(const Thread& thread, double friction, double preload_N);
/// Tightening torque that brings that stress to `stress_Pa`. [N·m]
double torque_for_stress_Nm(const Thread& thread, double friction, double stress_Pa);

/// Torque at which a circle of clamped screws slips: µ·n·F·D/2 (Coulomb). [N·m]
double slip_torque_Nm(double friction, double screws, double preload_N, double circle_diameter_m);
/// Pull on the worst screw of the circle from a moment across it and a force along it:
/// 4·M/(n·D) + F/n. Source: statics, rigid flange about its middle. [N] @pre n >= 1
double worst_screw_pull_N(double moment_Nm, double axial_N, double screws,
                          double circle_diameter_m);
/// Engagement at which the internal thread in the same material is as strong as the screw:
/// 2·As/(0.5·π·(d − 0.6495·P)). Source: FED-STD-H28 in its simplified form, from memory. [m]
double thread_engagement_m(const Thread& thread);

/// Torque that a clamped hub passes on through two lines of contact: µ·F·d, cautious. Source:
/// Coulomb; a hub that fits all round holds π/2 times as much. [N·m]
double clamp_torque_Nm(double friction, double clamp_force_N, double diameter_m);
/// Torque of a flat 0.1·d deep at a pressure p on its edge, falling to 0 at its middle:
/// p·L·w²/12, w = 0.6·d the flat's width. Source: statics. [N·m]
double flat_torque_Nm(double pressure_Pa, double length_m, double diameter_m);
/// Torque of a parallel key that bears on d/8 of height: p·L·(d/8)·d/2. Source: statics; the height
/// is that of DIN 6885 rounded down, from memory. [N·m]
double key_torque_Nm(double pressure_Pa, double length_m, double diameter_m);

}  // namespace gazewright
