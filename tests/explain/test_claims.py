"""The guard against claims: what no text of the program may say, in any of its languages."""

from __future__ import annotations

import pytest

from spoutline.model.claims import claim_in


@pytest.mark.parametrize(
    "text",
    [
        "approved",
        "This set is approved for E85.",
        "The station is COMPLIANT.",
        "It complies with the code.",
        "Guaranteed to fit.",
        "certified",
        "La instalación está aprobada.",
        "El conjunto cumple con la norma.",
        "Es conforme a la ley.",
        "Garantizamos el caudal.",
        "Der Satz ist zugelassen.",
        "behördlich genehmigt",
        "normkonform",
        "Die Anlage ist vorschriftsmäßig.",
        "L'ensemble est homologué pour E85.",
        "conforme à la norme",
        "Conforme.",
        "approuvée",
        "Le débit est garanti.",
    ],
)
def test_a_claim_is_found(text: str) -> None:
    assert claim_in(text)


@pytest.mark.parametrize(
    "text",
    [
        # somebody else's act, or which goods to use: the law's words, not the program's verdict
        "Give notice or get the written approval that the agency asks for.",
        "Relieve the pressure into an approved metal container that stands on the ground.",
        "Tenga a mano la aprobación o el aviso a la agencia del aire.",
        "recipiente metálico homologado con cable de unión",
        "Er ist keine Genehmigung, keine Zulassung und keine Abnahme.",
        "Ne montez que des pièces homologuées et marquées pour le mélange.",
        "reglas de buena práctica no cumplidas: {count}",
        "The form completes the record.",
    ],
)
def test_what_is_no_claim_passes(text: str) -> None:
    assert claim_in(text) is None


CLAIMS = [
    "conforms",
    "comply",
    "guarantees",
    "it is certified",
    "aprobados",
    "garantizado",
    "cumplen todos",
    "conforme las",
    "son homologados",
    "está autorizada",
    "queda certificado",
    "konforme",
    "normgerechte",
    "garantierte",
    "garantie",
    "approuvés",
    "conformes aux",
    "est agréée",
    "sont certifiées",
    "est conforme",
    "conformes",
    "homologadas",
    "certificada",
    "homologuées",
    "certifié",
    "zertifiziert",
]


@pytest.mark.parametrize("claim", CLAIMS)
def test_every_form_of_a_claim_is_found_small_and_large(claim: str) -> None:
    assert claim_in(claim) == claim.removeprefix("it is ")
    assert claim_in(claim.upper())
