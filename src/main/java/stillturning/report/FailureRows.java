package stillturning.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import stillturning.assess.Appraisal;
import stillturning.assess.verdict.Outcome;
import stillturning.assess.verdict.Verdict;
import stillturning.model.Candidate;
import stillturning.model.failure.FailureCatalogue;
import stillturning.parts.PartKind;
import stillturning.parts.PartKinds;
import stillturning.quantity.Formats;

/** The matrix failure by candidate, row by row. */
public final class FailureRows {

    /** Kind of what is not a part's failure. */
    public static final String CASES = "operating cases";

    private static final Comparator<Double> SHOWN = Comparator.comparing(Formats::lastingSeconds);

    /** Gravest first; of equal ones that which leaves least time, as it is printed. */
    public static final Comparator<Verdict> GRAVEST_FIRST =
            Comparator.comparing((Verdict v) -> v.outcome())
                    .thenComparing(v -> v.actBySeconds().orElse(Double.POSITIVE_INFINITY), SHOWN)
                    .thenComparing(v -> v.planned().engine().endurance().seconds(), SHOWN)
                    .thenComparing(v -> v.failure().name());

    /**
     * One failure.
     *
     * @param kind of the part that fails
     * @param byCandidate verdict of each candidate that has the part, in the order given
     */
    public record FailureRow(String kind, String failure, List<Optional<Verdict>> byCandidate) {

        public FailureRow {
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
    public static List<FailureRow> of(List<Appraisal> appraisals) {
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
        order.addAll(kinds());
        return cells.entrySet().stream()
                .map(e -> new FailureRow(e.getKey().kind(), e.getKey().failure(), e.getValue()))
                .sorted(
                        Comparator.<FailureRow>comparingInt(r -> order.indexOf(r.kind()))
                                .thenComparing(FailureRow::worst)
                                .thenComparing(FailureRow::failure))
                .toList();
    }

    /** Single failures and operating cases of one candidate. */
    public static Stream<Verdict> all(Appraisal appraisal) {
        return Stream.concat(
                Stream.concat(Stream.of(appraisal.chargingLost()), appraisal.masterOff().stream()),
                appraisal.singles().stream());
    }

    /** Whether it is a way to fly rather than a broken part. */
    public static boolean operatingCase(Verdict verdict) {
        String name = verdict.failure().name();
        return name.equals(FailureCatalogue.CHARGING_LOST)
                || name.equals(FailureCatalogue.MASTER_OFF);
    }

    /** Every kind of part, in the order in which the matrix lists them. */
    public static List<String> kinds() {
        return PartKinds.all().stream().map(PartKind::plural).toList();
    }

    private static String kind(Candidate candidate, Verdict verdict) {
        if (operatingCase(verdict)) {
            return CASES;
        }
        return verdict.failure().hits().stream()
                .findFirst()
                .flatMap(hit -> candidate.part(hit.part()))
                .map(part -> part.kind().plural())
                .orElse(CASES);
    }

    private static List<Optional<Verdict>> empty(int size) {
        List<Optional<Verdict>> row = new ArrayList<>();
        for (int i = 0; i < size; i++) {
            row.add(Optional.empty());
        }
        return row;
    }
}
