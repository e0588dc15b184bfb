"""The Stocks sheet without its widgets: recipes both ways against atomic weights, refusals, dates, labels, words."""

from __future__ import annotations

from collections.abc import Mapping

import pytest

from evenwater.engine.quantities import Typed
from evenwater.engine.recipe import StockQuestion, Strength, Unweighed, solve
from evenwater.engine.stock import Dissolved
from evenwater.screens import shelf, stock_sheet
from evenwater.screens.stock_sheet import Stocked
from tests.engine.reckoning import DEGREE, SALTS
from tests.screens.asked import catalogue
from tests.screens.batches import (
    CALCIUM,
    CHLORIDE,
    MG_PER_MEQ,
    SEA_MAGNESIUM,
    SEA_SULFATE,
    SODA,
    SULFATE,
    batch,
    bottle,
    carries,
    limewater,
    mixed,
    weighed,
)  # fmt: skip
from tests.screens.lint import NBSP, faults, strings

ATOMIC = 2e-5
"""What the weights of two sources may differ by."""


def shown(
    made: Mapping[str, Typed], partner: Mapping[str, Typed] | None = None, notes: tuple[str, ...] = ()
) -> Stocked:
    return stock_sheet.evaluate(made, partner or {}, catalogue(), notes)


def plain(text: str) -> str:
    return text.replace(NBSP, " ")


def wanted(
    chemical: str, raises: tuple[str, str], litres: str = "1", **more: str | tuple[str, str]
) -> dict[str, Typed]:
    return batch(
        chemical=chemical, made_up_to=(litres, "L"), recipe=shelf.WANTED, wanted_dose=("1", "mL"),
        wanted_water=("100", "L"), wanted_raises=raises, **more,
    )  # fmt: skip


def paired(chemical: str, litres: str = "1", **more: str | tuple[str, str]) -> dict[str, Typed]:
    return batch(chemical=chemical, made_up_to=(litres, "L"), recipe=shelf.PAIR, partner="other", **more)


def grams(found: Stocked) -> list[float]:
    assert found.answer is not None, found.view.messages
    assert isinstance(found.answer.batch, Dissolved)
    return [portion.grams for portion in found.answer.batch.portions]


def per_ml(found: Stocked, name: str) -> float:
    assert found.answer is not None, found.view.messages
    return next(item.per_litre for item in found.answer.carries if item.name == name) / 1000.0


# As weighed


def test_150_g_of_soda_ash_in_a_litre() -> None:
    found = shown(weighed(SODA, 150))
    strength = carries(SODA, "alkalinity", 150)
    assert per_ml(found, "alkalinity") == pytest.approx(strength, rel=ATOMIC)
    assert (found.view.state, found.view.figure, found.view.figure_unit) == ("answered", "2.831", "meq per mL")
    assert plain(found.view.second) == f"of alkalinity: 1 mL raises 100 L by {strength / 100.0 / float(DEGREE):.3g} dKH"
    assert plain(found.view.third) == "150 g of sodium CARBonate anhydrous, filled up to 1 L"
    assert found.masses == ()


@pytest.mark.parametrize("chemical", SALTS)
def test_the_figure_is_what_the_chemical_is_mainly_for(chemical: str) -> None:
    known = catalogue().chemicals[chemical]
    mass = 0.5 * (known.most_per_litre(20.0) or 1.0)
    found = shown(weighed(chemical, mass))
    main = known.raises[0]
    strength = carries(chemical, main, round(mass, 2))
    assert float(found.view.figure) == pytest.approx(strength, rel=5.1e-4)
    assert found.view.second.startswith("of dry salt" if main == "salinity" else f"of {main}:")
    along = set(SALTS[chemical].raises) | set(SALTS[chemical].along)
    assert all(f"and {name} by" in found.view.second for name in along - {main})


def test_how_near_the_limit_is_stands_in_a_bar() -> None:
    most = catalogue().chemicals[SODA].most_per_litre(12.0)
    assert most is not None
    (bar,) = shown(weighed(SODA, 106, temperature=("12", "degC"))).view.bars
    assert plain(bar.label) == "Dissolved, at 12 °C"
    assert bar.share == pytest.approx(106 / most, rel=1e-9)
    assert plain(bar.text) == f"106 of {most:.3g} g per L"
    assert shown(limewater()).view.bars == ()


