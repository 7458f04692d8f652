#include <cmath>

#include "core/analysis/figures.h"
#include "core/analysis/inputs.h"

namespace gazewright {
namespace {

const FigureRow kDriveFigures[] = {
    {{"<axis>.motor.torque_constant", "Torque constant", "N.m/A", "mN.m/A",
      "(√3/2)·60/(2π·KV), per ampere of phase amplitude",
      "Krishnan, PM Synchronous and Brushless DC Motor Drives, 2010 (citation from memory)",
      kSpeedConstant},
     Axes::both,
     [](Context& c, Axis a) -> Answer { return c.model(a).drive.torque_constant_NmpA; }},
    {{"<axis>.motor.constant", "Motor constant", "N.m/√W", "N.m/√W", "Kt/√(1.5·R)",
      "definition Km = T/√P of copper loss", kMotorConstant},
     Axes::both,
     [](Context& c, Axis a) -> Answer {
       const MotorDrive& d = c.model(a).drive;
       return motor_constant_NmpsqrtW(d.torque_constant_NmpA, d.phase_resistance_ohm);
     }},
    {{"<axis>.output.torque_stall", "Stall torque at the output", "N.m", "N.m",
      "η·N·Kt·i at standstill, at most the gearbox's peak torque", "handbook: drive", kStall},
     Axes::both,
     [](Context& c, Axis a) -> Answer { return stall_torque_Nm(c.model(a)); }},
    {{"<axis>.output.speed_top", "Top speed at the output, without the loop's limit", "rad/s",
      "deg/s", "m·V·KV/N, at most input_speed_limit/N and the drive's speed limit",
      "handbook: drive", kTopSpeed},
     Axes::both,
     [](Context& c, Axis a) -> Answer { return top_speed_radps(c.model(a)); }},
    {{"<axis>.output.acceleration_peak", "Peak acceleration", "rad/s2", "rad/s2",
      "(stall torque − coulomb − |gravity at rest|)/(load + η·rotor_reflected)",
      "Dubey ex. 2.1 (gear efficiency on the motor's side); handbook: motion", kAcceleration},
     Axes::both,
     [](Context& c, Axis a) -> Answer { return peak_acceleration_radps2(c.model(a)); }},
    {{"<axis>.ratio.best_acceleration", "Ratio of greatest acceleration", "1", "1",
      "T_B/(η·T_A) + √((T_B/(η·T_A))² + J_load/(η·J_rotor))",
      "Khurmi & Gupta, Theory of Machines, ex. 3.17 (method); Pasch & Seering 1984 (memory)",
      kBestAcceleration},
     Axes::both,
     [](Context& c, Axis a) -> Answer { return best_acceleration_ratio(c.model(a)); }},
};

}  // namespace

std::span<const FigureRow> drive_figures() { return kDriveFigures; }

}  // namespace gazewright
