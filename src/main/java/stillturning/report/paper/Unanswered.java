package stillturning.report.paper;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import stillturning.assess.Appraisal;
import stillturning.assess.verdict.Outcome;
import stillturning.assess.verdict.Verdict;
import stillturning.model.Cue;
import stillturning.model.Cue.Sign;
import stillturning.model.Procedure;
import stillturning.report.page.Block;
import stillturning.report.page.Block.Heading;
import stillturning.report.page.Block.Points;

/**
 * Troubles that a pilot looks up and to which no procedure of the candidate answers, each with what
 * comes of it as it was played: a page that is missing must not look like one that was forgotten.
 */
final class Unanswered {

    private static final String OVER_VOLTAGE = "over-voltage";

    private final Appraisal appraisal;
    private final Labels labels;

    Unanswered(Appraisal appraisal, Labels labels) {
        this.appraisal = appraisal;
        this.labels = labels;
    }

    /** Nothing where all are answered. */
    List<Block> blocks() {
        List<String> points = new ArrayList<>();
        if (!answered(sign -> sign.warnsOfDischarge() || sign instanceof Cue.AlternatorOut)) {
            points.add("Charging lost: " + VerdictWords.sentence(appraisal.chargingLost()) + ".");
        }
        if (!answered(Cue.HighVolts.class::isInstance)) {
            overVoltage().ifPresent(points::add);
        }
        if (!answered(Cue.EngineStops.class::isInstance)) {
            points.add(engineStops());
        }
        return points.isEmpty()
                ? List.of()
                : List.of(
                        new Heading("No checklist, since no procedure answers"),
                        new Points(points));
    }

    private boolean answered(Predicate<Sign> sign) {
        return appraisal.candidate().cockpit().procedures().stream()
                .filter(p -> p.doing().automatic().isEmpty())
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

    private Optional<String> overVoltage() {
        return appraisal.singles().stream()
                .filter(v -> v.failure().name().endsWith(": " + OVER_VOLTAGE))
                .min(Standpoint.GRAVEST_FIRST)
                .map(
                        v ->
                                "Over-voltage, "
                                        + labels.of(v.failure())
                                        + ": "
                                        + VerdictWords.sentence(v)
                                        + ".");
    }

    private String engineStops() {
        List<Verdict> ending = appraisal.with(Outcome.ENGINE_LOST);
        return "Engine stops: "
                + ending.stream()
                        .min(Standpoint.GRAVEST_FIRST)
                        .map(
                                gravest ->
                                        ending.size()
                                                + " single failures end it, the gravest "
                                                + labels.of(gravest.failure())
                                                + ".")
                        .orElse("no single failure ends it, its own aside.");
    }
}
