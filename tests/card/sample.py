"""A realistic card to look at and to test with. Its figures are only for the look; the room is invented."""

from __future__ import annotations

from dataclasses import replace

import numpy as np

from evenwater.screens.views import CardView, ChartView, DoseRow

NBSP = "\u00a0"
READ_AT = 1_795_593_600.0
"""25 November 2026, 08:00 UTC [s]."""


def chart() -> ChartView:
    """Return a ramp from 6.8 to 8.4 dKH in 38.4 h, then upkeep until 72 h."""
    hours = np.linspace(0.0, 72.0, 289)
    times = READ_AT + hours * 3600
    plan = np.minimum(6.8 + hours / 24, 8.4)
    spread = 0.1 + 0.004 * hours
    doses_at = READ_AT + 3600 * np.arange(1.0, 73.0)
    return ChartView(
        times=times,
        plan=plan,
        low=plan - spread,
        high=plan + 1.2 * spread,
        uptake_stops=plan + 0.9 * hours / 24 * 0.55,
        nothing=6.8 - 0.9 * hours / 24 * 0.5,
        target=8.4,
        fastest=(READ_AT + 3600 * np.array([0.0, 38.4]), np.array([6.8, 8.4])),
        doses_at=doses_at,
        doses_ml=np.where(doses_at < READ_AT + 38.4 * 3600, 4.7, 2.2),
        ramp_end=READ_AT + 38.4 * 3600,
        measured_at=READ_AT,
        measured=6.8,
        unit="dKH",
        title="Alkalinity, dKH",
        decimals=1,
        labels={
            "plan": "plan",
            "uptake_stops": "if uptake stops now",
            "nothing": "if nothing is dosed",
            "target": "target",
        },
    )


def card() -> CardView:
    """Return the card of a correction of alkalinity."""
    return CardView(
        title=f"Raise alkalinity from 6.8{NBSP}dKH to 8.4{NBSP}dKH",
        system="North frag bay",
        volume=f"Net volume 340{NBSP}L, measured by filling, within 3{NBSP}%. "
        f"Reading 6.8{NBSP}dKH, measured Wed 25 Nov 08:00.",
        plan_id="G0CBPC-40",
        issued="Issued Wed 25 Nov 2026 09:00",
        replace="Replace this card when the plan id changes.",
        valid_until="Valid until Mon 30 Nov 2026",
        additive="sodium CARBonate anhydrous",
        formula="Na2CO3",
        strength=f"Strength: dissolved 106{NBSP}g per 1{NBSP}L, mixed 24 Nov 2026.",
        rows=(
            DoseRow(
                when="From Wed 25 Nov 10:00 every hour, 39 doses, last Fri 27 Nov 00:00",
                dose=f"4.7{NBSP}mL",
                additive="sodium CARBonate anhydrous",
                setting=f"Pump runs 11.8{NBSP}s at 24{NBSP}mL per min",
            ),
            DoseRow(
                when="From Fri 27 Nov 01:00 every hour, to keep it there",
                dose=f"2.2{NBSP}mL",
                additive="sodium CARBonate anhydrous",
                setting=f"Pump runs 5.5{NBSP}s at 24{NBSP}mL per min",
            ),
        ),
        maximum=f"Never more than 139.4{NBSP}mL in 24 hours, all doses together.",
        stop=f"Stop and test again if alkalinity reads above 8.7{NBSP}dKH. Never make up missed doses.",
        retest="Test alkalinity on Thu 26 Nov 04:30 at the latest, then once more at the end.",
        refill="A full jug is empty on Sat 12 Dec 2026: refill before then.",
        totals=f"112.8{NBSP}mL in 24 hours, 183.3{NBSP}mL in all.",
        whole_jug=f"If the whole jug ran in, alkalinity would reach 23.3{NBSP}dKH: keep the outlet above the water.",
        separation="Keep 30 minutes and another outlet between this and any calcium or magnesium dose. "
        "Never mix the concentrates.",
        cautions=(
            "Warning: H319 causes serious eye irritation.",
            "Wear goggles and gloves.",
            "Add it to the water slowly, never water onto the salt; it warms as it dissolves.",
            "Keep acids away: it fizzes and heats.",
            "Never mix it with a concentrate of calcium.",
            "Keep the bag airtight: it takes up water and cakes.",
            "The bag's own safety sheet and local rules come first.",
        ),
        remarks=(),
        emergency="In the eyes: rinse for at least 15 minutes and get medical help. Poison centre:",
        write_in=14,
        ramp=chart(),
    )


def draft() -> CardView:
    """Return the same card before its checks have passed."""
    return replace(card(), draft="NOT A PLAN")


def crowded() -> CardView:
    """Return a card with 20 doses of long-named additives, long notes and a reason: nothing of it may be lost."""
    rows = tuple(
        DoseRow(
            when=f"From Wed 25 Nov {hour:02d}:10 every 24 hours, number {hour} of the round, last Fri 27 Nov",
            dose=f"{hour + 100}.5{NBSP}mL",
            additive=f"magnesium SULFate heptahydrate with potassium CHLORide, blend {hour} of the long shelf",
            setting=f"Pump head {hour} runs {hour + 20}.5{NBSP}s at 24{NBSP}mL per min, from the jug marked {hour}",
        )
        for hour in range(1, 21)
    )
    return replace(
        card(),
        system="Propagation gallery behind the quarantine room, lower shelf, third basin from the window",
        rows=rows,
        cautions=tuple(f"Caution {number}: {'keep the lid shut and the label dry; ' * 6}end." for number in range(9)),
        remarks=tuple(f"Remark {number}: the low end of the volume was used for this plan." for number in range(5)),
        write_in=30,
    )


def one_dose() -> CardView:
    """Return a short card: one dose, few words."""
    full = card()
    return replace(full, rows=full.rows[1:], cautions=full.cautions[:2], write_in=6)


def warned() -> CardView:
    """Return a card with remarks: the keeper went on with a reason."""
    return replace(
        card(),
        remarks=(
            "The rise is faster than recommended.",
            "Reason given for the limits set: new colonies arrive on Friday.",
        ),
    )


def said(view: CardView) -> list[str]:
    """Return every string of a card in the order in which it is set on the larger papers."""
    rows = [text for row in view.rows for text in (row.dose, row.when, row.additive, row.setting)]
    return [
        *([view.draft] if view.draft else []),
        view.title,
        view.plan_id,
        view.system,
        view.volume,
        view.issued,
        view.valid_until,
        view.replace,
        *rows,
        view.additive,
        view.formula,
        view.strength,
        view.maximum,
        view.stop,
        *view.remarks,
        view.separation,
        view.retest,
        view.refill,
        view.totals,
        view.whole_jug,
        *view.cautions,
        view.emergency,
    ]


def said_small(view: CardView) -> list[str]:
    """Return every string in the order of a small paper: most of the identity comes after the doses."""
    late = [view.volume, view.issued, view.replace]
    strings = [text for text in said(view) if text not in late]
    place = strings.index(view.separation)
    return strings[:place] + late + strings[place:]


def unequal() -> CardView:
    """Return a card whose doses have one and two digits before the decimal mark."""
    full = card()
    return replace(full, rows=(full.rows[0], replace(full.rows[1], dose=f"12.5{NBSP}mL")))
