package stillturning.report.paper;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import stillturning.assess.Appraisal;
import stillturning.assess.verdict.Outcome;
import stillturning.assess.verdict.UnwrittenMove;
import stillturning.assess.verdict.UnwrittenMoves;
import stillturning.assess.verdict.Verdict;
import stillturning.model.Cue;
import stillturning.model.Cue.Sign;
import stillturning.model.Procedure;
import stillturning.model.Study;
import stillturning.model.failure.Failure;
import stillturning.parts.Part;
import stillturning.quantity.Formats;
import stillturning.report.PrintedNames;
import stillturning.report.StoryFacts;
import stillturning.report.page.Block;
import stillturning.report.page.Block.Heading;
import stillturning.report.page.Block.Note;
import stillturning.report.page.Block.Warning;
import stillturning.report.page.Block.Words;
import stillturning.story.Story;
import stillturning.story.StoryEvent;

/**
 * Troubles that a pilot looks up and to which no procedure of the candidate answers, each with what
 * comes of it as it was played, what still works, what a procedure would need, and a move that was
 * played to help if there is one: a page that is missing must not look like one that was forgotten.
 */
final class Unanswered {

    private static final String OVER_VOLTAGE = "over-voltage";
    private static final String NOT_PLAYED = "Nothing of it was played.";

    /** Sooner than anybody acts. A guess. */
    private static final double AT_ONCE_SECONDS = 5;

    private final Study study;
    private final Appraisal appraisal;
    private final PrintedNames labels;
    private final List<Block> blocks = new ArrayList<>();

    Unanswered(Study study, Appraisal appraisal, PrintedNames labels) {
        this.study = study;
        this.appraisal = appraisal;
        this.labels = labels;
    }

    /** Nothing where all are answered. */
    List<Block> blocks() {
        if (!answered(sign -> sign.warnsOfDischarge() || sign instanceof Cue.AlternatorOut)) {
            trouble(
                    "Charging lost",
                    Optional.of(appraisal.chargingLost()),
                    "a sign (an alternator lamp, or a limit in volts) and what to switch off or"
                            + " over");
        }
        if (!answered(Cue.LowVolts.class::isInstance)) {
            trouble(
                    "Low voltage",
                    Optional.of(appraisal.chargingLost()),
                    "a limit in volts that the pilot can read, and what to switch off");
        }
        if (!answered(Cue.HighVolts.class::isInstance)) {
            overVoltage();
        }
        deadBus();
        if (appraisal.masterOff().isEmpty()) {
            trouble(
                    "Smoke or burning smell",
                    Optional.empty(),
                    NOT_PLAYED,
                    "the moves that take all power off the airframe, in their order (master-off)");
        }
        if (!answered(Cue.EngineStops.class::isInstance)) {
            trouble(
                    "Engine stops",
                    gravest(v -> v.outcome() == Outcome.ENGINE_LOST && !v.engineOwn()),
                    "No single failure ends it, its own aside.",
                    "the engine falling silent as its sign, and the moves that feed it otherwise");
        }
        return List.copyOf(blocks);
    }

    private boolean answered(Predicate<Sign> sign) {
        return appraisal.candidate().cockpit().procedures().stream()
                .filter(p -> p.execution().automatic().isEmpty())
                .map(Procedure::when)
                .flatMap(List::stream)
                .flatMap(name -> cue(name).stream())
                .map(Cue::sign)
                .anyMatch(sign);
    }

    private Optional<Cue> cue(String name) {
        return appraisal.candidate().cockpit().cues().stream()
                .filter(cue -> cue.name().equals(name))
                .findFirst();
    }

    private Optional<Verdict> gravest(Predicate<Verdict> of) {
        return appraisal.singles().stream().filter(of).min(Standpoint.GRAVEST_FIRST);
    }

    private void overVoltage() {
        gravest(v -> v.failure().name().endsWith(": " + OVER_VOLTAGE))
                .ifPresent(
                        v ->
                                trouble(
                                        "Over-voltage",
                                        Optional.of(v),
                                        "a limit in volts, and the switch that takes the field"
                                                + " from the source"));
    }

