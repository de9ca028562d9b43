package stillturning.desktop.viewmodel.size;

import java.util.Optional;
import stillturning.files.finding.PartPlace;
import stillturning.sizing.result.Rule.Gravity;

/**
 * Something about sizes that is not as it should be, in words.
 *
 * @param about part, wire with its size, or circuit
 * @param wrong what is wrong
 * @param mend what mends it
 * @param part the part to look at in the drawing, if it is one
 * @param place where that is asked for in the candidate's file, if anywhere
 */
public record FindingRow(
        Gravity gravity,
        String about,
        String wrong,
        String mend,
        Optional<String> part,
        Optional<PartPlace> place) {

    /** How grave it is, by a sign and a word, so that it is seen without colour. */
    public String mark() {
        return switch (gravity) {
            case WRONG -> "\u2716 WRONG";
            case LOOK -> "\u25B2 look";
            case NOTE -> "\u00B7 note";
        };
    }
}
