"""The JSON documents of a plan share one head: format and version first, then what the document was made from."""

from __future__ import annotations

import json
from dataclasses import replace

import pytest

from documents import plan_factory as factory
from documents.readers import story
from spoutline.documents.json.conversion import ConversionDocument
from spoutline.documents.json.front import FrontDocument, StationFrontDocument
from spoutline.documents.json.head import HeadedDocument
from spoutline.documents.json.measure import MeasureDocument
from spoutline.documents.json.plan_export import plan_json
from spoutline.documents.json.site import SiteDocument
from spoutline.documents.json.substitutes import SubstitutesDocument, substitutes_json
from spoutline.documents.json.what_if import WhatIfDocument
from spoutline.documents.json.why import WhyDocument, why_json
from spoutline.model.plan import Provenance

# the names are public: scripts read them, so that they are written out here and never derived
HEAD = ["program_version", "catalogue_edition", "catalogue", "edition", "rules_edition", "survey_fingerprint"]
MADE_FROM = Provenance(
    catalogue_edition="of tests",
    rules_edition="2026-11",
    jurisdiction_id="us_general",
    survey_fingerprint="0123456789abcdef",
    program_version="0.1.0",
    catalogue="own",
    edition=3,
)
TOLD = dict(zip(HEAD, ["0.1.0", "of tests", "own", 3, "2026-11", "0123456789abcdef"], strict=True))


@pytest.mark.parametrize(
    "document",
    [
        ConversionDocument,
        SiteDocument,
        SubstitutesDocument,
        WhyDocument,
        MeasureDocument,
        WhatIfDocument,
        FrontDocument,
        StationFrontDocument,
    ],
)
def test_a_document_starts_with_its_format_and_what_it_was_made_from(document: type[HeadedDocument]) -> None:
    assert list(document.model_fields)[: len(HEAD) + 2] == ["format", "version", *HEAD]


def test_the_head_tells_catalogue_edition_rules_and_survey() -> None:
    plan = json.loads(plan_json(replace(factory.site_plan(), provenance=MADE_FROM), story()))
    why = json.loads(why_json("P1", None, "USD", MADE_FROM))
    substitutes = json.loads(substitutes_json("P1", None, "USD", MADE_FROM, story()))
    assert plan["provenance"] == TOLD
    for found in (why, substitutes):
        assert {name: found[name] for name in HEAD} == TOLD
        assert found["jurisdiction"] == "us_general"
