package stillturning.files.candidate;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import stillturning.files.entry.RateText;
import stillturning.files.entry.RateText.RateBasis;
import stillturning.files.finding.ProblemCollector;
import stillturning.files.finding.ProblemCollector.Spot;
import stillturning.model.Chances.Mode;
import stillturning.model.Chances.Per;
import stillturning.model.Chances.Rate;
import stillturning.model.failure.Failure;
import stillturning.parts.FailureMode;
import stillturning.parts.Part;
import stillturning.parts.PartKind;
import stillturning.parts.PartKinds;
import stillturning.yaml.DocumentPlaces;
import stillturning.yaml.notation.Origin;
import stillturning.yaml.notation.Source;

/**
 * Rates of failure modes, what is said of a part before what is said of its kind.
 *
 * @param byKind from kind and mode
 * @param byPart from part and mode
 */
record RateBook(
        Map<String, Map<String, RateText>> byKind, Map<String, Map<String, RateText>> byPart) {

    /** What shows a cue; no part, since its supply is not drawn. */
    private static final String LAMP = "indicator";

    private static final String DEAD = "dead";

    private static final double SECONDS_PER_HOUR = 3600;

    /** Spreads where none is written: guesses, the first also for what has no origin. */
    private static final double GUESSED_WITHIN = 10;

    private static final double KNOWN_WITHIN = 3;

    /** The same with further rates, which come first. */
    RateBook with(
            Map<String, Map<String, RateText>> moreByKind,
            Map<String, Map<String, RateText>> moreByPart) {
        return new RateBook(over(byKind, moreByKind), over(byPart, moreByPart));
    }

    private static Map<String, Map<String, RateText>> over(
            Map<String, Map<String, RateText>> below, Map<String, Map<String, RateText>> above) {
        Map<String, Map<String, RateText>> all = new LinkedHashMap<>(below);
        above.forEach(
                (name, rates) -> {
                    Map<String, RateText> merged = new LinkedHashMap<>(rates);
                    below.getOrDefault(name, Map.of()).forEach(merged::putIfAbsent);
                    all.put(name, merged);
                });
        return all;
    }

    /** The rate of every failure mode of these parts that is known. */
    Map<Mode, Rate> of(List<Part> parts) {
        Map<Mode, Rate> rates = new LinkedHashMap<>();
        for (Part part : parts) {
            for (FailureMode mode : part.failureModes()) {
                written(part, mode)
                        .ifPresent(r -> rates.put(new Mode(part.id(), mode.name()), rate(r)));
            }
        }
        return rates;
    }

    /** How often the lamp of a cue is dead, if that is known. */
    Map<Mode, Rate> ofLamp(String cue) {
        Optional<RateText> written =
                Optional.ofNullable(byKind.getOrDefault(LAMP, Map.of()).get(DEAD));
        return written.map(w -> Map.of(new Mode(cue, Failure.DEAD_LAMP), rate(w))).orElse(Map.of());
    }

    private Optional<RateText> written(Part part, FailureMode mode) {
        return found(byPart.getOrDefault(part.id(), Map.of()), mode)
                .or(() -> found(byKind.getOrDefault(part.kind().word(), Map.of()), mode));
    }

    private static Optional<RateText> found(Map<String, RateText> rates, FailureMode mode) {
        return Optional.ofNullable(rates.get(mode.fullKey()))
                .or(() -> Optional.ofNullable(rates.get(mode.key())));
    }

    static Rate rate(RateText written) {
        boolean hourly = written.unit() == RateBasis.HOUR;
        return new Rate(
                hourly ? written.times() / SECONDS_PER_HOUR : written.times(),
                written.within().orElse(usualWithin(written.source().origin())),
                switch (written.unit()) {
                    case HOUR -> Per.SECOND;
                    case FLIGHT -> Per.FLIGHT;
                    case NEED -> Per.NEED;
                },
                inWords(written.source()));
    }

    private static double usualWithin(Origin origin) {
        return origin == Origin.GUESSED || origin == Origin.STATED ? GUESSED_WITHIN : KNOWN_WITHIN;
    }

    /** Where a value comes from, in words. */
    static String inWords(Source source) {
        List<String> words = new ArrayList<>();
        boolean shipped = source.origin() == Origin.CATALOGUE && !source.note().isEmpty();
        if (!shipped) {
            words.add(source.origin() == Origin.STATED ? "stated" : source.origin().words());
        }
        if (!source.note().isEmpty()) {
            words.add(source.note());
        }
        return String.join(", ", words);
    }

    /** Tells rates of modes that a part does not have, and those that do not count by hours. */
    void check(Map<String, RateText> rates, Part part, String path, ProblemCollector report) {
        List<String> full = part.failureModes().stream().map(FailureMode::fullKey).toList();
        Set<String> known = new HashSet<>(full);
        known.addAll(byKind.getOrDefault(part.kind().word(), Map.of()).keySet());
        rates.forEach(
                (mode, rate) -> {
                    String at = DocumentPlaces.under(path, mode);
                    if (!known.contains(mode)) {
                        report.unknown(Spot.atKey(at), "failure mode", mode, full);
                    }
                    require(rate, at, report, RateBasis.HOUR);
                });
    }

    /** Tells rates of kinds and modes that nothing has, and those that do not count by hours. */
    void check(Map<String, Map<String, RateText>> rates, String path, ProblemCollector report) {
        rates.forEach(
                (kind, modes) -> {
                    String at = DocumentPlaces.under(path, kind);
                    Map<String, RateText> known = byKind.getOrDefault(kind, Map.of());
                    if (!byKind.containsKey(kind)) {
                        report.unknown(
                                Spot.atKey(at),
                                "kind of part",
                                kind,
                                new TreeSet<>(
                                        PartKinds.all().stream().map(PartKind::word).toList()));
                    }
                    modes.forEach(
                            (mode, rate) -> {
                                if (byKind.containsKey(kind) && !known.containsKey(mode)) {
                                    report.unknown(
                                            Spot.atKey(DocumentPlaces.under(at, mode)),
                                            "failure mode",
                                            mode,
                                            known.keySet());
                                }
                                require(
                                        rate,
                                        DocumentPlaces.under(at, mode),
                                        report,
                                        RateBasis.HOUR);
                            });
                });
    }

    /** Tells a rate that does not count by one of these. */
    static void require(RateText rate, String path, ProblemCollector report, RateBasis... units) {
        List<RateBasis> allowed = List.of(units);
        if (!allowed.contains(rate.unit())) {
            String symbols = String.join(" or ", allowed.stream().map(RateBasis::symbol).toList());
            report.problem(
                    path,
                    "a rate " + rate.unit().symbol() + " does not belong here",
                    "write it " + symbols);
        }
    }
}
