#pragma once

#include <mujoco/mujoco.h>

#include <Eigen/Eigenvalues>
#include <Eigen/Geometry>
#include <cstdio>
#include <cstring>
#include <iomanip>
#include <memory>
#include <sstream>
#include <string>

#include "core/bodies/bodies.h"

/// A rig as a model of MuJoCo (E. Todorov, T. Erez, Y. Tassa, MuJoCo: A physics engine for
/// model-based control, IROS 2012): boxes, spheres, cylinders and inertial frames on two hinges, so
/// that MuJoCo works out inertias, mass matrix, gravity and velocity torques from the geometry by
/// its own recursive methods.
namespace gazewright::tests {

struct Free {
  void operator()(mjModel* model) const { mj_deleteModel(model); }
  void operator()(mjData* data) const { mj_deleteData(data); }
};

inline std::ostream& operator<<(std::ostream& out, const std::array<Quantity, 3>& p) {
  return out << p[0].value() << ' ' << p[1].value() << ' ' << p[2].value();
}
inline void put(std::ostream& out, const Eigen::Quaterniond& q) {
  out << " quat='" << q.w() << ' ' << q.x() << ' ' << q.y() << ' ' << q.z() << "'";
}

/// One body welded to its carrier: a geom that MuJoCo takes the inertia of, or an inertial frame on
/// principal axes.
struct WriteShape {
  std::ostream& out;
  double mass_kg;

  void operator()(const Ball& ball) const {
    out << "<geom type='sphere' size='" << ball.diameter_m.value() / 2 << "' mass='" << mass_kg
        << "'/>";
  }
  void operator()(const Box& box) const {
    out << "<geom type='box' size='" << box.side_m[0].value() / 2 << ' '
        << box.side_m[1].value() / 2 << ' ' << box.side_m[2].value() / 2 << "' mass='" << mass_kg
        << "'/>";
  }
  void operator()(const Tube& tube) const {
    if (tube.bore_m.value() > 0) return inertial(inertia_about_centre_kgm2(tube, mass_kg));
    const Eigen::Vector3d along = tube.along.value == "x"   ? Eigen::Vector3d::UnitX()
                                  : tube.along.value == "y" ? Eigen::Vector3d::UnitY()
                                                            : Eigen::Vector3d::UnitZ();
    out << "<geom type='cylinder' size='" << tube.diameter_m.value() / 2 << ' '
        << tube.length_m.value() / 2 << "' mass='" << mass_kg << "'";
    put(out, Eigen::Quaterniond::FromTwoVectors(Eigen::Vector3d::UnitZ(), along));
    out << "/>";
  }
  /// Shells and tensors: MuJoCo has no such geom.
  template <class Other>
  void operator()(const Other& other) const {
    inertial(inertia_about_centre_kgm2(other, mass_kg));
  }
  void inertial(const Eigen::Matrix3d& inertia_kgm2) const {
    const Eigen::SelfAdjointEigenSolver<Eigen::Matrix3d> solver(inertia_kgm2);
    Eigen::Matrix3d axes = solver.eigenvectors();
    if (axes.determinant() < 0) axes.col(0) *= -1;
    out << "<inertial pos='0 0 0' mass='" << mass_kg << "' diaginertia='"
        << solver.eigenvalues().transpose() << "'";
    put(out, Eigen::Quaterniond(axes));
    out << "/>";
  }
};

inline void write_bodies(std::ostream& out, const std::vector<Body>& bodies) {
  for (const Body& body : bodies) {
    out << "<body pos='" << body.centre_m << "'>";
    std::visit(WriteShape{out, body.mass_kg.value()}, body.shape);
    out << "</body>\n";
  }
}

/// The stand leans about +y; the world's gravity stays. Contacts off, nothing balanced or bounded
/// behind our back.
inline std::string mujoco_xml(const Rig& rig) {
  std::ostringstream out;
  out << std::setprecision(17);
  out << "<mujoco><compiler angle='radian' boundmass='0' boundinertia='0' "
         "balanceinertia='false'/>\n"
         "<option gravity='0 0 "
      << -kStandardGravity_mps2
      << "'><flag contact='disable'/></option>\n<worldbody><body name='stand'";
  put(out,
      Eigen::Quaterniond(Eigen::AngleAxisd(rig.stand.lean_rad.value(), Eigen::Vector3d::UnitY())));
  out << ">\n<body name='pan'><joint name='pan' type='hinge' axis='0 0 1'/>\n";
  write_bodies(out, rig.on_pan);
  out << "<body name='tilt' pos='" << rig.tilt_axis_at_m
      << "'><joint name='tilt' type='hinge' axis='0 -1 0'/>\n";
  write_bodies(out, rig.on_tilt);
  out << "</body></body></body></worldbody></mujoco>\n";
  return out.str();
}

inline std::unique_ptr<mjModel, Free> mujoco_model(const Rig& rig) {
  const std::string xml = mujoco_xml(rig);
  const auto files = std::make_unique<mjVFS>();
  mj_defaultVFS(files.get());
  mj_makeEmptyFileVFS(files.get(), "rig.xml", static_cast<int>(xml.size()));
  std::memcpy(files->filedata[0], xml.data(), xml.size());
  char error[1000] = "";
  std::unique_ptr<mjModel, Free> model(mj_loadXML("rig.xml", files.get(), error, sizeof error));
  mj_deleteVFS(files.get());
  if (!model) std::fprintf(stderr, "%s\n%s", error, xml.c_str());
  return model;
}

}  // namespace gazewright::tests
