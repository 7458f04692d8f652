"""Loops of section 5, linear and wound tight: responses and poles of the difference equations."""

import math

import numpy as np
from scipy.linalg import expm
from scipy.optimize import brentq


class Loops:
    def __init__(self, d):
        self.d, self.dt = d, 1 / d.control_rate
        k, c, N = d.stiffness, d.damping, d.ratio
        wc = 2 * math.pi * d.current_bandwidth
        # states T_e, motor angle/N, motor speed/N, load angle, load speed; input T_cmd
        Jr, J = d.motor_inertia * N * N, d.inertia
        A = np.array([[-wc, 0, 0, 0, 0], [0, 0, 1, 0, 0],
                      [N / Jr, -k / Jr, -(c + d.gear_viscous * N * N) / Jr, k / Jr, c / Jr],
                      [0, 0, 0, 0, 1],
                      [0, k / J, c / J, -(k + d.cable_stiffness) / J, -(c + d.load_viscous) / J]])
        self.peaks = np.unique(np.abs(np.linalg.eigvals(A[1:, 1:])))
        B = np.array([wc, 0, 0, 0, 0])
        M = expm(np.block([[A, B[:, None]], [np.zeros((1, 6))]]) * self.dt)
        self.Ad, self.Bd = M[:5, :5], M[:5, 5]
        self.C = np.eye(5)[1 if d.at == "motor" else 3]
        self.alpha = 1 - math.exp(-2 * math.pi * d.estimator_bandwidth * self.dt)

    def responses(self, w):
        """Speed loop and position loop, opened at the torque command and at the measured angle."""
        d, z = self.d, np.exp(1j * np.atleast_1d(w) * self.dt)
        resolvent = np.linalg.solve(z[:, None, None] * np.eye(5) - self.Ad, self.Bd[None, :, None])
        plant = resolvent[:, :, 0] @ self.C / z / d.ratio
        pi = d.speed_gain + d.speed_integral_gain * self.dt / (z - 1)
        reading = self.alpha * z / (z - (1 - self.alpha)) * (1 - 1 / z) / self.dt
        speed = pi * plant * reading
        return speed, d.position_gain * pi * plant / (1 + speed)

    def closed_loop_poles(self):
        """Poles of speed loop alone and of both loops, from the equations as a state machine."""
        d, n = self.d, 9  # plant 5, acting command, last angle, ω_meas, I
        result = []
        for kp in (0.0, d.position_gain):
            def step(x):
                plant, acting, last, w_meas, I = x[:5], x[5], x[6], x[7], x[8]
                angle = self.C @ plant
                w_meas = w_meas + self.alpha * ((angle - last) / self.dt - w_meas)
                error = -kp * angle - w_meas
                u = d.speed_gain * error + I
                I = I + d.speed_integral_gain * error * self.dt
                return np.concatenate([self.Ad @ plant + self.Bd * acting,
                                       [u / d.ratio, angle, w_meas, I]])
            result.append(np.linalg.eigvals(np.array([step(e) for e in np.eye(n)]).T))
        return result

    def margins(self, which):
        """All crossings (frequency, angle above -180°, whether the gain falls) and gain margins (frequency, 1/|L|).

        The phase is followed from low frequencies on."""
        L = lambda w: self.responses(w)[which]
        w = np.geomspace(1e-2, math.pi / self.dt * (1 - 1e-9), 6000)
        rotor = self.d.ratio**2 * self.d.motor_inertia
        for f in (math.sqrt(self.d.stiffness / self.d.inertia),
                  math.sqrt(self.d.stiffness * (1 / self.d.inertia + 1 / rotor)),
                  *self.peaks[self.peaks > 1e-2]):
            w = np.concatenate([w, f * (1 + np.linspace(-0.05, 0.05, 4001))])
        w = np.unique(w[w < math.pi / self.dt])
        l = L(w)
        crossings, gains = [], []
        size, phase = np.log(np.abs(l)), np.unwrap(np.angle(l))
        phase -= 2 * math.pi * (phase[0] > math.pi / 2)
        for i in np.nonzero(size[1:] * size[:-1] < 0)[0]:
            at = brentq(lambda x: math.log(abs(L(x)[0])), w[i], w[i + 1], rtol=1e-13)
            crossings.append((at, float(math.pi + phase[i] + np.angle(L(at)[0] / l[i])), size[i] > 0))
        for i in np.nonzero((l.imag[1:] * l.imag[:-1] < 0) & (l.real[1:] < 0) & (l.real[:-1] < 0))[0]:
            at = brentq(lambda x: L(x)[0].imag, w[i], w[i + 1], rtol=1e-13)
            gains.append((at, 1 / abs(L(at)[0])))
        return crossings, gains
