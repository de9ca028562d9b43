package stillturning.dossier.exploration;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import stillturning.files.move.Drawn;
import stillturning.structure.shape.CandidateForm;

/** Layouts stripped of what they do their service without, each of another shape. */
final class BareStarts {

    private BareStarts() {}

    /**
     * Where a search begins beside the drawings.
     *
     * @param from what it was made from, in words
     */
    record BareStart(Drawn drawn, String from) {}

    /**
     * One drawing stripped of all, which is the least there is; and the one with the most batteries
     * stripped of all but these, since a search seldom adds a battery with all that it needs by
     * single changes.
     *
     * @param plain the baseline
     */
    static List<BareStart> of(Drawn plain, List<Drawn> drawings, LayoutSpace space) {
        Optional<Drawn> most =
                drawings.stream()
                        .filter(drawn -> BareLayout.batteries(drawn) > 1)
                        .max(Comparator.comparingLong(BareLayout::batteries));
        List<Optional<BareStart>> stripped =
                Stream.of(true, false)
                        .parallel()
                        .map(
                                all ->
                                        all
                                                ? BareLayout.of(plain, space)
                                                        .map(b -> bare(b, " stripped bare"))
                                                : most.flatMap(
                                                                m ->
                                                                        BareLayout.withBatteries(
                                                                                m, space))
                                                        .map(
                                                                b ->
                                                                        bare(
                                                                                b,
                                                                                " stripped to its"
                                                                                        + " batteries")))
                        .toList();
        Set<Object> forms = new HashSet<>();
        drawings.forEach(drawn -> forms.add(CandidateForm.of(drawn.candidate())));
        List<BareStart> starts = new ArrayList<>();
        stripped.stream()
                .flatMap(Optional::stream)
                .filter(bare -> forms.add(CandidateForm.of(bare.drawn().candidate())))
                .forEach(starts::add);
        return starts;
    }

    private static BareStart bare(Drawn drawn, String how) {
        return new BareStart(drawn, drawn.candidate().title() + how);
    }
}
