# %% [markdown]
# # The carbonate system against published values
#
# Check values at salinity 35 and 25 degC from Dickson, Sabine and Christian 2007, Guide to Best Practices for Ocean CO2 Measurements,
# chapter 5. What the handbook prints to four digits must come out to four digits.

# %%
import numpy as np

from evenwater.engine import carbonate_constants as constants
from evenwater.engine.carbonate_state import from_alkalinity_pco2, seawater

published = {
    "ln K0": (np.log(constants.co2_solubility_weiss_1974(35.0, 25.0)), -3.5617),
    "log10 K1": (np.log10(constants.carbonic_k1_lueker_2000(35.0, 25.0)), -5.8472),
    "log10 K2": (np.log10(constants.carbonic_k2_lueker_2000(35.0, 25.0)), -8.9660),
    "ln KB": (np.log(constants.boric_dickson_1990(35.0, 25.0)), -19.7964),
}
for name, (ours, theirs) in published.items():
    print(f"{name:9} {float(ours):10.4f} published {theirs:10.4f}")
    assert abs(float(ours) - theirs) < 0.0001, name

# %% [markdown]
# A whole ramp of alkalinity is one call: what pH and aragonite saturation do in water that is in balance with air of 420 uatm.

# %%
alkalinity = np.linspace(2.2, 3.4, 7)  # meq/kg
state = from_alkalinity_pco2(seawater(35.0, 25.0), alkalinity, 420.0)
for at, ph, omega in zip(alkalinity, state.ph_total, state.aragonite_saturation, strict=True):
    print(f"{at:5.2f} meq/kg: pH {ph:.3f} (total scale), aragonite {omega:.2f}")
