"""What is known of groups of lines without a search is what a search says, and conflicts are those of every chain."""

from __future__ import annotations

from dataclasses import replace
from random import Random

import pytest

from examples import each_with_seeds
from planning.enumeration import linked
from planning.stores import ListStore
from planning.surveys import CAR, TIGHT, TOO_FAR
from planning.test_plan_position import deciding
from planning.test_plan_stages import drawn
from planning.test_why_no_set import ASK_LESS, SMALL, broken_by, drawn_parts, unmated
from spoutline.catalogue.store import CatalogueStore
from spoutline.model.finding import Severity
from spoutline.model.limit import RuleTables
from spoutline.model.no_set import Demand
from spoutline.model.part import PartKind
from spoutline.model.plan import HangingSet
from spoutline.model.requirement import Requirement, RequirementId
from spoutline.model.survey import Survey
from spoutline.planning.protocols import CandidateFilter
from spoutline.planning.sets.assembly import ChainSearch
from spoutline.planning.sets.conflicts import ConflictFinder
from spoutline.planning.sets.context import PlanningContext
from spoutline.planning.sets.line_order import CHANGEABLE, GIVEN
from spoutline.planning.sets.line_questions import LineQuestions
from spoutline.planning.sets.loads import LoadModel
from spoutline.planning.sets.plan_position import conflict_of
from spoutline.planning.sets.pool import whole_pool
from spoutline.planning.sets.set_query import SetQuery
from spoutline.rules.derive.requirement import requirement_for

Lines = frozenset[RequirementId]
EVERY = frozenset(RequirementId)


def required(survey: Survey, tables: RuleTables) -> Requirement:
    asked = requirement_for(survey.positions[0], survey.site, tables)
    assert isinstance(asked, Requirement)
    return asked


def searched(requirement: Requirement, context: PlanningContext) -> ChainSearch:
    pool = whole_pool(requirement, context.tables, context.parts)
    return ChainSearch(requirement, pool, LoadModel(requirement, context.tables))


def groups(random: Random, count: int) -> list[Lines]:
    """Return groups of lines, most of them with all given ones: what is asked about conflicts."""
    made = []
    for _ in range(count):
        given = set(GIVEN) if random.random() < 0.7 else set(random.sample(GIVEN, random.randint(0, len(GIVEN))))
        few = random.random() < 0.5
        own = random.sample(CHANGEABLE, random.randint(0, 4 if few else len(CHANGEABLE)))
        made.append(frozenset(given | (set(own) if few else set(CHANGEABLE) - set(own[:3]))))
    return made


@pytest.mark.parametrize(("name", "seed"), each_with_seeds({"too_far": TOO_FAR, **TIGHT}, 8))
def test_each_answer_is_that_of_a_search_of_its_own(
    name: str, seed: int, catalogue: CatalogueStore, us_tables: RuleTables
) -> None:
    random = Random(f"{name} {seed}")
    requirement = required(drawn({"too_far": TOO_FAR, **TIGHT}[name], random), us_tables)
    context = PlanningContext(us_tables, catalogue)
    search = searched(requirement, context)
    limits = tuple(one for one in search.model.set_limits if one.severity is Severity.MUST)
    questions, own = LineQuestions(search, limits), searched(requirement, context)
    if random.random() < 0.7:
        questions.look_ahead(EVERY, CHANGEABLE)
    for lines in groups(random, 12):
        wanted = own.cheapest(SetQuery(lines, limits))
        assert questions.has_set(lines) == (wanted is not None)
        if random.random() < 0.3:
            assert questions.best(lines) == wanted


@pytest.mark.parametrize(("name", "seed"), each_with_seeds({"too_far": TOO_FAR, **TIGHT}, 8))
def test_the_cheapest_set_may_be_asked_for_first(
    name: str, seed: int, catalogue: CatalogueStore, us_tables: RuleTables
) -> None:
    """Its items carry the loads alone that could exceed a limit; all are looked at for what it keeps."""
    random = Random(f"best first {name} {seed}")
    requirement = required(drawn({"too_far": TOO_FAR, **TIGHT}[name], random), us_tables)
    context = PlanningContext(us_tables, catalogue)
    search = searched(requirement, context)
    limits = tuple(one for one in search.model.set_limits if one.severity is Severity.MUST)
    questions, own = LineQuestions(search, limits), searched(requirement, context)
    for lines in groups(random, 12):
        wanted = own.cheapest(SetQuery(lines, limits))
        assert questions.best(lines) == wanted
        assert questions.has_set(lines) == (wanted is not None)


@pytest.mark.parametrize(("name", "seed"), each_with_seeds({"too_far": TOO_FAR, **TIGHT}, 8))
def test_what_is_in_the_way_of_some_lines_is_no_proof_for_others(
    name: str, seed: int, catalogue: CatalogueStore, us_tables: RuleTables
) -> None:
    """Limits of lines that nobody asks for prove nothing, nor does a pull that the outlet just bears."""
    random = Random(f"some lines {name} {seed}")
    base = required(drawn({"too_far": TOO_FAR, **TIGHT}[name], random), us_tables)
    context = PlanningContext(us_tables, catalogue)
    pulls = sorted(demands_of(searched(base, context)))
    for strength in random.sample(pulls, min(3, len(pulls))):
        requirement = replace(base, outlet_pull_strength_n=strength)
        own = searched(requirement, context)
        limits = tuple(one for one in own.model.set_limits if one.severity is Severity.MUST)
        own_lines = [*CHANGEABLE]
        random.shuffle(own_lines)
        lines = EVERY - set(own_lines[: random.randint(0, 4)])
        questions = LineQuestions(searched(requirement, context), limits)
        questions.look_ahead(lines, tuple(line for line in CHANGEABLE if line in lines))
        for left_out in (set(), *({line} for line in own_lines[4:10])):
            asked = lines - left_out
            assert questions.has_set(asked) == (own.cheapest(SetQuery(asked, limits)) is not None)