@pytest.mark.parametrize(("share", "near"), [(0.89, False), (0.91, True), (0.99, True)])
def test_H13_within_a_tenth_of_the_limit_there_is_a_remark(share: float, near: bool) -> None:
    most = catalogue().chemicals[SODA].most_per_litre(20.0)
    assert most is not None
    remarks = shown(weighed(SODA, share * most)).view.remarks
    assert any("near its limit" in remark for remark in remarks) == near


@pytest.mark.parametrize(("made", "path"), [
    (weighed(SODA, 150, temperature=("10", "degC")), "additive.dissolved"),
    (weighed(SODA, 216), "additive.dissolved"),
    (wanted(SODA, ("0.1", "dKH"), temperature=("10", "degC")), "wanted"),
])  # fmt: skip
def test_H13_what_cannot_stay_dissolved_in_the_coolest_hour_is_refused(made: Mapping[str, Typed], path: str) -> None:
    found = shown(made)
    assert found.view.state == "refused"
    assert [(m.code, m.path) for m in found.view.messages] == [("does_not_dissolve", path)]
    assert found.answer is None
    assert found.masses == ()
    assert found.label("Jug", "jug:1", made) is None
    assert shown({**made, "temperature": Typed("30", "degC")}).view.state == "answered"


def test_what_is_still_missing_is_asked_for_and_no_alarm() -> None:
    found = shown(batch(chemical=SODA))
    assert found.view.state == "empty"
    assert {m.path for m in found.view.messages} == {"additive.dissolved", "additive.made_up_to"}
    assert {m.code for m in found.view.messages} == {"missing"}


# To a wanted strength


def test_a_wanted_rise_gives_the_grams_of_the_atoms() -> None:
    """1 mL shall raise 100 L by 0.1 dKH: 3.566 meq in a millilitre, half as many millimoles of soda ash."""
    found = shown(wanted(SODA, ("0.1", "dKH"), "0.5"))
    meq_per_ml = 0.1 * float(DEGREE) * 100.0
    assert grams(found) == [pytest.approx(meq_per_ml / 2.0 * float(SALTS[SODA].molar) / 1000.0 * 500.0, rel=ATOMIC)]
    assert per_ml(found, "alkalinity") == pytest.approx(meq_per_ml, rel=ATOMIC)
    assert found.view.figure_unit == "g to weigh out"
    assert found.view.figure == f"{grams(found)[0]:.4g}"


@pytest.mark.parametrize(("chemical", "parameter", "raises", "litres", "purity"), [
    (SODA, "alkalinity", 0.1, 1.0, 100.0), (CALCIUM, "calcium", 0.7, 2.5, 96.5), ("sodium nitrate", "nitrate", 0.02, 0.5, 99.0),
])  # fmt: skip
def test_the_sheet_weighs_what_the_engine_weighs(
    chemical: str, parameter: str, raises: float, litres: float, purity: float
) -> None:
    known = catalogue()
    asked = known.parameters[parameter]
    strength = Strength(asked, asked.canonical(raises) * 100.0)
    question = Unweighed(known.chemicals[chemical], litres, purity / 100.0, strength)
    expected = solve(StockQuestion(question, tuple(known.parameters.values())))
    made = wanted(chemical, (f"{raises}", asked.display_unit), f"{litres}", purity=(f"{purity}", "%"))
    (found,) = grams(shown(made))
    assert found == pytest.approx(expected.batch.grams, rel=1e-9)  # type: ignore[union-attr]


@pytest.mark.parametrize("raises", ["0.03", "0.0777", "0.1"])
def test_entered_as_weighed_it_has_the_strength_that_was_wanted(raises: str) -> None:
    asked = wanted(SODA, (raises, "dKH"), "0.75")
    found = shown(asked)
    after = shown({**asked, **dict(found.masses), "recipe": Typed(shelf.WEIGHED)})
    # A scale shows four digits.
    assert per_ml(after, "alkalinity") == pytest.approx(per_ml(found, "alkalinity"), rel=5e-4)
    assert per_ml(after, "alkalinity") == pytest.approx(float(raises) * float(DEGREE) * 100.0, rel=5.5e-4)


def test_a_mass_of_the_batch_before_does_not_disturb_what_is_wanted() -> None:
    assert shown({**wanted(SODA, ("0.1", "dKH")), **batch(dissolved=("9", "g"))}) == shown(wanted(SODA, ("0.1", "dKH")))


# To match another jug


