"""The load in a physics engine (mujoco): a rigid body on tendons that only pull, damped, from where it should hang."""

import mujoco
import numpy as np

from checklist_app.mechanics.hanging.body import Hang, Rigging, frame
from checklist_app.mechanics.hanging.margin import Face
from tests.mechanics.hanging.bodies import vec

MASS_KG, GRAVITY = 1000.0, 9.80665
STEP_S, STEPS = 0.001, 9000
OVER_DEG = 80.0
MODEL = """<mujoco><option timestep="{step}" gravity="0 0 -{gravity}" integrator="implicitfast"/><worldbody>
<site name="hook" pos="0 0 0"/><body><freejoint/><inertial pos="0 0 0" mass="{mass}" diaginertia="{inertia}"/>{sites}
</body></worldbody><tendon>{tendons}</tendon></mujoco>"""
TENDON = """<spatial limited="true" range="0 {leg}" solreflimit="0.004 1" solimplimit="0.99 0.999 0.0001">{ends}
</spatial>"""


class Engine:
    """One load under its hook."""

    def __init__(self, what: Rigging, hang: Hang) -> None:
        self.hang = hang
        away = [np.array(pick) - np.array(what.cg) for pick in what.picks]
        sites = "".join(f'<site name="p{n}" pos="{p[0]} {p[1]} {p[2]}"/>' for n, p in enumerate(away))
        tendons = "".join(
            TENDON.format(leg=leg, ends=f'<site site="hook"/><site site="p{n}"/>') for n, leg in enumerate(what.legs_m)
        )
        self.model = mujoco.MjModel.from_xml_string(MODEL.format(
            step=STEP_S, gravity=GRAVITY, mass=MASS_KG, inertia="200 300 400", sites=sites, tendons=tendons
        ))

    def tilt_deg(self, couple: np.ndarray) -> float:
        """Tilt after a couple was put on slowly and left on; at once when it goes over."""
        data, tilt = self._placed(np.array([0.0, 0.0, -self.hang.plumb_m]), np.array(self.hang.upright)), 0.0
        for step in range(STEPS):
            data.xfrc_applied[1, 3:] = couple * min(1.0, 2.0 * step / STEPS)
            data.qfrc_applied[:] = -np.concatenate([MASS_KG * data.qvel[:3], 0.4 * MASS_KG * data.qvel[3:]])
            mujoco.mj_step(self.model, data)
            tilt = float(np.degrees(np.arccos(data.xmat[1].reshape(3, 3)[2, 2])))
            if tilt > OVER_DEG:
                break
        return tilt

    def tilt_after_letting_go_deg(self, cg: np.ndarray, upright: np.ndarray) -> float:
        """Tilt after the load was let go with its centre of gravity there, seen from the hook, and this way up."""
        data, tilt = self._placed(cg, upright), 0.0
        for _ in range(STEPS):
            data.qfrc_applied[:] = -np.concatenate([MASS_KG * data.qvel[:3], 0.4 * MASS_KG * data.qvel[3:]])
            mujoco.mj_step(self.model, data)
            tilt = float(np.degrees(np.arccos(data.xmat[1].reshape(3, 3)[2, 2])))
        return tilt

    def _placed(self, cg: np.ndarray, upright: np.ndarray) -> mujoco.MjData:
        data, turned = mujoco.MjData(self.model), np.zeros(4)
        mujoco.mju_mat2Quat(turned, np.array(frame(vec(*upright))).flatten())
        data.qpos[:] = [*cg, *turned]
        return data

    def couple_towards(self, face: Face) -> np.ndarray:
        """Direction of the couple that turns the load about its hook into a face of its legs."""
        first, second = (np.array(self.hang.eyes[leg]) for leg in face.legs)
        square = np.cross(first, second)
        square *= np.sign(square[2])
        way = np.cross([0.0, 0.0, 1.0], [square[0], square[1], 0.0])
        return np.asarray(way / np.linalg.norm(way))
