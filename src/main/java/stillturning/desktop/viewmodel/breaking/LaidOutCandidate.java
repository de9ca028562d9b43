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

/** A candidate drawn and laid out, to be painted in any state. */
public record LaidOutCandidate(
        Study study, Candidate candidate, DrawnCandidate drawn, Sheet sheet) {

    /** Drawn again only if something has changed; then symbols keep their order. */
    static LaidOutCandidate of(
            Study study, Candidate candidate, Optional<LaidOutCandidate> before) {
        if (before.filter(b -> b.candidate.equals(candidate) && b.study.equals(study))
                .isPresent()) {
            return before.get();
        }
        DrawnCandidate drawn = CandidateDrawing.drawn(candidate, study);
        Sheet sheet =
                before.filter(b -> b.candidate.id().equals(candidate.id()))
                        .map(b -> OneLine.laidOut(drawn.diagram(), b.sheet))
                        .orElseGet(() -> OneLine.laidOut(drawn.diagram()));
        return new LaidOutCandidate(study, candidate, drawn, sheet);
    }

    /** The picture in a state. */
    public Picture picture(DrawingStates.ShownStates shown) {
        return sheet.picture(
                drawn.diagram().looking(shown.symbols(), shown.lines(), shown.glyphs()));
    }
}