def demands_of(search: ChainSearch) -> set[float]:
    """Return what parts of any kind ask the outlet to bear."""
    found: set[float] = set()
    for _, finder in search.finders_of(SetQuery(EVERY, (), common=frozenset(GIVEN))):
        columns = finder.columns()
        assert columns is not None
        found |= set(columns.demands[columns.demands > 0.0].tolist())
    return found


def by_dropping(lines: tuple[RequirementId, ...], broken: set[Lines], given: Lines) -> tuple[RequirementId, ...]:
    """Return the conflict left when each line is dropped, the easiest to change first, as long as no chain is freed."""
    left = list(lines)
    for line in reversed(lines):
        rest = (set(left) - {line}) | given
        if all(one & rest for one in broken):
            left.remove(line)
    return tuple(left)


def line_of(demand: Demand) -> RequirementId:
    return demand.line or RequirementId.DECISION


@pytest.mark.parametrize(("name", "seed"), each_with_seeds(SMALL, 8))
def test_the_conflict_of_a_plan_is_the_one_left_when_lines_are_dropped_over_every_chain(
    name: str, seed: int, catalogue: CatalogueStore, us_tables: RuleTables
) -> None:
    survey, random = SMALL[name], Random(f"{name} {seed}")
    context = PlanningContext(us_tables, catalogue)
    able, any_sort = drawn_parts(required(survey, us_tables), ASK_LESS[name], context, random)
    if random.random() < 0.5:
        wanted = random.choice([part.ref for part in any_sort if part.kind is not PartKind.ADAPTOR])
        survey = deciding(survey, **{**survey.positions[0].decisions.model_dump(), "pinned": [wanted]})
    store = ListStore(dict.fromkeys((*able, *any_sort)))
    requirement = required(survey, us_tables)
    joined = {broken_by(links, requirement, us_tables) for links in linked(requirement, store)}
    others = {broken_by(links, requirement, us_tables) for links in unmated(requirement, store)}
    broken = {frozenset(map(line_of, one)) for one in joined}
    broken |= {frozenset(map(line_of, one)) | {RequirementId.JOINTS} for one in others}
    found = conflict_of(requirement, PlanningContext(us_tables, store))
    given = frozenset(GIVEN)
    if frozenset() in broken:
        assert found is None
        return
    if all(one & given for one in broken):
        wanted_lines = by_dropping(GIVEN, broken, frozenset())
    else:
        wanted_lines = by_dropping(CHANGEABLE, broken, given)
    assert found is not None
    assert found.requirements == wanted_lines


def test_where_one_conflict_is_in_the_way_it_is_found_by_the_sets_that_free_it(
    catalogue: CatalogueStore, us_tables: RuleTables, monkeypatch: pytest.MonkeyPatch
) -> None:
    # hoses long enough to reach are too long to hang: of 21 lines two are to blame, and each frees a set when given up
    search = searched(required(TOO_FAR, us_tables), PlanningContext(us_tables, catalogue))
    asked: list[Lines] = []
    really = ChainSearch.any_path

    def any_path(one: ChainSearch, query: SetQuery, *rest: object) -> object:
        asked.append(EVERY - query.lines)
        return really(one, query, *rest)  # type: ignore[arg-type]

    monkeypatch.setattr(ChainSearch, "any_path", any_path)
    conflict = ConflictFinder(search).conflict(with_relaxations=False)
    assert conflict is not None
    assert conflict.requirements == (RequirementId.HOSE_LENGTH, RequirementId.REACH)
    assert asked == [{RequirementId.HOSE_LENGTH}, {RequirementId.REACH}]


@pytest.mark.parametrize("few", [0, 500])
@pytest.mark.parametrize(("name", "seed"), each_with_seeds({"too_far": TOO_FAR}, 12))
def test_the_least_figure_that_frees_a_set_is_that_of_every_chain(
    name: str, seed: int, few: int, catalogue: CatalogueStore, us_tables: RuleTables, monkeypatch: pytest.MonkeyPatch
) -> None:
    # by columns and by the walk over few parts, which take it for an answer to whether there is a set at all
    monkeypatch.setattr("spoutline.search.finder._FEW_ITEMS", few)
    requirement, random = required(TOO_FAR, us_tables), Random(f"{name} {seed}")
    able, _ = drawn_parts(requirement, CAR, PlanningContext(us_tables, catalogue), random)
    hoses = [catalogue.candidates(CandidateFilter(kind=kind)) for kind in (PartKind.WHIP_HOSE, PartKind.CURB_HOSE)]
    store = ListStore(dict.fromkeys((*able, *random.sample(hoses[0], 4), *random.sample(hoses[1], 20))))
    search = searched(requirement, PlanningContext(us_tables, store))
    finder = ConflictFinder(search)
    sets = {
        links: frozenset(map(line_of, broken_by(links, requirement, us_tables))) for links in linked(requirement, store)
    }
    for line in (RequirementId.HOSE_LENGTH, RequirementId.REACH):
        limit = finder.questions.limit_of(line)
        assert limit is not None
        freed = [
            HangingSet(links=links, price_minor=0, currency="USD") for links, broken in sets.items() if broken <= {line}
        ]
        least = [
            (
                sum(search.pool.regrets_of(link.slot, link.part.ref) for link in one.links),
                search.model.load_of(one, limit.load),
            )
            for one in freed
        ]
        assert finder.questions.has_set(EVERY - {line}) == bool(freed)
        found = finder.figure(line, EVERY - {line})
        assert (found and found.needed) == (pytest.approx(limit.shown(min(least)[1])) if least else None)
