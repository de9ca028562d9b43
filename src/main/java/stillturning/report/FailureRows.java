package stillturning.report;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import stillturning.assess.Appraisal;
import stillturning.assess.Outcome;
import stillturning.assess.Verdict;
import stillturning.model.Candidate;
import stillturning.model.failure.FailureCatalogue;
import stillturning.parts.source.Alternator;
import stillturning.parts.source.Battery;
import stillturning.parts.protection.Breaker;
import stillturning.parts.joining.Bus;
import stillturning.parts.joining.Connector;
import stillturning.parts.switching.Contactor;
import stillturning.parts.source.DcConverter;
import stillturning.parts.joining.Diode;
import stillturning.parts.protection.Fuse;
import stillturning.parts.joining.GroundPoint;
import stillturning.parts.Load;
import stillturning.parts.protection.OvervoltageGuard;
import stillturning.parts.Part;
import stillturning.parts.switching.SolidStateController;
import stillturning.parts.switching.Switch;
import stillturning.parts.Wire;

/** The matrix failure by candidate, row by row. */
public final class FailureRows {

    /** Kind of what is not a part's failure. */
    public static final String CASES = "operating cases";

    /** Words for each kind of part, in the order in which the matrix lists them. */
    private static final Map<Class<? extends Part>, String> KINDS = kindsByClass();

    /**
     * One failure.
     *
     * @param kind of the part that fails
     * @param byCandidate verdict of each candidate that has the part, in the order given
     */
    public record Row(String kind, String failure, List<Optional<Verdict>> byCandidate) {

        public Row {
            byCandidate = List.copyOf(byCandidate);
        }

        /** The worst that the failure does to any candidate. */
        public Outcome worst() {
            return byCandidate.stream()
                    .flatMap(Optional::stream)
                    .map(Verdict::outcome)
                    .min(Comparator.naturalOrder())
                    .orElse(Outcome.NO_EFFECT);
        }
    }

    private record Key(String kind, String failure) {}

    private FailureRows() {}

    /** Every failure of every candidate: by kind, then the worst first, then by name. */
    public static List<Row> of(List<Appraisal> appraisals) {
        Map<Key, List<Optional<Verdict>>> cells = new LinkedHashMap<>();
        for (int i = 0; i < appraisals.size(); i++) {
            Appraisal appraisal = appraisals.get(i);
            for (Verdict verdict : all(appraisal).toList()) {
                Key key = new Key(kind(appraisal.candidate(), verdict), verdict.failure().name());
                cells.computeIfAbsent(key, k -> empty(appraisals.size()))
                        .set(i, Optional.of(verdict));
            }
        }
        List<String> order = new ArrayList<>(List.of(CASES));
        order.addAll(KINDS.values());
        return cells.entrySet().stream()
                .map(e -> new Row(e.getKey().kind(), e.getKey().failure(), e.getValue()))
                .sorted(
                        Comparator.<Row>comparingInt(r -> order.indexOf(r.kind()))
                                .thenComparing(Row::worst)
                                .thenComparing(Row::failure))
                .toList();
    }

    /** Single failures and operating cases of one candidate. */
    static Stream<Verdict> all(Appraisal appraisal) {
        return Stream.concat(
                Stream.concat(Stream.of(appraisal.chargingLost()), appraisal.masterOff().stream()),
                appraisal.singles().stream());
    }

    /** Whether it is a way to fly rather than a broken part. */
    static boolean operatingCase(Verdict verdict) {
        String name = verdict.failure().name();
        return name.equals(FailureCatalogue.CHARGING_LOST) || name.equals(FailureCatalogue.MASTER_OFF);
    }

    /** Every kind of part, in the order in which the matrix lists them. */
    public static List<String> kinds() {
        return List.copyOf(KINDS.values());
    }

    /** Words for parts of the same kind: batteries, wires, ... */
    public static String kind(Part part) {
        return kind(part.getClass());
    }

    /** Words for parts of a kind. */
    public static String kind(Class<? extends Part> part) {
        return KINDS.getOrDefault(part, "other parts");
    }

    private static String kind(Candidate candidate, Verdict verdict) {
        if (operatingCase(verdict)) {
            return CASES;
        }
        return verdict.failure().hits().stream()
                .findFirst()
                .flatMap(hit -> candidate.part(hit.part()))
                .map(FailureRows::kind)
                .orElse(CASES);
    }

    private static List<Optional<Verdict>> empty(int size) {
        List<Optional<Verdict>> row = new ArrayList<>();
        for (int i = 0; i < size; i++) {
            row.add(Optional.empty());
        }
        return row;
    }

    private static Map<Class<? extends Part>, String> kindsByClass() {
        Map<Class<? extends Part>, String> kinds = new LinkedHashMap<>();
        kinds.put(Battery.class, "batteries");
        kinds.put(Alternator.class, "alternators");
        kinds.put(DcConverter.class, "converters");
        kinds.put(Bus.class, "buses");
        kinds.put(SolidStateController.class, "solid-state controllers");
        kinds.put(Contactor.class, "contactors");
        kinds.put(Switch.class, "switches");
        kinds.put(Diode.class, "diodes");
        kinds.put(OvervoltageGuard.class, "over-voltage guards");
        kinds.put(Fuse.class, "fuses");
        kinds.put(Breaker.class, "breakers");
        kinds.put(Wire.class, "wires");
        kinds.put(Connector.class, "connectors");
        kinds.put(GroundPoint.class, "ground points");
        kinds.put(Load.class, "loads");
        return Collections.unmodifiableMap(kinds);
    }
}
