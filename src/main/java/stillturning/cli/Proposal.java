package stillturning.cli;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import stillturning.files.PartPlace;
import stillturning.files.ReadStudy;
import stillturning.files.StudyReader;
import stillturning.files.Variation;
import stillturning.model.Candidate;
import stillturning.model.Study;
import stillturning.parts.Cable;
import stillturning.sizing.Finding;
import stillturning.sizing.Finding.Mend;
import stillturning.sizing.Sizing;
import stillturning.sizing.SizingReport;
import stillturning.sizing.WireSize;
import stillturning.story.UntoldStory;
import stillturning.yaml.EditRefused;
import stillturning.yaml.YamlDocument;

/**
 * The lightest sizes of a candidate that meet every rule, as another text of its file. First every
 * wire becomes as thin as the rules allow; since that changes what flows and drops, it is sized
 * anew and only made thicker, until nothing is left that a size could mend.
 *
 * @param before the file as it is
 * @param after the file as proposed
 * @param left findings that no size mends
 */
record Proposal(YamlDocument before, YamlDocument after, List<Finding> left) {

    private static final int MOST_ROUNDS = 8;

    Proposal {
        left = List.copyOf(left);
    }

    /**
     * Finds the sizes.
     *
     * @throws Refusal if the file cannot be changed or the candidate cannot be computed
     */
    static Proposal of(FoundStudy found, String candidate, SizingReport first) {
        try {
            return search(found.reader(), candidate, first);
        } catch (EditRefused | UntoldStory e) {
            throw new Refusal(candidate + ": no proposal can be made: " + e.getMessage());
        }
    }

    private static Proposal search(StudyReader reader, String candidate, SizingReport first)
            throws EditRefused, UntoldStory {
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
            report = sized(now, candidate);
        }
        return new Proposal(reader.document(candidate), now.document(candidate), report.findings());
    }

    private static Map<String, PartPlace> places(ReadStudy read, String candidate) {
        return read.sizes().places().getOrDefault(candidate, Map.of());
    }

    private static SizingReport sized(StudyReader reader, String id) throws UntoldStory {
        ReadStudy read = reader.study(Variation.NONE);
        Study study =
                read.study()
                        .orElseThrow(
                                () ->
                                        new Refusal(
                                                id
                                                        + ": the proposal does not read:\n"
                                                        + ProblemText.of(read.problems())));
        Candidate candidate = study.candidate(id).orElseThrow();
        return Sizing.of(study, candidate, read.sizes().installation());
    }

    private static Map<String, Double> ratings(SizingReport report) {
        Map<String, Double> ratings = new LinkedHashMap<>();
        for (Finding finding : report.findings()) {
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
    boolean changes() {
        return !before.text().equals(after.text());
    }
}
