"""The card of all plans together on paper: cautions first, every pump, water and food, whole, large enough, in black alone."""

from __future__ import annotations

import re
from datetime import timedelta
from pathlib import Path
from zoneinfo import ZoneInfo

import pytest

from evenwater.card import words
from evenwater.card.items import Stroke, Text
from evenwater.card.label_paper import A5 as LABEL_A5
from evenwater.card.output import lay_out, title_of, to_image, write_pdf
from evenwater.card.paper import ROUND_PAPERS, Paper
from evenwater.card.together import APART, EXPECTED, NAMED, PLAN, RULE, TEST, WATER
from evenwater.engine.following import STOP
from evenwater.engine.quantities import Typed
from evenwater.screens import together_card
from evenwater.screens.together_card import DRAFT, TogetherPage
from tests.card.labels import set_words
from tests.card.reading import page_texts, runs, squeezed
from tests.engine.asking import NOW, known
from tests.engine.upkeeps import item, limewater
from tests.screens.lint import faults, millilitres, strings
from tests.screens.timetable_asking import PLAN as PLAN_ID
from tests.screens.timetable_asking import followed
from tests.screens.together_asking import BAY, read, together, typed

BERLIN = ZoneInfo("Europe/Berlin")
FINEST = 0.3
"""Of a line on paper [mm]: what is finer is lost in a photocopy."""
TESTED = {"alkalinity": read("8 dKH"), "calcium": read("420 mg/L"), "nitrate": read("5 mg/L as NO3")}
USED = {"alkalinity": "0.9 dKH per day", "calcium": "6.4 mg/L per day"}
KEPT = (item("alkalinity", step="0.1 mL", name="Shelf pump"), item("calcium", step="0.1 mL"))
MASH = {"name": "Rotifer mash", "per_day": "2 mL per day", "says": "per_ml", "nitrogen": "1 mg/mL", "phosphorus": "0.1 mg/mL",
        "cold": "yes", "opened_on": "2026-11-20", "keeps_days": "14"}  # fmt: skip
WATER_OF = {"exchanged": "10 L per day"}


def sheet(*items: dict, name: str = "North frag bay", foods: tuple = (MASH,), **more: object) -> TogetherPage | None:
    """Return the card of what runs."""
    found = together(
        more.pop("readings", TESTED), USED, *(items or KEPT), foods=foods, now=NOW.astimezone(BERLIN), **more
    )
    system = typed({**BAY, "name": name, "volume_known": "measured by filling"})
    return together_card.page(found, known(), system, [typed(food) for food in foods], NOW.astimezone(BERLIN))


def there(page: TogetherPage | None) -> TogetherPage:
    assert page is not None
    return page


SPOILED = {**MASH, "opened_on": "2026-11-01"}
SHEETS: dict[str, TogetherPage] = {
    "usual": there(sheet(system=WATER_OF)),
    "plan": there(sheet(plans=(followed(),), readings={**TESTED, "alkalinity": read("6.8 dKH")})),
    "limewater": there(sheet(item("alkalinity", additive=limewater(200.0), flow="300 mL/min"), foods=())),
    "bottle": there(
        sheet(item("alkalinity", additive={"label": {"dose": "5 mL", "water": "100 L", "raises": "1 dKH"}}))
    ),
    "draft": there(sheet(plans=(followed(STOP),), foods=(SPOILED,), name="A name that goes on and on " * 5)),
}
ON = {name: ROUND_PAPERS[name] for name in ("A4", "A5")}
on_every_paper = pytest.mark.parametrize("paper", list(ON.values()), ids=lambda paper: paper.name)
every_sheet = pytest.mark.parametrize("name", list(SHEETS))


@pytest.fixture(scope="module")
def pdf(qapp, tmp_path_factory: pytest.TempPathFactory):
    folder = tmp_path_factory.mktemp("together")

    def get(name: str, paper: Paper) -> Path:
        file = folder / f"{name} {paper.name}.pdf"
        if not file.exists():
            write_pdf(file, SHEETS[name], paper)
        return file

    return get


