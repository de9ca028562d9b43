package stillturning.desktop.viewmodel.breaking;

import java.util.ArrayList;
import java.util.List;
import stillturning.assess.Assess;
import stillturning.model.Study;
import stillturning.story.Moment;
import stillturning.story.Moment.Batteries;
import stillturning.story.Moment.FlightSpan;

/** A moment of the flight that can be chosen, in words. */
public record MomentChoice(Moment moment, String words) {

    /** Where the study's failures happen, then every moment in the order of the flight. */
    static List<MomentChoice> of(Study study) {
        List<MomentChoice> all = new ArrayList<>();
        String phase = study.goals().failurePhase().name();
        all.add(new MomentChoice(Moment.heldIn(phase), phase + ", held"));
        Assess.moments(study).forEach(moment -> all.add(new MomentChoice(moment, words(moment))));
        return List.copyOf(all);
    }

    private static String words(Moment moment) {
        String start = moment.batteries() == Batteries.TIRED ? " after a hard start" : "";
        String then = moment.span() == FlightSpan.FLOWN ? ", then landing" : "";
        return moment.phase() + start + then;
    }
}
