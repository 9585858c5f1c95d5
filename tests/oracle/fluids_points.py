"""Points computed by the library python3-fluids, one a line: what is asked, of what, the library's answer.

Lengths m, flows m3/s, heads m. Not asked, because the library's answers are no law of ours or not to be trusted: friction
between Re 2000 and 4000 (it steps at 2040), V-notches after Shen (a factor 8/15 sqrt 2 is missing) and the weirs after SIA.
"""
import math

from fluids import fittings, friction, geometry, open_flow

g = 9.80665


def tell(ask, *numbers):
    print(ask, *(n if isinstance(n, str) else repr(float(n)) for n in numbers))


def spread(low, high, count):
    return [low * (high / low) ** (i / (count - 1)) for i in range(count)]


roughnesses = [0.0] + spread(1e-6, 0.05, 24)

for reynolds in spread(1.0, 2000.0, 60):
    tell("friction", reynolds, 1e-4, friction.friction_factor(reynolds, 1e-4))
for reynolds in spread(4000.0, 1e8, 100):
    for roughness in roughnesses:
        tell("friction", reynolds, roughness, friction.friction_factor(reynolds, roughness, Method="Colebrook"))

hooper = {
    "elbow-90": "Elbow, 90°, Standard (R/D = 1), Screwed",
    "elbow-90-sweep": "Elbow, 90°, Long-radius (R/D = 1.5), All types",
    "elbow-90-mitre": "Elbow, 90°, Mitered (R/D = 1.5), 1 weld (90° angle)",
    "elbow-45": "Elbow, 45°, Standard (R/D = 1), All types",
    "tee-run": "Tee, Run, Screwed",
    "tee-branch": "Elbow, Used as, Standard, Screwed",
    "ball-valve": "Valve, Ball, Reduced trim, Beta = 0.9",
    "gate-valve": "Valve, Gate, Full line size, Beta = 1",
    "globe-valve": "Valve, Globe, Standard",
    "swing-check": "Valve, Check, Swing",
    "spring-check": "Valve, Check, Lift",
}
darby = {
    "elbow-90": "Elbow, 90°, threaded, standard, (r/D = 1)",
    "elbow-90-sweep": "Elbow, 90°, threaded, long radius, (r/D = 1.5)",
    "elbow-90-mitre": "Elbow, 90°, mitered, 1 weld, (90°)",
    "elbow-45": "Elbow, 45°, threaded standard, (r/D = 1)",
    "tee-run": "Tee, Run-through, threaded, (r/D = 1)",
    "tee-branch": "Tee, Through-branch, (as elbow), threaded, (r/D = 1)",
    "ball-valve": "Valve, Ball valve, standard, β = 1",
    "gate-valve": "Valve, Gate valve, standard, β = 1",
    "globe-valve": "Valve, Globe valve, standard, β = 1",
    "swing-check": "Valve, Swing check",
    "spring-check": "Valve, Lift check",
}
for reynolds in spread(200.0, 1e6, 9):
    for bore in spread(0.012, 0.16, 6):
        for kind, name in hooper.items():
            tell("hooper", kind, bore, reynolds, fittings.Hooper2K(Di=bore / 0.0254, Re=reynolds, name=name))
        for kind, name in darby.items():
            tell("darby", kind, bore, reynolds, fittings.Darby3K(NPS=bore / 0.0254, Re=reynolds, name=name))

for bore in spread(0.011, 0.3, 25):
    crane = {
        "ball-valve": fittings.K_ball_valve_Crane(D1=bore, D2=bore, angle=0.0),
        "gate-valve": fittings.K_gate_valve_Crane(D1=bore, D2=bore, angle=0.0),
        "globe-valve": fittings.K_globe_valve_Crane(D1=bore, D2=bore),
        "swing-check": fittings.K_swing_check_valve_Crane(D=bore, angled=True),
        "spring-check": fittings.K_lift_check_valve_Crane(D1=bore, D2=bore, angled=False),
        "foot-valve": fittings.K_foot_valve_Crane(D=bore),
        "elbow-90": fittings.bend_rounded(Di=bore, angle=90, Re=1e5, method="Crane standard"),
        "elbow-45": fittings.bend_rounded(Di=bore, angle=45, Re=1e5, method="Crane standard"),
        "elbow-90-mitre": 60.0 * fittings.ft_Crane(bore),
        "entry-flush": fittings.entrance_sharp(method="Crane"),
        "entry-reentrant": fittings.entrance_distance(Di=bore, t=0.05 * bore, l=bore, method="Crane"),
        "exit": fittings.exit_normal(),
    }
    for kind, k in crane.items():
        tell("crane", kind, bore, k)
tell("rounded-entry", fittings.entrance_rounded(Di=0.03, rc=0.0015, method="Rennels"))

for larger in spread(0.012, 0.3, 15):
    for part in spread(0.05, 1.0, 30):
        tell("contraction", larger, part * larger, fittings.contraction_sharp(Di1=larger, Di2=part * larger))
        tell("expansion", part * larger, larger, fittings.diffuser_sharp(Di1=part * larger, Di2=larger))
        tell("restated", 1.3, larger, part * larger, fittings.change_K_basis(K1=1.3, D1=larger, D2=part * larger))

for share in spread(0.05, 1.0, 20):
    parts = dict(D_run=0.0272, D_branch=0.0272, Q_run=1.0 - share, Q_branch=share, angle=90)
    tell("tee-branch-divides", share, fittings.K_branch_diverging_Crane(**parts))
    tell("tee-run-divides", share, fittings.K_run_diverging_Crane(**parts))

for bore in spread(0.016, 0.3, 8):
    for fill in [0.02 + 0.07 * i for i in range(15)]:
        depth = min(fill, 1.0) * bore
        area = geometry.A_partial_circle(D=bore, h=depth)
        wetted = bore * math.acos(1.0 - 2.0 * depth / bore)
        for fall in (0.001, 0.0104, 0.05):
            for n in (0.009, 0.011):
                velocity = open_flow.V_Manning(Rh=area / wetted, S=fall, n=n)
                tell("manning", bore, depth, fall, n, velocity * area)
        tell("section", bore, depth, area)

# The flow that a head drives through a pipe with fittings: bisection on the library's friction factor.
def lost(flow, bore, length, roughness, k, viscosity):
    velocity = flow / (math.pi / 4.0 * bore * bore)
    f = friction.friction_factor(velocity * bore / viscosity, roughness / bore, Method="Colebrook")
    return (f * length / bore + k) * velocity * velocity / (2.0 * g)


viscosity = 1.0034e-6
for bore in spread(0.016, 0.1, 5):
    for length in (1.0, 8.0, 40.0):
        for roughness in (0.0, 1.5e-6, 7e-5):
            for k in (0.0, 6.0):
                for head in (0.02, 0.3, 2.0):
                    low, high = 0.0, 1.0
                    for _ in range(55):
                        middle = (low + high) / 2.0
                        low, high = (middle, high) if lost(middle, bore, length, roughness, k, viscosity) < head else (low, middle)
                    if low / (math.pi / 4.0 * bore * viscosity) > 4100.0:
                        tell("flow", head, bore, length, roughness, k, low)
