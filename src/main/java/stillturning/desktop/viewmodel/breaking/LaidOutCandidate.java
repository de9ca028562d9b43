package stillturning.desktop.viewmodel.breaking;

import java.util.Optional;
import stillturning.model.Candidate;
import stillturning.model.Study;
import stillturning.report.drawing.Picture;
import stillturning.report.drawing.layout.OneLine;
import stillturning.report.drawing.layout.Sheet;
import stillturning.report.oneline.CandidateDrawing;
import stillturning.report.oneline.DrawingStates;
import stillturning.report.oneline.DrawnCandidate;

/**
 * A candidate drawn and laid out, to be painted in any state.
 *
 * @param shape width over height of the paper that it is laid out for, 0 while nobody knew it
 */
public record LaidOutCandidate(
        Study study, Candidate candidate, DrawnCandidate drawn, Sheet sheet, double shape) {

    /** Shape of a paper that nobody has seen yet. */
    private static final double BROAD = 2;

    /**
     * Drawn again only if something has changed, or if the paper has been found; symbols keep their
     * order if only something has changed.
     */
    static LaidOutCandidate of(
            Study study, Candidate candidate, Optional<LaidOutCandidate> before, double shape) {
        Optional<LaidOutCandidate> kept =
                before.filter(b -> b.candidate.id().equals(candidate.id()))
                        .filter(b -> b.shape > 0 || shape == 0);
        if (kept.filter(b -> b.candidate.equals(candidate) && b.study.equals(study)).isPresent()) {
            return kept.get();
        }
        DrawnCandidate drawn = CandidateDrawing.drawn(candidate, study);
        Sheet sheet =
                kept.map(b -> OneLine.laidOut(drawn.diagram(), b.sheet))
                        .orElseGet(
                                () -> OneLine.laidOut(drawn.diagram(), shape > 0 ? shape : BROAD));
        double laidFor = kept.map(LaidOutCandidate::shape).orElse(shape);
        return new LaidOutCandidate(study, candidate, drawn, sheet, laidFor);
    }

    /** The picture in a state. */
    public Picture picture(DrawingStates.ShownStates shown) {
        return sheet.picture(
                drawn.diagram().looking(shown.symbols(), shown.lines(), shown.glyphs()));
    }
}
