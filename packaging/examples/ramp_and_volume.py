# %% [markdown]
# # How a ramp hangs on the net volume
#
# The dose is right for one volume. If the tank holds less than was thought, the same dose lifts it faster. The plan is made for 340 L; the
# curves are what the water really does in 280 to 400 L.

# %%
import tomllib
from datetime import UTC, datetime
from html import escape

import numpy as np

from evenwater.assets import resources
from evenwater.engine import catalogue, intake
from evenwater.engine.correction import Answer, solve
from evenwater.engine.quantities import from_canonical

known = catalogue.load(resources())
raw = tomllib.loads((resources() / "questions" / "correction.toml").read_text(encoding="utf-8"))
question = intake.correction(raw, known, datetime(2026, 11, 25, 9, tzinfo=UTC))
assert not isinstance(question, intake.Unread)
answer = solve(question)
assert isinstance(answer, Answer)

# %%
days = np.linspace(0.0, answer.lasts_days, 60)
planned_l = question.system.volume_l


def water(volume_l: float) -> np.ndarray:
    """Return what a tank of this volume [L] really holds along the plan [dKH]."""
    rise = (answer.pace + question.use) * planned_l / volume_l - question.use
    held = question.measured + rise * days
    return np.array([from_canonical(value, "alkalinity", "dKH") for value in held])


curves = {volume: water(volume) for volume in (280.0, 310.0, planned_l, 370.0, 400.0)}
for volume, curve in curves.items():
    print(
        f"{volume:5.0f} L: {curve[-1]:.2f} dKH at the end, {(curve[-1] - curve[0]) / answer.lasts_days:.2f} dKH a day"
    )

# %% [markdown]
# Drawn without any further library. In a notebook: `IPython.display.SVG(drawn(curves))`.


# %%
def drawn(lines: dict[float, np.ndarray], wide: int = 640, high: int = 320) -> str:
    """Return the curves as an SVG picture, each with its volume at its end."""
    low, top = (bound(curve.min() if bound is min else curve.max() for curve in lines.values()) for bound in (min, max))
    parts = []
    for volume, curve in lines.items():
        x = 40.0 + (wide - 120.0) * days / days[-1]
        y = 20.0 + (high - 40.0) * (top - curve) / (top - low)
        points = " ".join(f"{a:.1f},{b:.1f}" for a, b in zip(x, y, strict=True))
        width = 3 if volume == planned_l else 1
        parts.append(f'<polyline points="{points}" fill="none" stroke="black" stroke-width="{width}"/>')
        parts.append(f'<text x="{x[-1] + 6:.0f}" y="{y[-1] + 4:.0f}" font-size="12">{escape(f"{volume:.0f} L")}</text>')
    return f'<svg xmlns="http://www.w3.org/2000/svg" width="{wide}" height="{high}">{"".join(parts)}</svg>'


picture = drawn(curves)