@pytest.mark.parametrize(
    ("mine", "other"), [(SODA, CALCIUM), (CALCIUM, SODA), ("sodium bicarbonate", "calcium chloride hexahydrate")]
)
def test_equal_millilitres_of_a_pair_carry_what_skeleton_takes(mine: str, other: str) -> None:
    partner = weighed(other, 60, 1.5, purity=("97", "%"))
    found = shown(paired(mine, "2", purity=("95", "%")), partner)
    alkaline = "alkalinity" in SALTS[mine].raises
    here = carries(mine, "alkalinity" if alkaline else "calcium", grams(found)[0] * 0.95, 2.0)
    there = carries(other, "calcium" if alkaline else "alkalinity", 60 * 0.97, 1.5)
    meq, mg = (here, there) if alkaline else (there, here)
    assert mg / meq == pytest.approx(MG_PER_MEQ, rel=ATOMIC)
    assert pytest.approx(20.039) == MG_PER_MEQ


def test_106_g_of_soda_ash_match_147_g_of_calcium_chloride() -> None:
    found = shown(paired(SODA), weighed(CALCIUM, 147))
    assert found.view.figure == "106"
    assert found.masses == (("dissolved", Typed("106", "g")),)


def test_two_that_are_no_pair_are_refused_beside_the_jug() -> None:
    found = shown(paired(SODA), weighed("sodium bicarbonate", 60))
    assert [(m.code, m.path) for m in found.view.messages] == [("no_pair", "wanted.partner.chemical")]


@pytest.mark.parametrize("partner", [{}, bottle("5", "100", ("1", "dKH")), batch(mixed_on="2026-11-21")])
def test_a_jug_that_cannot_be_matched_is_said_in_one_sentence(partner: Mapping[str, Typed]) -> None:
    found = shown(paired(SODA), partner)
    assert [(m.code, m.path) for m in found.view.messages] == [("no_partner", "wanted.partner")]
    assert found.view.state == "refused"
    unsaid = {name: typed for name, typed in paired(SODA).items() if name != "partner"}
    (message,) = shown(unsaid, {}).view.messages
    assert (message.code, message.text) == ("missing", "Choose the jug to match.")


# A mix, limewater, a bottle


@pytest.mark.parametrize(("first", "second"), [("100", "100"), ("97", "94")])
def test_a_wanted_mix_keeps_seawaters_balance(first: str, second: str) -> None:
    made = wanted(
        CHLORIDE, ("0.4", "mg/L"), "2", also_chemical=SULFATE, purity=(first, "%"), also_purity=(second, "%")
    )  # fmt: skip
    one, other = (float(p) / 100.0 * mass for p, mass in zip((first, second), grams(shown(made)), strict=True))
    chloride, sulfate = one / float(SALTS[CHLORIDE].molar), other / float(SALTS[SULFATE].molar)
    assert sulfate / (chloride + sulfate) == pytest.approx(SEA_SULFATE / SEA_MAGNESIUM, rel=ATOMIC)
    assert per_ml(shown(made), "magnesium") == pytest.approx(40.0, rel=1e-9)
    assert [name for name, _ in shown(made).masses] == ["dissolved", "also_dissolved"]


def test_a_weighed_mix_says_its_balance_beside_that_of_the_sea() -> None:
    line = next(line for line in shown(mixed(300, 417.8)).view.working if line.what == "Sulfate to magnesium")
    sea = SEA_SULFATE / SEA_MAGNESIUM
    assert (line.how, line.gives) == (f"by moles, in seawater {sea:.3f}", f"{sea:.3f}")
    off = next(line for line in shown(mixed(300, 100)).view.working if line.what == "Sulfate to magnesium")
    one, other = 300 / float(SALTS[CHLORIDE].molar), 100 / float(SALTS[SULFATE].molar)
    assert off.gives == f"{other / (one + other):.3f}"


def test_limewater_holds_what_dissolves_at_its_coolest_whatever_lies_below() -> None:
    lime = catalogue().chemicals["calcium hydroxide"]
    for celsius in (10.0, 20.0):
        found = shown(limewater(temperature=(f"{celsius}", "degC"), dissolved=("500", "g")))
        held = lime.most_per_litre(celsius)
        assert held is not None
        assert per_ml(found, "alkalinity") == pytest.approx(
            carries("calcium hydroxide", "alkalinity", held), rel=ATOMIC
        )
        assert "clear" in found.view.third
        assert found.view.remarks


