#include <gtest/gtest.h>
#include <mujoco/mujoco.h>

#include <Eigen/Eigenvalues>
#include <Eigen/Geometry>
#include <cmath>
#include <cstring>
#include <iomanip>
#include <memory>
#include <sstream>
#include <string>

#include "core/bodies/bodies.h"
#include "tests/support/random_bodies.h"
#include "tests/support/tol.h"

// The two-axis rigid-body model against MuJoCo (E. Todorov, T. Erez, Y. Tassa, MuJoCo: A physics
// engine for model-based control, IROS 2012). The rig is written as a model of boxes, spheres,
// cylinders and inertial frames on two hinges, so that MuJoCo works out inertias, mass matrix,
// gravity and velocity torques from the geometry by its own recursive methods.
namespace gazewright {
namespace {

using Eigen::Matrix2d;
using Eigen::Vector2d;
using Eigen::Vector3d;
using testing::Random;

struct Free {
  void operator()(mjModel* model) const { mj_deleteModel(model); }
  void operator()(mjData* data) const { mj_deleteData(data); }
};

std::ostream& operator<<(std::ostream& out, const std::array<Quantity, 3>& p) {
  return out << p[0].value() << ' ' << p[1].value() << ' ' << p[2].value();
}
void put(std::ostream& out, const Eigen::Quaterniond& q) {
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
    const Vector3d along = tube.along.value == "x"   ? Vector3d::UnitX()
                           : tube.along.value == "y" ? Vector3d::UnitY()
                                                     : Vector3d::UnitZ();
    out << "<geom type='cylinder' size='" << tube.diameter_m.value() / 2 << ' '
        << tube.length_m.value() / 2 << "' mass='" << mass_kg << "'";
    put(out, Eigen::Quaterniond::FromTwoVectors(Vector3d::UnitZ(), along));
    out << "/>";
  }
  void operator()(const Tensor& tensor) const {
    const Eigen::SelfAdjointEigenSolver<Eigen::Matrix3d> solver(
        inertia_about_centre_kgm2(tensor, mass_kg));
    Eigen::Matrix3d axes = solver.eigenvectors();
    if (axes.determinant() < 0) axes.col(0) *= -1;
    out << "<inertial pos='0 0 0' mass='" << mass_kg << "' diaginertia='"
        << solver.eigenvalues().transpose() << "'";
    put(out, Eigen::Quaterniond(axes));
    out << "/>";
  }
  template <class Other>
  void operator()(const Other&) const {
    FAIL() << "random rigs have no such shape";
  }
};

void write_bodies(std::ostream& out, const std::vector<Body>& bodies) {
  for (const Body& body : bodies) {
    out << "<body pos='" << body.centre_m << "'>";
    std::visit(WriteShape{out, body.mass_kg.value()}, body.shape);
    out << "</body>\n";
  }
}

/// The stand leans about +y; the world's gravity stays. Contacts off, nothing balanced or bounded
/// behind our back.
std::string mujoco_xml(const Rig& rig) {
  std::ostringstream out;
  out << std::setprecision(17);
  out << "<mujoco><compiler angle='radian' boundmass='0' boundinertia='0' "
         "balanceinertia='false'/>\n"
         "<option gravity='0 0 "
      << -kStandardGravity_mps2
      << "'><flag contact='disable'/></option>\n<worldbody><body name='stand'";
  put(out, Eigen::Quaterniond(Eigen::AngleAxisd(rig.stand.lean_rad.value(), Vector3d::UnitY())));
  out << ">\n<body name='pan'><joint name='pan' type='hinge' axis='0 0 1'/>\n";
  write_bodies(out, rig.on_pan);
  out << "<body name='tilt' pos='" << rig.tilt_axis_at_m
      << "'><joint name='tilt' type='hinge' axis='0 -1 0'/>\n";
  write_bodies(out, rig.on_tilt);
  out << "</body></body></body></worldbody></mujoco>\n";
  return out.str();
}

std::unique_ptr<mjModel, Free> mujoco_model(const Rig& rig) {
  const std::string xml = mujoco_xml(rig);
  const auto files = std::make_unique<mjVFS>();
  mj_defaultVFS(files.get());
  mj_makeEmptyFileVFS(files.get(), "rig.xml", static_cast<int>(xml.size()));
  std::memcpy(files->filedata[0], xml.data(), xml.size());
  char error[1000] = "";
  std::unique_ptr<mjModel, Free> model(mj_loadXML("rig.xml", files.get(), error, sizeof error));
  mj_deleteVFS(files.get());
  EXPECT_TRUE(model) << error << "\n" << xml;
  return model;
}

/// What MuJoCo makes of a pose: M, and C q̇ − gravity.
struct Reference {
  Matrix2d mass_kgm2;
  Vector2d bias_Nm;
};
Reference reference_at(const mjModel& model, mjData& data, const Vector2d& q_rad,
                       const Vector2d& rate_radps) {
  for (int i = 0; i < 2; ++i) {
    data.qpos[i] = q_rad(i);
    data.qvel[i] = rate_radps(i);
  }
  mj_forward(&model, &data);
  double full[4];
  mj_fullM(&model, full, data.qM);
  Reference reference;
  reference.mass_kgm2 << full[0], full[1], full[2], full[3];
  reference.bias_Nm << data.qfrc_bias[0], data.qfrc_bias[1];
  return reference;
}

/// Largest differences, each over the size of what is summed there.
struct Worst {
  double mass = 0, gravity = 0, bias = 0;
};

void compare(const Rig& rig, Random& random, int poses, Worst& worst) {
  const auto model = mujoco_model(rig);
  ASSERT_TRUE(model);
  ASSERT_EQ(model->nv, 2);
  const std::unique_ptr<mjData, Free> data(mj_makeData(model.get()));
  const RigBodies bodies = rig_bodies(rig);
  const double moment_kgm =
      bodies.on_pan.mass_kg * bodies.on_pan.p_OC_m.norm() +
      bodies.on_tilt.mass_kg * (bodies.on_tilt.p_OC_m.norm() + bodies.p_PT_m.norm());
  const double gravity_Nm = moment_kgm * kStandardGravity_mps2;
  const double inertia_kgm2 = bodies.on_pan.I_O_kgm2.norm() + bodies.on_tilt.I_O_kgm2.norm() +
                              bodies.on_tilt.mass_kg * bodies.p_PT_m.squaredNorm();
  for (int pose = 0; pose < poses; ++pose) {
    const Vector2d q{testing::random_angle_rad(random), testing::random_angle_rad(random)};
    const double fast_radps = random.log_uniform(0.01, 100);
    const Vector2d rate{random.uniform(-1, 1) * fast_radps, random.uniform(-1, 1) * fast_radps};

    const Vector2d gravity = gravity_torque_Nm(bodies, q(0), q(1));
    const Reference still = reference_at(*model, *data, q, {0, 0});
    worst.gravity =
        std::max(worst.gravity, (still.bias_Nm + gravity).cwiseAbs().maxCoeff() / gravity_Nm);

    const Reference moving = reference_at(*model, *data, q, rate);
    const Matrix2d M = mass_matrix_kgm2(bodies, q(1));
    worst.mass = std::max(worst.mass, (moving.mass_kgm2 - M).cwiseAbs().maxCoeff() / inertia_kgm2);
    const Vector2d bias_Nm = velocity_torque_Nm(bodies, q(1), rate) - gravity;
    worst.bias = std::max(worst.bias, (moving.bias_Nm - bias_Nm).cwiseAbs().maxCoeff() /
                                          (gravity_Nm + inertia_kgm2 * rate.squaredNorm()));
  }
}

TEST(TwoAxisModel, AgreesWithMuJoCoOnThreeHundredRandomRigs) {
  Random random(2026);
  Worst worst;
  for (int round = 0; round < 300; ++round)
    compare(testing::random_bodies_rig(random), random, 10, worst);
  // Two ways to the same sums of a few hundred terms: rounding only. TOL_SCALE=0 prints the
  // residuals, about 1e-15.
  EXPECT_LE(worst.mass, tol(2e-14));
  EXPECT_LE(worst.gravity, tol(2e-14));
  EXPECT_LE(worst.bias, tol(2e-14));
}

}  // namespace
}  // namespace gazewright
