package stillturning.report.json;

import static stillturning.report.json.JsonTypes.MAYBE;
import static stillturning.report.json.JsonTypes.WHOLE;
import static stillturning.report.json.JsonTypes.list;

import java.util.List;
import java.util.TreeSet;
import java.util.function.Function;
import stillturning.reliability.likelihood.Inspection;
import stillturning.reliability.runup.Check;
import stillturning.reliability.runup.Check.Revealed;
import stillturning.reliability.runup.Latent;
import stillturning.reliability.runup.RefusedCheck;
import stillturning.reliability.runup.SeenDifference;
import stillturning.report.joint.CombinedFindings;
import stillturning.report.joint.LatentRemedies;
import stillturning.report.joint.RunUpSheet;
import stillturning.story.PilotView;

/** Failures of which nobody sees anything in flight, and the cards for the run-up. */
final class RunUpJson {

    /** Something found of a candidate, and all that was found of it. */
    private record Of<T>(T one, CombinedFindings found, LatentRemedies remedies) {

        String name(int event) {
            return found.joint().events().get(event).name();
        }

        <U> Of<U> with(U other) {
            return new Of<>(other, found, remedies);
        }
    }

    private static final JsonShape<Of<Inspection>> INSPECTION =
            JsonShape.<Of<Inspection>>named("inspection")
                    .text("how", i -> i.remedies.way(i.one.event()))
                    .says("Common practice, with no published source.")
                    .field("everySeconds", MAYBE, i -> i.one.everySeconds())
                    .says("Seconds flown between two looks; null where no rate tells.")
                    .text("words", i -> i.one.words());

    private static final JsonShape<Of<Latent>> LATENT_FAILURE =
            JsonShape.<Of<Latent>>named("latentFailure")
                    .text("failure", l -> l.name(l.one.event()))
                    .texts("with", l -> l.one.with().stream().map(l::name).toList())
                    .says(
                            "Failures and common causes with any of which it ends the engine; empty"
                                    + " where there is none.")
                    .maybe("check", WHOLE.with("minimum", 1), l -> l.remedies.check(l.one.event()))
                    .says(
                            "Check of the run-up card that reveals it, counted from 1; null for"
                                    + " none.")
                    .maybe(
                            "inspection",
                            INSPECTION,
                            l -> l.remedies.inspection(l.one.event()).map(l::with))
                    .says("How, and how often, to look for it.");

    private static final JsonShape<CombinedFindings> HIDDEN =
            JsonShape.<CombinedFindings>named("candidate")
                    .text("candidate", f -> f.candidate().id())
                    .list("latent", LATENT_FAILURE, each(f -> f.card().latents()));

    static final JsonDocument<StudyAnswer<CombinedFindings>> LATENT =
            new JsonDocument<>(
                    "Latent failures",
                    "Failures of which nobody sees anything from the start to the landing.",
                    StudyAnswer.list("candidates", HIDDEN));

    private static final JsonShape<PilotView> SEEN =
            JsonShape.<PilotView>named("seen")
                    .word("engine", PilotView.EngineSound.class, PilotView::engine)
                    .texts("cues", s -> List.copyOf(new TreeSet<>(s.cues())))
                    .says("Cues that show.")
                    .texts("stopped", s -> List.copyOf(new TreeSet<>(s.stopped())))
                    .says("Loads that stand still and whose stopping is noticed.")
                    .texts("onTheirOwn", s -> List.copyOf(new TreeSet<>(s.onTheirOwn())))
                    .says("Loads that work on a battery of their own, which is noticed.");

    private static final JsonShape<SeenDifference> DIFFERENCE =
            JsonShape.<SeenDifference>named("difference")
                    .field(
                            "step",
                            WHOLE.with("minimum", 1).with("maximum", 2),
                            SeenDifference::step)
                    .says("1 while the levers stand so, 2 once they are back.")
                    .word("what", SeenDifference.What.class, SeenDifference::what)
                    .text("name", SeenDifference::name)
                    .says("Cue or load; empty for the engine.");

    private static final JsonShape<Of<Revealed>> REVEALED =
            JsonShape.<Of<Revealed>>named("revealed")
                    .text("failure", r -> r.name(r.one.event()))
                    .field("seen", list(DIFFERENCE).with("minItems", 1), r -> r.one.seen());

    private static final JsonShape<Of<Check>> CHECK =
            JsonShape.<Of<Check>>named("check")
                    .map("set", JsonTypes.TEXT, c -> c.one.moves())
                    .says("Position by lever, in the order in which they are moved.")
                    .field("before", SEEN, c -> c.one.before())
                    .field("expected", SEEN, c -> c.one.expected())
                    .list("reveals", REVEALED, c -> c.one.reveals().stream().map(c::with).toList())
                    .map("setBack", JsonTypes.TEXT, c -> c.one.back())
                    .says("Position by lever, in the order in which they are moved.")
                    .number("settleSeconds", c -> c.one.levers().settleSeconds())
                    .says("From setting back until all is as before.");

    private static final JsonShape<Of<RefusedCheck>> REFUSED =
            JsonShape.<Of<RefusedCheck>>named("refused")
                    .map("set", JsonTypes.TEXT, r -> r.one.moves())
                    .says("Position by lever.")
                    .text("reason", r -> RunUpSheet.refusal(r.found.candidate(), r.one))
                    .texts("wouldReveal", r -> r.one.events().stream().map(r::name).toList());

    private static final JsonShape<Of<Inspection>> NOT_REVEALED =
            JsonShape.<Of<Inspection>>named("notRevealed")
                    .text("failure", i -> i.name(i.one.event()))
                    .field("inspection", INSPECTION, i -> i)
                    .says("How, and how often, to look for it.");

    private static final JsonShape<CombinedFindings> CARD =
            JsonShape.<CombinedFindings>named("card")
                    .text("candidate", f -> f.candidate().id())
                    .text("phase", f -> f.card().phase())
                    .number("heldSeconds", f -> f.card().pace().heldSeconds())
                    .says("How long each position is held.")
                    .number("moveSeconds", f -> f.card().pace().moveSeconds())
                    .says("From one move to the next; a guess unless the study says it.")
                    .texts("switchedOff", f -> f.card().off())
                    .says("Loads that are off meanwhile.")
                    .flag("proven", f -> f.card().proven())
                    .says("Whether it is proven that fewer do not.")
                    .list("checks", CHECK, each(f -> f.card().checks()))
                    .map("inFlight", JsonTypes.TEXT, f -> f.candidate().cockpit().flight())
                    .says("Position by lever, before each check and after the last.")
                    .list("refused", REFUSED, each(f -> f.card().missing().refused()))
                    .says("Moves that would reveal what no check does, and why they are none.")
                    .list("notRevealed", NOT_REVEALED, each(f -> f.likely().inspections()))
                    .says("What matters and no check reveals.");

    static final JsonDocument<StudyAnswer<CombinedFindings>> RUN_UP =
            new JsonDocument<>(
                    "Run-up cards",
                    "The fewest checks on the ground that reveal what nobody sees in flight and"
                            + " what ends the engine with one more failure.",
                    StudyAnswer.list("cards", CARD));

    private RunUpJson() {}

    private static <T> Function<CombinedFindings, List<Of<T>>> each(
            Function<CombinedFindings, List<T>> all) {
        return found -> {
            LatentRemedies remedies = new LatentRemedies(found);
            return all.apply(found).stream().map(one -> new Of<>(one, found, remedies)).toList();
        };
    }
}