def test_a_bottle_carries_what_its_label_says() -> None:
    found = shown(bottle("5", "100", ("1", "dKH")))
    assert per_ml(found, "alkalinity") == pytest.approx(float(DEGREE) * 100.0 / 5.0, rel=ATOMIC)
    assert plain(found.view.second) == "of alkalinity: 1 mL raises 100 L by 0.2 dKH"
    calcium = bottle("5", "100", ("10", "mg/L"))
    assert [m.path for m in shown(calcium).view.messages] == ["additive.label.parameter"]
    assert per_ml(shown({**calcium, "label_parameter": Typed("calcium")}), "calcium") == pytest.approx(200.0)


# Dates, labels, words


@pytest.mark.parametrize(
    "text", ["25.11.2026", "11/25/2026", "2026-13-01", "2026-02-30", "26-11-25", "tomorrow", "2026-11"]
)
def test_what_is_no_date_is_said_beside_its_field(text: str) -> None:
    for field in ("mixed_on", "use_by"):
        (message,) = stock_sheet.date_messages(batch(**{field: text}))
        assert (message.path, message.code) == (f"additive.{field}", "not_a_date")
        assert f"“{text}”" in message.text
    assert len(stock_sheet.date_messages(batch(mixed_on=text, use_by=text))) == 2


@pytest.mark.parametrize("text", ["2026-11-25", " 2026-11-25 ", "", "2028-02-29"])
def test_a_date_or_nothing_is_fine(text: str) -> None:
    assert stock_sheet.date_messages(batch(mixed_on=text, use_by=text)) == ()


def test_the_label_is_that_of_the_weighed_batch_with_what_is_known_of_it() -> None:
    made = weighed(SODA, 150, mixed_on="2026-11-25", mixed_by="K. L.", use_by="2027-02-25")
    label = shown(made).label("White jug", "jug:0a1b2c3d", made)
    assert label is not None
    assert label.name == "White jug"
    assert plain(label.strength) == "Strength: dissolved 150 g per 1 L."
    entries = {entry.label: plain(entry.text) for entry in label.entries}
    assert (entries["Mixed on"], entries["Mixed by"], entries["Use by"]) == (
        "Wed 25 Nov 2026",
        "K. L.",
        "Thu 25 Feb 2027",
    )


@pytest.mark.parametrize("made", [wanted(SODA, ("0.1", "dKH")), weighed(SODA, 300), batch(chemical=SODA)])
def test_H12_what_is_not_weighed_yet_or_cannot_be_made_has_no_label(made: Mapping[str, Typed]) -> None:
    assert shown(made).label("White jug", "jug:1", made) is None


def test_what_was_in_the_jug_once_was_weighed() -> None:
    used = {**wanted(SODA, ("0.1", "dKH")), **batch(dissolved=("106", "g"), in_use_from="2026-11-21T08:00:00+00:00")}
    assert stock_sheet.recipe_of(used) == shelf.WEIGHED
    assert shown(used).view.figure == "2"


def test_notes_stand_before_the_other_remarks() -> None:
    found = shown(weighed(SODA, 200), notes=("Card A becomes void.",))
    assert found.view.remarks[0] == "Card A becomes void."
    assert len(found.view.remarks) == 2


def everything() -> dict[str, Stocked]:
    """Return what the sheet shows of every chemical in every way it can be said."""
    partner = {"alkalinity": weighed(CALCIUM, 80), "calcium": weighed(SODA, 60)}
    found = {
        "mix": shown(mixed(300, 417.8)),
        "lime": shown(limewater()),
        "bottle": shown(bottle("5", "100", ("1", "dKH"))),
    }
    found["wanted mix"] = shown(wanted(CHLORIDE, ("0.4", "mg/L"), "2", also_chemical=SULFATE))
    for name, chemical in catalogue().chemicals.items():
        most = chemical.most_per_litre(20.0) or 1.0
        for share in (0.001, 0.5, 0.95, 1.2):
            found[f"{name} {share}"] = shown(weighed(name, share * most))
        main = next(iter(chemical.raises), "")
        unit = catalogue().parameters[main].display_unit if main else "mg/L"
        found[f"{name} wanted"] = shown(wanted(name, ("0.01", unit)))
        found[f"{name} paired"] = shown(paired(name), partner.get(main, weighed(SODA, 60)))
    return found


def test_every_string_of_every_batch_is_safe_to_read() -> None:
    found = everything()
    states = {stocked.view.state for stocked in found.values()}
    assert states == {"answered", "refused"}
    bad = [
        f"{name}: {fault}"
        for name, stocked in found.items()
        for text in strings(stocked.view)
        for fault in faults(text)
    ]
    assert not bad
