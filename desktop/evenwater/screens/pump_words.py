"""What the fields of a pump and of its calibrations are called in a sentence, and the words that never change."""

from __future__ import annotations

from evenwater.wording import marked

MOST_RUNS = 5

# Local codes and licensed practice come first. Residual-current protection on every circuit near water is what wiring codes ask
# for in wet places; drip loops, splash and the plug are common practice, no source.
CAUTIONS = (
    marked("Residual-current protection (RCD of 30\u00a0mA, or GFCI) on every circuit near the tank."),
    marked("A drip loop in every cable, nothing electrical where it can be splashed."),
    marked("Unplug before reaching in."),
)
MOTORS = (("stepper", marked("Stepper motor")), ("brushed", marked("Brushed motor")))
CYLINDER, SCALE = "cylinder", "scale"
METHODS = ((CYLINDER, marked("A cylinder")), (SCALE, marked("A scale")))
BY_HAND, BY_PUMP = "hand", "pump"
TIMED = ((BY_HAND, marked("A stop watch, by hand")), (BY_PUMP, marked("The pump's own clock")))

# By the name of the field.
PUMP_WORDS = {
    "motor": marked("the motor"),
    "head_fitted": marked("the date the head was fitted"),
    "head_hours": marked("the running hours of the head"),
    "head_life": marked("the hours that a head lasts"),
    "line_bore": marked("the inside diameter of the line"),
    "line_length": marked("the length of the line"),
    "outlet_height": marked("how high the outlet ends"),
    "tubing": marked("what the tubing is"),
    "at": marked("when the pump was calibrated"),
    "hours": marked("the running hours"),
    "method": marked("what the runs were measured with"),
    "doses": marked("the doses in a run"),
    "timed": marked("what the runs were timed with"),
    "water_temperature": marked("the temperature of the water"),
    "air_pressure": marked("the air pressure"),
    "graduation": marked("the cylinder's graduation"),
    "readability": marked("the scale's last digit"),
    "who": marked("who calibrated the pump"),
    "flow_used": marked("the flow that is used"),
    **{f"run_{n}_seconds": marked("how long run {run} lasted") for n in range(1, MOST_RUNS + 1)},
    **{f"run_{n}_reads": marked("what run {run} gave") for n in range(1, MOST_RUNS + 1)},
}
