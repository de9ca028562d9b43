package stillturning.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.DoubleStream;
import stillturning.assess.Appraisal;
import stillturning.assess.verdict.Outcome;
import stillturning.assess.verdict.Verdict;
import stillturning.model.Candidate;
import stillturning.parts.element.Generator;
import stillturning.quantity.Formats;
import stillturning.story.Story;
import stillturning.story.Trace;

/** Failures that nobody sees until it is late, and the warning that would show them. */
public final class MissingWarnings {

    /** Less than this no lamp tells from normal flight for certain (V). A guess. */
    private static final double LEAST_VOLTS = 0.4;

    private static final String NO_BUS = "at the part itself, since no bus shows it in time";

    private static final int NAMED = 3;

    /**
     * A warning to add.
     *
     * @param warning what it watches
     * @param failures what it would show
     */
    public record MissingWarning(String warning, List<String> failures) {
        public MissingWarning {
            failures = List.copyOf(failures);
        }

        /** In one sentence. */
        public String inWords() {
            String named = String.join("; ", failures.subList(0, Math.min(NAMED, failures.size())));
            int left = failures.size() - NAMED;
            return "add a warning: "
                    + warning
                    + "; nobody sees it in time after "
                    + named
                    + (left > 0 ? "; and " + left + " more" : "");
        }
    }

    /**
     * A bus, and the voltage from which and to which a failure moves it: from normal flight, or
     * from the highest that is normal.
     */
    private record Moved(String bus, double fromVolts, double toVolts) {
        double distance() {
            return Math.abs(toVolts - fromVolts);
        }

        /** Half-way there. */
        double limit() {
            return (fromVolts + toVolts) / 2;
        }

        Watched watched() {
            return new Watched(bus, toVolts > fromVolts);
        }
    }

    /** What a warning would watch: one bus, for too much or for too little. */
    private record Watched(String bus, boolean high) {

        /** With the limit that shows all of these. */
        String warning(List<Moved> moved) {
            DoubleStream limits = moved.stream().mapToDouble(Moved::limit);
            double limit = high ? limits.min().orElseThrow() : limits.max().orElseThrow();
            return (high ? "high voltage at " : "low voltage at ")
                    + bus
                    + (high ? ", above " : ", below ")
                    + Formats.fixed(limit, 1)
                    + " V";
        }
    }

    /** A failure, and the bus that shows it most. */
    private record Shown(String failure, Moved moved) {}

    private MissingWarnings() {}

    /** The warnings that a candidate lacks, the one that would show most first. */
    public static List<MissingWarning> of(Appraisal appraisal) {
        Map<Watched, List<Shown>> byBus = new LinkedHashMap<>();
        List<MissingWarning> missing = new ArrayList<>();
        for (Verdict verdict : appraisal.singles()) {
            if (comesTooLate(verdict)) {
                String failure = verdict.failure().name();
                mostMoved(appraisal, verdict.planned())
                        .ifPresentOrElse(
                                moved ->
                                        byBus.computeIfAbsent(
                                                        moved.watched(), w -> new ArrayList<>())
                                                .add(new Shown(failure, moved)),
                                () -> missing.add(new MissingWarning(NO_BUS, List.of(failure))));
            }
        }
        byBus.forEach(
                (watched, shown) ->
                        missing.add(
                                new MissingWarning(
                                        watched.warning(shown.stream().map(Shown::moved).toList()),
                                        shown.stream().map(Shown::failure).toList())));
        missing.sort(Comparator.comparing((MissingWarning m) -> -m.failures.size()));
        return List.copyOf(missing);
    }

    /** Not where the aircraft has landed before, whether or not anybody has seen anything. */
    private static boolean comesTooLate(Verdict verdict) {
        return verdict.outcome().compareTo(Outcome.INTERRUPTED) < 0 && verdict.isUnseen();
    }

    /** The bus that shows it most, half-way to when it was noticed. */
    private static Optional<Moved> mostMoved(Appraisal appraisal, Story story) {
        double seconds = story.engine().signSeconds() / 2;
        Map<String, Double> normal = appraisal.flight().normal().busVolts();
        double regulated = regulatedVolts(appraisal.candidate());
        return story.traces().stream()
                .filter(trace -> trace.unit().equals("V") && normal.containsKey(trace.name()))
                .map(
                        trace ->
                                moved(
                                        trace.name(),
                                        normal.getOrDefault(trace.name(), 0.0),
                                        at(trace, seconds),
                                        regulated))
                .filter(moved -> moved.distance() >= LEAST_VOLTS)
                .max(Comparator.comparing(Moved::distance));
    }

    /**
     * Up to what a regulator holds, a high voltage says nothing: there it is when loads are off.
     */
    private static Moved moved(String bus, double normal, double to, double regulated) {
        return to > normal
                ? new Moved(bus, Math.max(normal, Math.min(to, regulated)), to)
                : new Moved(bus, normal, to);
    }

    /** The highest set point of its alternators (V); 0 for none. */
    private static double regulatedVolts(Candidate candidate) {
        return candidate.parts().stream()
                .flatMap(part -> part.elements().stream())
                .filter(Generator.class::isInstance)
                .mapToDouble(element -> ((Generator) element).regulation().setVolts())
                .max()
                .orElse(0);
    }

    private static double at(Trace trace, double seconds) {
        double value = trace.first();
        for (Trace.TracePoint point : trace.points()) {
            if (point.seconds() <= seconds) {
                value = point.value();
            }
        }
        return value;
    }
}
