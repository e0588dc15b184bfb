"""What the fields of a pump and of its calibrations are called in a sentence, and the words that never change."""

from __future__ import annotations

MOST_RUNS = 5

# Local codes and licensed practice come first. Residual-current protection on every circuit near water is what wiring codes ask
# for in wet places; drip loops, splash and the plug are common practice, no source.
CAUTIONS = (
    "Residual-current protection (RCD of 30\u00a0mA, or GFCI) on every circuit near the tank.",
    "A drip loop in every cable, nothing electrical where it can be splashed.",
    "Unplug before reaching in.",
)
MOTORS = (("stepper", "Stepper motor"), ("brushed", "Brushed motor"))
CYLINDER, SCALE = "cylinder", "scale"
METHODS = ((CYLINDER, "A cylinder"), (SCALE, "A scale"))
BY_HAND, BY_PUMP = "hand", "pump"
TIMED = ((BY_HAND, "A stop watch, by hand"), (BY_PUMP, "The pump's own clock"))

# By the name of the field.
PUMP_WORDS = {
    "motor": "the motor",
    "head_fitted": "the date the head was fitted",
    "head_hours": "the running hours of the head",
    "head_life": "the hours that a head lasts",
    "line_bore": "the inside diameter of the line",
    "line_length": "the length of the line",
    "outlet_height": "how high the outlet ends",
    "tubing": "what the tubing is",
    "at": "when the pump was calibrated",
    "hours": "the running hours",
    "method": "what the runs were measured with",
    "doses": "the doses in a run",
    "timed": "what the runs were timed with",
    "water_temperature": "the temperature of the water",
    "air_pressure": "the air pressure",
    "graduation": "the cylinder's graduation",
    "readability": "the scale's last digit",
    "who": "who calibrated the pump",
    "flow_used": "the flow that is used",
    **{f"run_{n}_seconds": f"how long run {n} lasted" for n in range(1, MOST_RUNS + 1)},
    **{f"run_{n}_reads": f"what run {n} gave" for n in range(1, MOST_RUNS + 1)},
}
