package stillturning.report.json;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import stillturning.assess.Disagreement;
import stillturning.assess.Verdict;
import stillturning.model.Candidate.Hit;
import stillturning.model.Chances.Rate;
import stillturning.model.Study;
import stillturning.report.Cautions;
import stillturning.report.joint.SharedFindings;
import stillturning.report.joint.SharedFindings.Carrier;
import stillturning.report.joint.SharedFindings.Played;
import stillturning.structure.FunctionWays;
import stillturning.structure.SharedPlaces.HotFeed;
import stillturning.structure.SharedPlaces.SharedPlace;
import stillturning.structure.StructureFindings.Ways;

/** The shape of common causes, and of what the shape of candidates says, in JSON. */
record CausesJson(int schemaVersion, String caution, String study, List<OfCandidate> candidates) {

    /** One candidate. */
    record OfCandidate(
            String candidate,
            List<One> causes,
            List<Carried> carriers,
            List<Function> functions,
            List<Single> singlePoints,
            List<Place> sharedPlaces,
            List<Hot> hotSide,
            List<Differing> disagreements,
            List<String> untold) {}

    /** One common cause; its verdict is null where it could not be computed. */
    record One(
            String name,
            String kind,
            String words,
            List<Taken> takes,
            @Nullable Come comesTo,
            @Nullable Often rate) {}

    /** A part that fails, and how. */
    record Taken(String part, String mode) {}

    /** What it comes to, the pilot as planned. */
    record Come(String outcome, boolean engineOwn, Lasting lasts) {}

    /** A median with its factor, per second, flight or need. */
    record Often(@Nullable Double median, @Nullable Double within, String per, String source) {}

    /** A failure that takes feeds of several of the engine's loads. */
    record Carried(String failure, List<String> loads, Come comesTo) {}

    /** How one thing that the engine cannot do without is supplied. */
    record Function(
            String function,
            boolean supplied,
            @Nullable Way feed,
            @Nullable Way back,
            List<List<String>> cuts,
            String words) {}

    /** Ways on one side. */
    record Way(List<List<String>> independent, List<String> cut, List<String> shared) {}

    /** A part without which the engine's needs are not met. */
    record Single(String part, String reason) {}

    /** A place that redundant feeds share. */
    record Place(
            String function,
            String kind,
            String place,
            boolean neitherElsewhere,
            boolean necessary,
            String words) {}

    /** A feed on the hot side of the firewall. */
    record Hot(String function, String source, String load, boolean endsThere, String words) {}

    /** Where shape and story say something else; the part is null for nothing removed. */
    record Differing(
            @Nullable String part, boolean shapeSays, boolean storySays, List<String> because) {}

    static CausesJson of(Study study, List<SharedFindings> all) {
        return new CausesJson(
                JsonReport.SCHEMA_VERSION,
                Cautions.SHORT,
                study.id(),
                all.stream().map(CausesJson::of).toList());
    }

    private static OfCandidate of(SharedFindings shared) {
        return new OfCandidate(
                shared.candidate().id(),
                shared.causes().stream().map(CausesJson::one).toList(),
                shared.carriers().stream().map(CausesJson::carried).toList(),
                shared.shape().functions().stream().map(CausesJson::function).toList(),
                shared.shape().singlePoints().stream()
                        .map(point -> new Single(point.part(), point.reason()))
                        .toList(),
                shared.shape().places().shared().stream().map(CausesJson::place).toList(),
                shared.shape().places().hotSide().stream().map(CausesJson::hot).toList(),
                shared.disagreements().stream().map(CausesJson::differing).toList(),
                shared.untold());
    }

    private static One one(Played played) {
        return new One(
                played.cause().name(),
                JsonNumbers.kebab(played.cause().kind()),
                played.cause().words(),
                played.cause().failure().hits().stream().map(CausesJson::taken).toList(),
                played.verdict().map(CausesJson::come).orElse(null),
                played.cause().rate().map(CausesJson::often).orElse(null));
    }

    private static Taken taken(Hit hit) {
        return new Taken(hit.part(), hit.mode().name());
    }

    private static Come come(Verdict verdict) {
        return new Come(
                JsonNumbers.kebab(verdict.outcome()),
                verdict.engineOwn(),
                Lasting.of(verdict.planned().engine().endurance()));
    }

    private static Often often(Rate rate) {
        return new Often(
                JsonNumbers.chance(rate.median()),
                JsonNumbers.number(rate.errorFactor()),
                JsonNumbers.kebab(rate.per()),
                rate.source());
    }

    private static Carried carried(Carrier carrier) {
        return new Carried(
                carrier.verdict().failure().name(), carrier.loads(), come(carrier.verdict()));
    }

    private static Function function(FunctionWays ways) {
        return new Function(
                ways.function(),
                ways.supplied(),
                way(ways.feed()),
                way(ways.back()),
                ways.cuts(),
                ways.words());
    }

    private static @Nullable Way way(Optional<Ways> ways) {
        return ways.map(w -> new Way(w.independent(), w.cut(), w.shared())).orElse(null);
    }

    private static Place place(SharedPlace shared) {
        return new Place(
                shared.function(),
                JsonNumbers.kebab(shared.place().kind()),
                shared.place().name(),
                shared.neitherElsewhere(),
                shared.necessary(),
                shared.words());
    }

    private static Hot hot(HotFeed feed) {
        return new Hot(
                feed.function(),
                feed.source(),
                feed.strand().load(),
                feed.endsThere(),
                feed.words());
    }

    private static Differing differing(Disagreement of) {
        return new Differing(
                of.part().orElse(null),
                of.structureSays(),
                of.storySays(),
                of.because().stream().map(JsonNumbers::kebab).toList());
    }
}
