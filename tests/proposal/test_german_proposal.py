"""Every sentence of a proposal has its German one, also those within others; the document stays as it is."""

from report.german_words import english_words
from rich.console import Console

from seamcheck.catalogue.propose_notes import PROPOSE_NOTES
from seamcheck.catalogue.say import places_of, say
from seamcheck.catalogue.voice import Voice, speaking
from seamcheck.proposal import text
from seamcheck.proposal.language import spoken_proposal
from seamcheck.proposal.records import Change, Dimension, JointProposal, ProposalDocument, Remedy, Short


def typed(**more):
    what = say("propose.floor_outer-more")
    moved = say("propose.by", what=what, by=0.05)
    joint = JointProposal(
        joint="j1", cover="lid", base="head", carrier="head", state="cut",
        message=say("propose.then", first=say("propose.moved", changes=[moved]), then=say("propose.sound")),
        dimensions=(Dimension(key="rib_width", title=say("propose.size.rib_width"), value=1.25, unit="mm"),),
        short=(Short(contour="c1", side="inner", from_s=1.0, to_s=4.5, at=(0.0, 0.0, 0.0), room=1.0, need=1.5,
                     missing=0.5),),
        instead=(say("propose.widen", missing=0.5, side="inner"),), corner_radius=3.0, seam_length=200.5,
        removed_volume=300.0, changes=(Change(part="head", what=what, by=0.05, findings=("x",)),),
    )  # fmt: skip
    kept = say("propose.found", rule="rib-height", says=say("propose.mends-none"))
    return ProposalDocument(
        document="proposal", schema_version=1, seamcheck="0", model=("model.step",), outcome="not-held",
        message=say("propose.kept", why=kept), joints=(joint,), kept_from=(kept,), named=(kept, kept),
        remedies=(Remedy(finding="x", rule="rib-height", fits="no",
                         says=say("propose.still", what=say("propose.list", changes=[moved]))),),
        review=None, comparison=None, cautions=(),
    )  # fmt: skip


def printed(document):
    console = Console(width=100, highlight=False)
    with console.capture() as captured:
        for part in text.full_report(document):
            console.print(part)
    return captured.get()


def test_the_terminal_is_german_and_the_document_is_not():
    document = typed()
    with speaking(Voice("de")):
        told = printed(spoken_proposal(document))
    assert english_words(told, ("lid", "head")) == set()
    assert "1,25 mm" in told
    assert "the outer trap's floor is deeper by 0.05 mm" in document.joints[0].message
    assert spoken_proposal(document) is document


def test_every_sentence_can_be_said():
    held = {"word": "inner", "list": [say("propose.went")], "": "x"}
    for key, template in PROPOSE_NOTES.items():
        values = {name: held.get(kind, 1.0) for name, kind in places_of(template).items()}
        assert "{" not in say(key, **values), key
