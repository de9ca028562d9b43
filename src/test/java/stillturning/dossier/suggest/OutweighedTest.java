package stillturning.dossier.suggest;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.TestInstance.Lifecycle;
import stillturning.assess.Appraisal;
import stillturning.assess.suggest.EngineLosses;
import stillturning.assess.suggest.LightestMends;
import stillturning.assess.suggest.LightestMends.LightMend;
import stillturning.assess.suggest.Suggestion;
import stillturning.assess.suggest.Suggestion.CandidateBurden;
import stillturning.assess.suggest.Suggestions;
import stillturning.assess.suggest.Suggestions.LookedAt;
import stillturning.assess.suggest.Wanted;
import stillturning.assess.suggest.Wanted.Mended;
import stillturning.assess.verdict.Outcome;
import stillturning.files.ReadStudy;
import stillturning.files.StudyReader;
import stillturning.files.move.Drawn;
import stillturning.files.value.Variation;
import stillturning.model.Study;
import stillturning.report.suggest.SuggestionWords;

/** Changes that lose the engine in more ways than before. */
@TestInstance(Lifecycle.PER_CLASS)
class OutweighedTest {

    private Study study;
    private Appraisal before;
    private Appraisal other;

    @BeforeAll
    void assess() throws Exception {
        StudyReader reader = StudyReader.open(Path.of("architectures", "first-steps"));
        ReadStudy read = reader.study(Variation.NONE);
        study = read.study().orElseThrow();
        before = Suggest.of(Drawn.of(reader, read, "bus-and-battery")).before();
        other = Suggest.of(Drawn.of(reader, read, "one-bus")).before();
    }

    private static SortedSet<String> losing(Appraisal appraisal) {
        TreeSet<String> names = new TreeSet<>();
        appraisal.with(Outcome.ENGINE_LOST).forEach(v -> names.add(v.failure().name()));
        return names;
    }

    /** A candidate with 10 such failures, and one with more: one way each is as good as none. */
    @Test
    void whatLosesTheEngineInMoreWaysIsOutweighedAndTheWayBackIsNot() {
        Suggestion worse =
                Suggestion.of(study, List.of("A"), new Mended(List.of(), List.of()), before, other);
        Suggestion back =
                Suggestion.of(study, List.of("B"), new Mended(List.of(), List.of()), other, before);
        SortedSet<String> brought = losing(other);
        brought.removeAll(losing(before));
        assertEquals(brought, new TreeSet<>(worse.losses().brought()));
        assertEquals(worse.losses(), swapped(back.losses()));
        assertTrue(losing(other).size() > losing(before).size());
        assertTrue(worse.isOutweighed());
        assertFalse(back.isOutweighed());
        assertFalse(new EngineLosses(List.of("x"), List.of("y")).isMore());
        assertFalse(new EngineLosses(List.of(), List.of()).isMore());
    }

    private static EngineLosses swapped(EngineLosses losses) {
        return new EngineLosses(losses.gone(), losses.brought());
    }

    /**
     * A change made up.
     *
     * @param brought how many failures lose the engine anew; one no longer does
     */
    private Suggestion change(String name, double kilograms, int brought, String... mended) {
        Suggestion real =
                Suggestion.of(
                        study, List.of(name), new Mended(List.of(), List.of()), before, other);
        return new Suggestion(
                real.moves(),
                real.differences(),
                real.before(),
                new CandidateBurden(kilograms, 10, 0, 0, 0),
                new Mended(List.of(mended), List.of()),
                List.of(),
                new EngineLosses(
                        List.of("a: open", "b: open", "c: open").subList(0, brought),
                        List.of("d: open")));
    }

    private static List<String> moves(List<LightMend> mends) {
        return mends.stream().map(m -> m.suggestion().moves().get(0)).toList();
    }

    @Test
    void theLightestChangesLeaveItOutAndSayWhatNothingElseMends() {
        Wanted wanted = Wanted.all(before);
        String one = wanted.names().get(0);
        String two = wanted.names().get(1);
        LightestMends mends =
                LightestMends.among(
                        study,
                        before,
                        wanted,
                        List.of(
                                change("Fine", 20, 1, one),
                                change("Lighter", 18, 0, one),
                                change("Lightest and worse", 12, 2, one),
                                change("Worse", 22, 3, two)),
                        LookedAt.NOTHING);
        assertEquals(List.of("Lighter"), moves(mends.mends()));
        assertEquals(List.of("Lightest and worse", "Worse"), moves(mends.outweighed()));
        assertEquals(List.of(two), mends.mendedAtALoss());
        assertEquals(wanted.names().subList(2, wanted.size()), mends.unmended());
        LightestMends all = mends.withOutweighed();
        assertEquals(List.of("Lighter", "Lightest and worse", "Worse"), moves(all.mends()));
        assertEquals(List.of(), all.outweighed());
        assertEquals(mends.mendedAtALoss(), all.mendedAtALoss());
        assertEquals(mends.unmended(), all.unmended());
    }

    @Test
    void itIsCountedAndListedLastWhereThatIsAskedFor() {
        Wanted wanted = Wanted.all(before);
        Suggestion fine = change("Fine", 20, 1, wanted.names().get(0));
        Suggestion worse = change("Worse", 12, 3, wanted.names().get(0));
        Suggestions found =
                new Suggestions(
                        study, before, wanted, List.of(fine), List.of(worse), LookedAt.NOTHING);
        assertEquals(
                Optional.of(
                        "1 more change mends some of it but brings more new single failures that"
                                + " lose the engine than it takes away; the command suggest --all"
                                + " lists it."),
                new SuggestionWords(found).outweighed());
        assertEquals(List.of(fine, worse), found.withOutweighed().found());
        SuggestionWords all = new SuggestionWords(found.withOutweighed());
        assertEquals(Optional.empty(), all.outweighed());
        assertTrue(
                all.about(worse)
                        .contains(
                                "3 single failures lose the engine that did not before, 1 no longer"
                                        + " does: it loses the engine in more ways than before."));
        assertTrue(
                all.about(fine)
                        .contains(
                                "1 single failure loses the engine that did not before, 1 no longer"
                                        + " does."));
    }

    /** Else one that is not even listed could push out one that would be. */
    @Test
    void itOutdoesNothingThatIsOffered() {
        List<Double> fine = change("Fine", 20, 1, "x").values();
        List<Double> worse = change("Worse", 12, 3, "x").values();
        assertTrue(worse.get(worse.size() - 1) > fine.get(fine.size() - 1));
    }
}
