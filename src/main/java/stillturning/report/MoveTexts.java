package stillturning.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import stillturning.assess.HarmfulMoves;
import stillturning.model.Candidate;

/** Moves in an order that does harm, in sentences. */
public final class MoveTexts {

    /** Heads such findings. */
    public static final String HEADING = "Moves in an order that does harm";

    /** Stands above such findings. */
    public static final String MEANING =
            "Each move is played on its own, one after the other as written. Another order of the"
                    + " same moves does less harm on the way.";

    private MoveTexts() {}

    /** One sentence for each. */
    public static List<String> findings(Candidate candidate, List<HarmfulMoves> found) {
        Spoken spoken = new Spoken(candidate);
        return found.stream().map(one -> finding(spoken, one)).toList();
    }

    private static String finding(Spoken spoken, HarmfulMoves found) {
        return spoken.of(found.what())
                + " ("
                + moves(spoken, found.written())
                + ")"
                + found.after()
                        .map(failure -> ", after " + spoken.failure(failure) + more(found.others()))
                        .orElse("")
                + ": "
                + spoken.of(found.harm().part())
                + " "
                + spoken.sentence(found.harm().words())
                + ". Better: "
                + moves(spoken, found.better());
    }

    private static String more(int others) {
        return others == 0 ? "" : " and " + others + " more";
    }

    private static String moves(Spoken spoken, Map<String, String> moves) {
        List<String> words = new ArrayList<>();
        moves.forEach((lever, position) -> words.add(spoken.move(lever, position)));
        return String.join(", then ", words);
    }
}