@on_every_paper
@every_sheet
def test_L25_the_words_on_the_paper_are_the_words_of_the_card(name: str, paper: Paper) -> None:
    """Nothing lost, nothing added, on as many pages as it takes."""
    page = SHEETS[name]
    pages = lay_out(page, paper)
    on_paper = set_words(item.words for each in pages for item in each.items if isinstance(item, Text))
    own = set_words([NAMED, WATER, TEST, EXPECTED, PLAN, RULE, APART, f"{DRAFT}.", words.STOP, words.HANDLING, words.RULER, words.GOES_ON])  # fmt: skip
    own |= set_words(words.page_of(number, len(pages)) for number in range(1, len(pages) + 1))
    said = set_words(strings(page)) | {page.code}
    assert said <= on_paper
    assert on_paper <= said | own


@on_every_paper
@every_sheet
def test_cautions_and_first_aid_stand_before_every_figure(pdf, name: str, paper: Paper) -> None:
    text = "".join(page_texts(pdf(name, paper)))
    page = SHEETS[name]
    aid = text.index(squeezed(page.emergency)[:20])
    for row in page.rows:
        assert text.index(squeezed(row.when.splitlines()[0])) > aid
    assert all(text.index(squeezed(caution)[:20]) < aid for caution in page.cautions)


@on_every_paper
@every_sheet
def test_L15_letters_are_as_large_as_on_a_dose_card(pdf, name: str, paper: Paper) -> None:
    pages = [run for page in runs(pdf(name, paper)) for run in page]
    assert min(run.points for run in pages) >= 10.0
    for row in (*SHEETS[name].rows, *SHEETS[name].foods):
        large = [run for run in pages if run.points >= 36.0 and run.bold]
        assert any(squeezed(run.text) in squeezed(row.dose) for run in large), row.dose


@on_every_paper
@every_sheet
def test_L17_everything_lies_within_the_paper_and_no_words_on_words(name: str, paper: Paper) -> None:
    for page in lay_out(SHEETS[name], paper):
        boxes = sorted(item.box for item in page.items if isinstance(item, Text))
        for number, (left, top, right, bottom) in enumerate(boxes):
            assert paper.left - 0.01 <= left
            assert right <= paper.left + paper.content_width + 0.01
            assert paper.top <= top
            assert bottom <= paper.bottom + 0.01
            for other in boxes[number + 1 :]:
                if other[0] >= right:
                    break
                assert other[1] >= bottom - 0.6 or other[3] <= top + 0.6, (boxes[number], other)


@on_every_paper
def test_L18_all_of_it_is_black_and_no_line_is_too_fine(paper: Paper) -> None:
    for page in lay_out(SHEETS["usual"], paper):
        assert all(item.width >= FINEST for item in page.items if isinstance(item, Stroke))
    mono = to_image(SHEETS["usual"], paper, 0, 100.0, mono=True)
    grey = to_image(SHEETS["usual"], paper, 0, 100.0)
    at = [(x, y) for x in range(0, mono.width(), 5) for y in range(0, mono.height(), 5)]
    dark = [place for place in at if grey.pixelColor(*place).lightness() < 128]
    assert dark
    assert [place for place in at if mono.pixelColor(*place).lightness() < 128] == dark


@on_every_paper
def test_L25_every_page_says_whose_it_is_and_which_it_is(pdf, paper: Paper) -> None:
    pages = page_texts(pdf("usual", paper))
    for number, text in enumerate(pages, start=1):
        assert squeezed("North frag bay") in text
        assert squeezed(f"{NAMED} {SHEETS['usual'].code}") in text
        assert squeezed(words.page_of(number, len(pages))) in text


@every_sheet
def test_words_keep_the_rules_of_expression(name: str) -> None:
    page = SHEETS[name]
    assert not [fault for text in strings(page) for fault in faults(text)]
    for row in (*page.rows, *page.foods):
        assert faults(row.dose, dose=True) == []
        assert not re.search(r"\d ?U\b", row.setting)


def test_everything_that_runs_stands_on_it(pdf) -> None:
    page = SHEETS["usual"]
    assert [row.additive for row in page.rows] == ["sodium CARBonate anhydrous", "calcium CHLORide dihydrate"]
    assert page.rows[0].when == "Alkalinity upkeep, every hour"
    assert "per hour" in page.rows[0].setting
    assert page.rows[0].setting.startswith("Shelf pump: runs ")
    assert "In the jug: 106\u00a0g sodium CARBonate anhydrous made up to 1\u00a0L." in page.rows[0].setting
    assert page.foods[0].dose == "2\u00a0mL"
    assert "Keep it cold. Use it until Fri 4 Dec 2026" in page.foods[0].setting
    assert page.water[0] == "Old water out: 10\u00a0L (litres) per day. New water in: 10\u00a0L (litres) per day."
    text = "".join(page_texts(pdf("usual", ROUND_PAPERS["A4"])))
    for said in (*page.tests, *page.expected, *page.separation, *page.stop, *page.rules):
        assert squeezed(said) in text


