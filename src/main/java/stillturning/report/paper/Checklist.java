package stillturning.report.paper;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import stillturning.assess.Appraisal;
import stillturning.assess.PilotBurden;
import stillturning.assess.verdict.Outcome;
import stillturning.assess.verdict.Verdict;
import stillturning.model.Candidate;
import stillturning.model.Procedure;
import stillturning.model.Reach;
import stillturning.model.Study;
import stillturning.quantity.Formats;
import stillturning.report.FailureRows;
import stillturning.report.PrintedNames;
import stillturning.report.page.Block;
import stillturning.report.page.Block.Boxes;
import stillturning.report.page.Block.Heading;
import stillturning.report.page.Block.Note;
import stillturning.report.page.Block.Warning;
import stillturning.report.page.Block.Words;
import stillturning.story.StoryEvent;

/**
 * What the pilot does when something shows, as he reads it in flight: the moves of a procedure in
 * the order in which they were played, and what is left to him by the stories in which they were.
 */
final class Checklist {

    private static final String BY_HEART = "BY HEART: ";

    private final Study study;
    private final Appraisal appraisal;
    private final Candidate candidate;
    private final PrintedNames labels;

    Checklist(Study study, Appraisal appraisal, PrintedNames labels) {
        this.study = study;
        this.appraisal = appraisal;
        this.candidate = appraisal.candidate();
        this.labels = labels;
    }

    /**
     * Every checklist of the pilot's own procedures, then that of smoke, then what none answers.
     */
    List<Block> all() {
        List<Block> blocks = new ArrayList<>();
        candidate.cockpit().procedures().stream()
                .filter(p -> p.execution().automatic().isEmpty())
                .sorted(Comparator.comparingDouble(Procedure::responseSeconds))
                .forEach(p -> blocks.addAll(of(p)));
        appraisal.masterOff().ifPresent(verdict -> blocks.addAll(smoke(verdict)));
        blocks.addAll(new Unanswered(study, appraisal, labels).blocks());
        return List.copyOf(blocks);
    }

    private List<Block> of(Procedure procedure) {
        List<Block> blocks = new ArrayList<>();
        CueWords cues = new CueWords(labels);
        blocks.add(new Heading(capital(labels.in(procedure.name()))));
        blocks.add(
                new Words(
                        "When: "
                                + procedure.when().stream()
                                        .map(cue -> cues.of(cue, candidate))
                                        .collect(Collectors.joining("; or "))));
        List<String> steps = moves(procedure.moves());
        if (!procedure.sheds().isEmpty()) {
            steps.add("off, in this order: " + String.join(", ", labelled(procedure.sheds())));
        }
        if (procedure.execution().pressesStarter()) {
            steps.add("press the starter");
        }
        blocks.add(
                new Boxes(
                        urgent(procedure)
                                ? steps.stream().map(s -> BY_HEART + s).toList()
                                : steps));
        outOfReach(procedure.moves()).ifPresent(blocks::add);
        blocks.add(new Note(played(procedure)));
        return blocks;
    }

    /** Due before a page could be found. */
    private static boolean urgent(Procedure procedure) {
        return procedure.responseSeconds() <= PilotBurden.URGENT_SECONDS;
    }

    private List<String> moves(Map<String, String> moves) {
        List<String> steps = new ArrayList<>();
        moves.forEach((lever, position) -> steps.add(capital(label(lever)) + ": " + position));
        return steps;
    }

    private String label(String lever) {
        return labels.in(lever).replace('-', ' ');
    }

    private List<String> labelled(List<String> loads) {
        return loads.stream().map(labels::in).toList();
    }

    private Optional<Block> outOfReach(Map<String, String> moves) {
        List<String> far =
                moves.keySet().stream()
                        .filter(
                                lever ->
                                        candidate
                                                .cockpit()
                                                .reachOf(lever)
                                                .filter(reach -> reach != Reach.SEAT)
                                                .isPresent())
                        .map(this::label)
                        .toList();
        return far.isEmpty()
                ? Optional.empty()
                : Optional.of(new Warning("Not in reach from the seat", far));
    }

    /** What came of it where it was carried out. */
    private String played(Procedure procedure) {
        List<Verdict> carriedOut =
                FailureRows.all(appraisal)
                        .filter(v -> !v.engineOwn() && does(v, procedure))
                        .toList();
        if (carriedOut.isEmpty()) {
            return "No single failure led to it, so it was played by itself at most.";
        }
        long lost = carriedOut.stream().filter(v -> v.outcome() == Outcome.ENGINE_LOST).count();
        Verdict worst =
                carriedOut.stream()
                        .min(Comparator.comparingDouble(Checklist::seconds))
                        .orElseThrow();
        return "Played after "
                + carriedOut.size()
                + " single failures, moves begun "
                + Formats.duration(procedure.responseSeconds())
                + " after the sign. The engine then runs "
                + (Double.isInfinite(seconds(worst))
                        ? "without limit."
                        : "at least "
                                + Formats.lasting(seconds(worst))
                                + " (after "
                                + labels.of(worst.failure())
                                + ").")
                + (lost == 0 ? "" : " After " + lost + " of them it is lost all the same.");
    }

    private static double seconds(Verdict verdict) {
        return verdict.planned().engine().endurance().seconds();
    }

    private static boolean does(Verdict verdict, Procedure procedure) {
        return verdict.planned().of(StoryEvent.Kind.PILOT).stream()
                .anyMatch(event -> event.part().equals(procedure.name()));
    }

    private List<Block> smoke(Verdict verdict) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Heading("Smoke or burning smell"));
        blocks.add(new Boxes(moves(candidate.cockpit().masterOff())));
        outOfReach(candidate.cockpit().masterOff()).ifPresent(blocks::add);
        blocks.add(
                new Note(
                        "Played move by move in this order: "
                                + VerdictWords.sentence(verdict)
                                + "."));
        return blocks;
    }

    private static String capital(String text) {
        return text.isEmpty() ? text : Character.toUpperCase(text.charAt(0)) + text.substring(1);
    }
}
