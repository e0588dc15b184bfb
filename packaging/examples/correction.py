# %% [markdown]
# # A correction from a notebook
#
# The engine is plain Python: a question is a nested mapping, an answer a frozen value. Cells begin at `# %%`; open this file in any editor
# that knows them, or run it as it is.

# %%
import tomllib
from datetime import UTC, datetime

from evenwater.assets import resources
from evenwater.engine import catalogue, intake
from evenwater.engine.correction import Answer, Refused, solve

known = catalogue.load(resources())
raw = tomllib.loads((resources() / "questions" / "correction.toml").read_text(encoding="utf-8"))
now = datetime(2026, 11, 25, 9, tzinfo=UTC)

# %% [markdown]
# Reading comes first: what is missing or wrong is a list of reasons, never an exception.

# %%
question = intake.correction(raw, known, now)
assert not isinstance(question, intake.Unread), question
answer = solve(question)
assert isinstance(answer, Answer), answer
dose = answer.doses
print(f"{dose.dose_ml} mL every {24 * dose.interval_days:g} h, {dose.count} times: {dose.total_ml} mL in all")
print(f"{answer.set_by} sets the pace of {question.parameter.name}")

# %% [markdown]
# Every limit that was looked at, the nearest first.

# %%
for near in sorted(answer.limits, key=lambda each: -each.share):
    print(f"{near.code:24} {near.value:10.4g} of {near.bound:10.4g} {near.unit:12} {100 * near.share:6.1f} %")

# %% [markdown]
# What no plan may do is refused, with reasons that carry their figures: a target beyond what anybody keeps.

# %%
too_far = intake.correction({**raw, "change": {**raw["change"], "target": "14.5 dKH"}}, known, now)
assert not isinstance(too_far, intake.Unread)
refused = solve(too_far)
assert isinstance(refused, Refused)
for reason in refused.reasons:
    print(reason.code, dict(reason.params))
