"""Independent solution of a tower with its controller, as a check of LogBook.Domain.Simulation.

General-purpose integrator (scipy solve_ivp, DOP853, rtol 1e-12) with event location; nothing of the C# code is used.
Run:  python3 independent_ode.py > independent_ode.csv      (Debian: python3-scipy)

Tower: V 10,000 L, bleed valve 1,000 L/h, drift 5 L/h, 500 kW x hourly profile x 1.26 L/kWh, make-up 300 uS/cm, Cl 23, Ca 82 mg/L.
Conductivity k = conductance (1 - 0.025 (cycles - 1)) + 0.3 (inhibitor - 100). Calcium above 340 mg/L deposits at 2 % of the excess an hour.
Bleed opens at k >= 1232 and shuts at k <= 1205. Inhibitor: 0.0893 L/h of density 1.12 alongside the bleed.
Biocide: Tuesday and Friday 21:30 local (UTC + 1): bleed down to 1150 or for 60 min, then 19 min of 3 L/h (density 1.05), bleed shut until
240 min after; half-life 30 h. Start 2025-07-01 00:00 UTC, a Tuesday, at 4.4 cycles.
"""
import math
import numpy as np
from scipy.integrate import solve_ivp

V, VALVE, DRIFT = 10000.0, 1000.0, 5.0
HOURS = [0.80, 0.78, 0.76, 0.76, 0.78, 0.82, 0.88, 0.94, 1.00, 1.06, 1.12, 1.17,
         1.21, 1.24, 1.25, 1.23, 1.20, 1.15, 1.09, 1.03, 0.98, 0.93, 0.88, 0.84]
MAKEUP = np.array([1.0, 300.0, 23.0, 82.0, 0.0, 0.0])  # cycles, conductance, chloride, calcium, inhibitor, biocide
CA, INH, BIO = 3, 4, 5
SET, SHUT, DOWN = 1232.0, 1205.0, 1150.0
DECAY = math.log(2) / 30
STARTS = [d * 24 + 20.5 for d in (0, 3, 7, 10)]  # 21:30 local is 20:30 UTC
END = 14 * 24


def conductivity(y):
    return y[1] * (1 - 0.025 * (y[0] - 1)) + 0.3 * (y[INH] - 100)


def slope(evaporation, valve, inhibitor, biocide):
    liquid = DRIFT + (VALVE if valve else 0)
    feed = np.zeros(6)
    feed[INH] = inhibitor * 0.0893 * 1.12e6
    feed[BIO] = biocide * 3 * 1.05e6

    def f(_, y):
        d = ((evaporation + liquid) * MAKEUP + feed - liquid * y) / V
        d[CA] -= 0.02 * max(0.0, y[CA] - 340)
        d[BIO] -= DECAY * y[BIO]
        return d
    return f


def main():
    t, y = 0.0, np.array([4.4, 1320.0, 101.2, 340.0, 100.0, 0.0])
    calls, phase, phase_end, starts = False, None, math.inf, list(STARTS)
    was_open, events, samples = False, [], []
    next_sample = 6.0
    while t < END - 1e-9:
        if starts and abs(t - starts[0]) < 1e-7:
            starts.pop(0)
            phase, phase_end = "down", t + 1
            events.append((t, "BleedDownStarted"))
        k = conductivity(y)
        calls = (k > SHUT + 1e-7) if calls else (k >= SET - 1e-7)
        if phase == "down" and (t >= phase_end - 1e-7 or k <= DOWN + 1e-7):
            phase, phase_end = "feed", t + 19 / 60
            events.append((t, "DoseStarted"))
        elif phase == "feed" and t >= phase_end - 1e-7:
            phase, phase_end = "hold", t + 4
            events.append((t, "DoseEnded"))
        elif phase == "hold" and t >= phase_end - 1e-7:
            phase, phase_end = None, math.inf
            events.append((t, "HoldEnded"))
        valve = phase == "down" or (calls and phase is None)
        if valve != was_open:
            events.append((t, "BleedOpened" if valve else "BleedShut"))
            was_open = valve
        end = min(math.floor(t + 1e-7) + 1, phase_end, starts[0] if starts else math.inf, next_sample, END)
        evaporation = 500 * 1.26 * HOURS[(int(math.floor(t + 1e-7)) + 1) % 24]
        limits = [SHUT if calls else SET] + ([DOWN] if phase == "down" else [])
        stops = []
        for limit in limits:
            if abs(k - limit) > 1e-6:
                def stop(_, z, limit=limit):
                    return conductivity(z) - limit
                stop.terminal = True
                stops.append(stop)
        solved = solve_ivp(slope(evaporation, valve, 1 if valve else 0, 1 if phase == "feed" else 0), (t, end), y,
                           method="DOP853", rtol=1e-12, atol=1e-12, events=stops or None, max_step=0.25)
        t, y = float(solved.t[-1]), solved.y[:, -1].copy()
        if abs(t - end) < 1e-9:
            t = end
        if abs(t - next_sample) < 1e-9:
            samples.append((t, y.copy()))
            next_sample += 6
    print("what,hour,cycles,conductivity,chloride,calcium,inhibitor,biocide")
    for hour, z in samples:
        print("level,%.1f,%.12g,%.12g,%.12g,%.12g,%.12g,%.12g" % (hour, z[0], conductivity(z), z[2], z[3], z[4], z[5]))
    for hour, what in events:
        print("%s,%.10f,,,,,," % (what, hour))


main()
