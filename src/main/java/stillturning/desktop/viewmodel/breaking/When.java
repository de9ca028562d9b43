package stillturning.desktop.viewmodel.breaking;

import java.util.ArrayList;
import java.util.List;
import stillturning.assess.Assess;
import stillturning.model.Study;
import stillturning.story.Moment;
import stillturning.story.Moment.Batteries;
import stillturning.story.Moment.Span;

/** A moment of the flight that can be chosen, in words. */
public record When(Moment moment, String words) {

    /** Where the study's failures happen, then every moment in the order of the flight. */
    static List<When> of(Study study) {
        List<When> all = new ArrayList<>();
        String phase = study.goals().failurePhase().name();
        all.add(new When(Moment.heldIn(phase), phase + ", held"));
        Assess.moments(study).forEach(moment -> all.add(new When(moment, words(moment))));
        return List.copyOf(all);
    }

    private static String words(Moment moment) {
        String start = moment.batteries() == Batteries.TIRED ? " after a hard start" : "";
        String then = moment.span() == Span.FLOWN ? ", then landing" : "";
        return moment.phase() + start + then;
    }
}
