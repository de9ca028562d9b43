package stillturning.files.candidate;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import stillturning.files.entry.ChancesEntry;
import stillturning.files.entry.RateText;
import stillturning.files.entry.RateText.RateBasis;
import stillturning.files.entry.ShippedRates;
import stillturning.files.entry.StudyEntry;
import stillturning.files.finding.ProblemCollector;
import stillturning.files.finding.ProblemCollector.Spot;
import stillturning.model.Chances;
import stillturning.model.Chances.Beta;
import stillturning.model.Chances.ExposureTimes;
import stillturning.model.Chances.Odds;
import stillturning.model.Chances.Rate;
import stillturning.model.Chances.Shared;
import stillturning.model.Chances.Sharing;
import stillturning.model.LoadNeed;
import stillturning.model.Phase;
import stillturning.model.Zone.Hazard;
import stillturning.parts.Load;
import stillturning.parts.Tag;
import stillturning.yaml.DocumentPlaces;
import stillturning.yaml.notation.Given;
import stillturning.yaml.notation.Source;

/** Makes of what a study says how often things fail; the shipped table fills in. */
public final class ChancesReader {

    /** Time flown between two inspections (s) where nobody says. A guess. */
    private static final double USUAL_INSPECTION_SECONDS = 50 * 3600.0;

    private final StudyEntry study;
    private final ChancesEntry written;
    private final CheckedStudy frame;
    private final ProblemCollector report;

    public ChancesReader(StudyEntry study, CheckedStudy frame, ProblemCollector report) {
        this.study = study;
        this.written = study.chances();
        this.frame = frame;
        this.report = report;
    }

    /**
     * What a study says.
     *
     * @param chances without any candidate
     * @param beta where nothing else is said of what is shared
     * @param shared what loads share in every candidate
     */
    public record StatedChances(Chances chances, RateBook rates, Beta beta, List<Shared> shared) {

        /** The chances with what is known of each candidate. */
        public Chances with(Map<String, Odds> candidates) {
            return new Chances(
                    chances.exposure(),
                    chances.events(),
                    chances.sharing(),
                    chances.leftSwitch(),
                    chances.idlePilot(),
                    candidates);
        }
    }

    public StatedChances read() {
        ShippedRates shipped = ShippedRates.shipped();
        RateBook book = new RateBook(shipped.failures(), Map.of());
        book.check(written.rates(), under("rates"), report);
        written.fails().forEach((load, rates) -> load(load, rates, book));
        RateBook.require(written.leftSwitch(), under("left-switch"), report, RateBasis.FLIGHT);
        RateBook.require(written.idlePilot(), under("idle-pilot"), report, RateBasis.NEED);
        Chances chances =
                new Chances(
                        exposure(),
                        rates(
                                List.of(Hazard.values()),
                                new Table("events", shipped.events(), written.events())),
                        rates(
                                Arrays.stream(Sharing.values())
                                        .filter(s -> !s.goesByBeta())
                                        .toList(),
                                new Table("sharing", shipped.sharing(), written.sharing())),
                        RateBook.rate(written.leftSwitch()),
                        RateBook.rate(written.idlePilot()),
                        Map.of());
        Beta beta = beta(written.beta());
        return new StatedChances(
                chances,
                book.with(written.rates(), written.fails()),
                beta,
                SharesReader.ofStudy(study, beta, report));
    }

    static Beta beta(Given given) {
        return new Beta(
                given.quantity().si(), RateBook.inWords(new Source(given.origin(), given.note())));
    }

    private static String under(String key) {
        return DocumentPlaces.under("chances", key);
    }

    private void load(String id, Map<String, RateText> rates, RateBook book) {
        String path = DocumentPlaces.under(under("fails"), id);
        Optional<LoadNeed> load = frame.load(id);
        if (load.filter(LoadNeed::selfPowered).isPresent()) {
            report.problem(
                    Spot.atKey(path),
                    "\"" + id + "\" is a part of each candidate",
                    "write its rates under fails in the candidates");
        } else if (load.isPresent()) {
            book.check(rates, part(load.get()), path, report);
        } else if (!frame.loadNames().contains(id)) {
            report.unknown(Spot.atKey(path), "load", id, frame.loadNames());
        }
    }

    private static Load part(LoadNeed need) {
        Tag tag = new Tag(need.id(), need.label(), need.zone(), Tag.Burden.NONE);
        return new Load(tag, need.demand(), need.tolerance(), need.inputs());
    }

    private ExposureTimes exposure() {
        double phases = frame.aircraft().phases().stream().mapToDouble(Phase::seconds).sum();
        double flight = written.flight().map(f -> f.quantity().si()).orElse(phases);
        double inspection =
                written.inspectedEvery()
                        .map(i -> i.quantity().si())
                        .orElse(Math.max(USUAL_INSPECTION_SECONDS, flight));
        if (inspection < flight) {
            report.problem(
                    under("inspected-every"),
                    "inspections come more often than flights end",
                    "write no less than the length of a flight");
        }
        return new ExposureTimes(flight, Math.max(inspection, flight));
    }

    /** Rates under a key of the study, with what ships for those that it leaves out. */
    private record Table(
            String key, Map<String, RateText> shipped, Map<String, RateText> written) {}

    private <E extends Enum<E>> Map<E, Rate> rates(List<E> all, Table table) {
        Map<E, Rate> rates = new LinkedHashMap<>();
        all.forEach(
                e -> {
                    RateText usual = table.shipped.get(word(e));
                    if (usual != null) {
                        rates.put(e, RateBook.rate(table.written.getOrDefault(word(e), usual)));
                    }
                });
        List<String> words = all.stream().map(ChancesReader::word).toList();
        table.written.forEach(
                (word, rate) -> {
                    String path = DocumentPlaces.under(under(table.key), word);
                    if (!words.contains(word)) {
                        report.unknown(Spot.atKey(path), "rate here for", word, words);
                    }
                    RateBook.require(rate, path, report, RateBasis.HOUR, RateBasis.FLIGHT);
                });
        return rates;
    }

    private static String word(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT);
    }
}
