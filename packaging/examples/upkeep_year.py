# %% [markdown]
# # A year of upkeep
#
# Alkalinity and calcium are given back every day what is used. What that leaves in the water adds up: here are a week, a month and a year,
# with and without the exchange of the example.

# %%
import tomllib
from datetime import UTC, datetime

from evenwater.assets import resources
from evenwater.engine import catalogue, upkeep, upkeep_intake
from evenwater.engine.form import Unread
from evenwater.engine.upkeep_plan import UpkeepAnswer

known = catalogue.load(resources())
raw = tomllib.loads((resources() / "questions" / "upkeep.toml").read_text(encoding="utf-8"))
now = datetime(2026, 11, 25, 9, tzinfo=UTC)
question = upkeep_intake.upkeep(raw, known, now)
assert not isinstance(question, Unread), question
answer = upkeep.solve(question)
assert isinstance(answer, UpkeepAnswer), answer

# %%
for dose in answer.doses:
    print(
        f"{dose.item.parameter.name:12} {dose.dose_ml:6.2f} mL, {dose.per_day} times a day; a jug lasts {dose.jug_days:.0f} days"
    )

# %%
print(f"{'':12} {'a week':>10} {'a month':>10} {'a year':>10} {'a year, exchanged':>20}")
for drift in answer.drifts:
    week, month, year = drift.alone
    exchanged = "" if drift.exchanged is None else f"{drift.exchanged[-1]:20.4g}"
    print(f"{drift.name:12} {week:10.4g} {month:10.4g} {year:10.4g} {exchanged} {drift.unit}")
print(f"salt left in a year: {answer.salt.alone[-1]:.0f} g")

# %% [markdown]
# Every equivalent made good with a two-part leaves one mole of sodium chloride, 58.44 g. Held against what was dosed:

# %%
soda = next(dose for dose in answer.doses if dose.item.parameter.name == "alkalinity")
equivalents = 365.25 * soda.in_24_hours_ml * 2.0 * 106.0 / 105.988 / 1000.0  # 106 g of soda ash in a litre
print(f"{equivalents:.1f} eq in a year leave {58.44 * equivalents:.0f} g of sodium chloride")
print(f"the engine says {answer.sodium_chloride.alone[-1]:.0f} g")
assert abs(answer.sodium_chloride.alone[-1] - 58.44 * equivalents) < 0.01 * 58.44 * equivalents
