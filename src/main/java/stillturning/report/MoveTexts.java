package stillturning.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import stillturning.assess.HarmfulMoves;

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
    public static List<String> findings(List<HarmfulMoves> found) {
        return found.stream().map(MoveTexts::finding).toList();
    }

    private static String finding(HarmfulMoves found) {
        return found.what()
                + " ("
                + moves(found.written())
                + ")"
                + found.after()
                        .map(failure -> ", after " + failure + more(found.others()))
                        .orElse("")
                + ": "
                + found.harm().part()
                + " "
                + found.harm().words()
                + ". Better: "
                + moves(found.better());
    }

    private static String more(int others) {
        return others == 0 ? "" : " and " + others + " more";
    }

    private static String moves(Map<String, String> moves) {
        List<String> words = new ArrayList<>();
        moves.forEach((lever, position) -> words.add(lever + " " + position));
        return String.join(", then ", words);
    }
}