def test_L20_never_more_than_the_days_doses() -> None:
    page = SHEETS["usual"]
    for row, most in zip(page.rows, page.maxima, strict=True):
        assert row.additive in most
        in_24_hours = re.search(r"([\d.]+\u00a0mL) in 24 hours", row.setting)
        assert in_24_hours
        assert millilitres(most) == millilitres(in_24_hours[1])
        assert millilitres(most) == 24 * millilitres(row.dose)


def test_L19_it_ends_with_the_plan_or_where_a_value_would_leave_its_range_or_after_a_month() -> None:
    assert SHEETS["usual"].valid_until == "Valid until Fri 25 Dec 2026"
    plan = followed()
    assert plan.kept is not None
    ends = plan.kept.course.ends_at.astimezone(BERLIN)
    assert SHEETS["plan"].valid_until.endswith(f"{ends.day} Nov 2026")
    assert PLAN_ID in SHEETS["plan"].because
    falling = there(sheet(KEPT[0], readings={**TESTED, "calcium": read("370 mg/L")}))
    # 70 mg/L above the hard range, 6.4 a day: 10.9 days, and a day before that.
    assert falling.valid_until == "Valid until Sat 5 Dec 2026"
    assert falling.because.startswith("Then calcium would leave its range")


def test_a_plan_that_is_followed_stands_in_the_place_of_its_upkeep(pdf) -> None:
    page = SHEETS["plan"]
    assert [row.when.splitlines()[-1] for row in page.rows] == [f"Plan {PLAN_ID}", "Calcium upkeep, every hour"]
    assert squeezed(f"those of plan {PLAN_ID} until") in "".join(page_texts(pdf("plan", ROUND_PAPERS["A4"])))
    assert any(line.startswith("Alkalinity: by ") for line in page.tests)


def test_a_card_with_a_danger_or_with_something_unread_is_a_draft_that_says_why(pdf) -> None:
    page = SHEETS["draft"]
    assert any("must not be followed on" in why for why in page.draft)
    assert any("The last day of Rotifer mash" in why for why in page.draft)
    texts = page_texts(pdf("draft", ROUND_PAPERS["A4"]))
    assert all(squeezed(DRAFT) in text for text in texts)
    assert all(each.draft == DRAFT for each in lay_out(page, ROUND_PAPERS["A4"]))
    assert squeezed("must not be followed on") in texts[0]
    unread = there(sheet(foods=({"name": "Mash", "per_day": "2 apples"},)))
    assert any("cannot be read" in why for why in unread.draft)
    assert not SHEETS["usual"].draft


def test_where_nothing_runs_there_is_no_card() -> None:
    bare = together({"calcium": read("420 mg/L")}, {})
    assert together_card.page(bare, known(), typed(BAY), (), NOW) is None
    unknown = together(TESTED, USED, system={"net_volume": ""})
    assert together_card.page(unknown, known(), {"name": Typed("Bay")}, (), NOW) is None


def test_tests_fall_due_before_a_reading_is_too_old() -> None:
    old = {**TESTED, "calcium": read("420 mg/L", timedelta(days=9))}
    tests = there(sheet(readings=old, system=WATER_OF)).tests
    # 8 hours ago alkalinity, which is too old after three days; calcium after seven.
    assert any(line == "Alkalinity: by Sat 28 Nov 2026, then every 3\u00a0days." for line in tests)
    assert any(line == "Calcium: now, then every 7\u00a0days." for line in tests)


def test_the_code_is_another_when_a_dose_is_another() -> None:
    assert len({page.code for page in SHEETS.values()}) == len(SHEETS)
    assert there(sheet(system=WATER_OF)).code == SHEETS["usual"].code
    assert title_of(SHEETS["usual"]) == f"Everything that runs, North frag bay, {SHEETS['usual'].code}"


def test_it_goes_on_no_paper_for_labels(qapp) -> None:
    with pytest.raises(TypeError):
        lay_out(SHEETS["usual"], LABEL_A5)
