package stillturning.dossier.proposal;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import stillturning.files.ReadStudy;
import stillturning.files.StudyReader;
import stillturning.files.finding.PartPlace;
import stillturning.files.value.Variation;
import stillturning.model.Candidate;
import stillturning.model.Study;
import stillturning.parts.Cable;
import stillturning.quantity.Dimension;
import stillturning.quantity.Quantity;
import stillturning.sizing.Sizing;
import stillturning.sizing.SurveyDepth;
import stillturning.sizing.result.ProtectorSize;
import stillturning.sizing.result.SizeFinding;
import stillturning.sizing.result.SizeFinding.Mend;
import stillturning.sizing.result.SizingReport;
import stillturning.sizing.result.WireSize;
import stillturning.story.UntoldStory;
import stillturning.yaml.YamlDocument;
import stillturning.yaml.edit.EditRefused;

/**
 * The lightest sizes of a candidate that meet every rule, as another text of its file. First every
 * wire becomes as thin as the rules allow; since that changes what flows and drops, it is sized
 * again and only made thicker, until nothing is left that a size could mend.
 *
 * @param before the file as it is
 * @param after the file as proposed
 * @param now sizes as they are
 * @param then sizes as proposed
 */
public record Proposal(
        YamlDocument before, YamlDocument after, SizingReport now, SizingReport then) {

    private static final int MOST_ROUNDS = 8;

    /**
     * Finds the sizes.
     *
     * @param first the candidate's sizes as they are
     * @param progress told before each phase of each round, which takes as long as sizing does;
     *     what it throws ends the search
     * @throws NoProposal if the file cannot be changed or the candidate cannot be computed
     */
    public static Proposal of(
            StudyReader reader, String candidate, SizingReport first, Consumer<String> progress)
            throws NoProposal {
        try {
            return search(reader, candidate, first, progress);
        } catch (EditRefused | UntoldStory e) {
            throw new NoProposal(
                    candidate + ": no proposal can be made: " + e.getMessage(), List.of());
        }
    }

    private static Proposal search(
            StudyReader reader, String candidate, SizingReport first, Consumer<String> progress)
            throws EditRefused, UntoldStory, NoProposal {
        StudyReader now = reader;
        SizingReport report = first;
        for (int round = 0; round < MOST_ROUNDS; round++) {
            ReadStudy read = now.study(Variation.NONE);
            Map<String, PartPlace> places = places(read, candidate);
            Map<String, String> gauges = gauges(report, places, round == 0);
            Map<String, Double> ratings = ratings(report);
            if (gauges.isEmpty() && ratings.isEmpty()) {
                break;
            }
            now = now.with(now.resized(candidate, places, gauges, ratings));
            report = sized(now, candidate, label(round, progress));
        }
        return new Proposal(reader.document(candidate), now.document(candidate), first, report);
    }

    private static Map<String, PartPlace> places(ReadStudy read, String candidate) {
        return read.sizes().places().getOrDefault(candidate, Map.of());
    }

    private static Consumer<String> label(int round, Consumer<String> progress) {
        return phase -> progress.accept("round " + (round + 1) + ", " + phase);
    }

    private static SizingReport sized(StudyReader reader, String id, Consumer<String> progress)
            throws UntoldStory, NoProposal {
        ReadStudy read = reader.study(Variation.NONE);
        if (read.study().isEmpty()) {
            throw new NoProposal(id + ": the proposal does not read:", read.problems());
        }
        Study study = read.study().get();
        Candidate candidate = study.candidate(id).orElseThrow();
        return Sizing.of(
                study,
                candidate,
                read.sizes().installation(),
                SurveyDepth.SINGLE_FAILURES,
                progress);
    }

    private static Map<String, Double> ratings(SizingReport report) {
        Map<String, Double> ratings = new LinkedHashMap<>();
        for (SizeFinding finding : report.findings()) {
            if (finding.mend().isPresent() && finding.mend().get() instanceof Mend.Rating rating) {
                ratings.merge(rating.part(), rating.amps(), Math::max);
            }
        }
        return ratings;
    }

    /** Sizes that differ from what is there, by wires that can be written. */
    private static Map<String, String> gauges(
            SizingReport report, Map<String, PartPlace> places, boolean thinnerToo) {
        Map<String, Cable> needs = new LinkedHashMap<>();
        List<WireSize> returns = new ArrayList<>();
        for (WireSize size : report.wires().wires()) {
            if (isReturn(size, places)) {
                returns.add(size);
            } else {
                size.smallest().ifPresent(c -> needs.put(size.wire().id(), c));
            }
        }
        returns.forEach(back -> raise(back, report, places, needs));
        return report.wires().wires().stream()
                .filter(w -> differs(w, needs.get(w.wire().id()), thinnerToo))
                .collect(
                        Collectors.toMap(
                                w -> w.wire().id(),
                                w ->
                                        Optional.ofNullable(needs.get(w.wire().id()))
                                                .orElseThrow()
                                                .awg(),
                                (one, other) -> one,
                                LinkedHashMap::new));
    }

    private static boolean differs(WireSize size, @Nullable Cable needed, boolean thinnerToo) {
        if (needed == null) {
            return false;
        }
        int compared = Double.compare(needed.circularMils(), size.wire().cable().circularMils());
        return compared > 0 || (compared < 0 && thinnerToo);
    }

    /** A return that no line of the file writes: it is as thick as the thickest of its feeds. */
    private static boolean isReturn(WireSize size, Map<String, PartPlace> places) {
        PartPlace place = places.get(size.wire().id());
        return place != null && place.offset() == 0 && size.wire().id().endsWith("-return");
    }

    /** What a return needs, the wires of the run that makes it need as well. */
    private static void raise(
            WireSize back,
            SizingReport report,
            Map<String, PartPlace> places,
            Map<String, Cable> needs) {
        Optional<String> path =
                Optional.ofNullable(places.get(back.wire().id())).map(PartPlace::path);
        for (WireSize feed : report.wires().wires()) {
            PartPlace place = places.get(feed.wire().id());
            if (place != null && path.equals(Optional.of(place.path())) && !feed.equals(back)) {
                back.smallest()
                        .ifPresent(
                                c ->
                                        needs.merge(
                                                feed.wire().id(),
                                                c,
                                                (a, b) ->
                                                        a.circularMils() >= b.circularMils()
                                                                ? a
                                                                : b));
            }
        }
    }

    /** Whether anything would change. */
    public boolean changes() {
        return !before.text().equals(after.text());
    }

    /** Findings that no size mends. */
    public List<SizeFinding> left() {
        return then.findings();
    }

    /** Every part that gets another size, wires first. */
    public List<Resize> resizes() {
        Map<String, String> gauges = new LinkedHashMap<>();
        now.wires().wires().forEach(w -> gauges.put(w.wire().id(), w.wire().cable().awg()));
        List<Resize> all = new ArrayList<>();
        for (WireSize size : then.wires().wires()) {
            String awg = size.wire().cable().awg();
            String was = gauges.getOrDefault(size.wire().id(), awg);
            if (!was.equals(awg)) {
                all.add(new Resize(size.wire().id(), Resize.ResizedThing.WIRE, was, awg));
            }
        }
        all.addAll(protectors());
        return List.copyOf(all);
    }

    private List<Resize> protectors() {
        Map<String, Double> ratings = new LinkedHashMap<>();
        now.devices().protectors().forEach(p -> ratings.put(p.name(), p.ratedAmps()));
        List<Resize> all = new ArrayList<>();
        for (ProtectorSize size : then.devices().protectors()) {
            double was = ratings.getOrDefault(size.name(), size.ratedAmps());
            if (was != size.ratedAmps()) {
                all.add(
                        new Resize(
                                size.name(),
                                Resize.ResizedThing.PROTECTOR,
                                amps(was),
                                amps(size.ratedAmps())));
            }
        }
        return all;
    }

    private static String amps(double amps) {
        return Quantity.of(amps, Dimension.CURRENT).written();
    }
}