    /** The gravest failure of a bus in which the pilot has nothing to do by any procedure. */
    private void deadBus() {
        gravest(this::killsABusUnanswered)
                .ifPresent(
                        v ->
                                trouble(
                                        capital(labels.in(part(v.failure()))) + " dead",
                                        Optional.of(v),
                                        "a sign that the bus is dead, and what feeds its loads"
                                                + " otherwise"));
    }

    private static String part(Failure failure) {
        return failure.hits().isEmpty() ? "" : failure.hits().get(0).part();
    }

    private boolean killsABusUnanswered(Verdict verdict) {
        boolean ofBus = appraisal.candidate().has(part(verdict.failure()), Part.Role.BUS);
        boolean loses =
                !verdict.losses().engineLoads().isEmpty()
                        || !verdict.losses().otherLoads().isEmpty();
        return ofBus && loses && verdict.planned().of(StoryEvent.Kind.PILOT).isEmpty();
    }

    private void trouble(String name, Optional<Verdict> verdict, String needs) {
        trouble(name, verdict, NOT_PLAYED, needs);
    }

    /**
     * @param otherwise what is said where nothing of it was played
     */
    private void trouble(String name, Optional<Verdict> verdict, String otherwise, String needs) {
        blocks.add(new Heading(name + ": no checklist, as no procedure answers"));
        verdict.ifPresentOrElse(this::played, () -> blocks.add(new Words(otherwise)));
        blocks.add(new Note("A procedure in the study would need " + needs + "."));
        verdict.flatMap(v -> UnwrittenMoves.saving(study, appraisal.candidate(), v))
                .ifPresent(this::proposal);
    }

    private void played(Verdict verdict) {
        blocks.add(
                new Words(
                        "Played: "
                                + labels.of(verdict.failure())
                                + ": "
                                + VerdictWords.sentence(verdict)
                                + ". "
                                + works(verdict)));
    }

    private String works(Verdict verdict) {
        List<String> lost = new ArrayList<>(verdict.losses().engineLoads());
        lost.addAll(verdict.losses().otherLoads());
        List<String> works =
                study.aircraft().loads().stream()
                        .map(load -> load.id())
                        .filter(load -> verdict.planned().aftermath().working().contains(load))
                        .filter(load -> !lost.contains(load))
                        .toList();
        if (lost.isEmpty()) {
            return goesOutAtOnce(verdict.planned())
                    ? "What goes out at once works again by itself."
                    : "No load goes out at once.";
        }
        return "Out at once: "
                + named(lost)
                + "; still fed: "
                + (works.isEmpty() ? "nothing" : named(works))
                + ".";
    }

    private static boolean goesOutAtOnce(Story story) {
        return story.of(StoryEvent.Kind.LOAD_STOPS).stream()
                .anyMatch(stop -> stop.seconds() < AT_ONCE_SECONDS);
    }

    private String named(List<String> loads) {
        return loads.stream().map(labels::in).collect(Collectors.joining(", "));
    }

    /** Marked as what it is: nobody has written it, and it was played after one failure only. */
    private void proposal(UnwrittenMove move) {
        List<String> points = new ArrayList<>();
        move.moves()
                .forEach(
                        (lever, position) ->
                                points.add(
                                        labels.in(lever).replace('-', ' ')
                                                + " to "
                                                + position
                                                + ", "
                                                + Formats.duration(UnwrittenMove.AFTER_SIGN_SECONDS)
                                                + " after the first sign; engine runs: "
                                                + StoryFacts.endurance(move.story())
                                                + stops(move)
                                                + "."));
        points.add(
                "Made with nothing wrong, engine runs: "
                        + StoryFacts.endurance(move.needless())
                        + ".");
        points.add("Played after this failure alone: the builder decides whether it becomes one.");
        blocks.add(new Warning("Proposed and played, no procedure of the study", points));
    }

    private static String stops(UnwrittenMove move) {
        int stops = move.story().engine().stops();
        return stops == 0 ? "" : ", after it had stopped";
    }

    private static String capital(String text) {
        return text.isEmpty() ? text : Character.toUpperCase(text.charAt(0)) + text.substring(1);
    }
}
