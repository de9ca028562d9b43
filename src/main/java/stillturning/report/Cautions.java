package stillturning.report;

import java.util.List;
import java.util.stream.Stream;

/** What must stand on everything that is printed for use in an aircraft. */
public final class Cautions {

    /** In one line. */
    public static final String SHORT =
            "An aid for comparing designs, not approved data. Check against the engine's and"
                    + " equipment's own instructions, local rules, and a licensed or authorised"
                    + " person; test on the ground before flight.";

    private Cautions() {}

    /** In full. */
    public static List<String> inFull(boolean invented) {
        List<String> general =
                List.of(
                        "This is an aid for comparing designs. It is not approved data and"
                                + " certifies nothing.",
                        "The engine's and the equipment's own instructions come first, then local"
                                + " rules, then the judgement of a licensed or authorised person.",
                        "Every result rests on the values in the study's files; guesses are listed"
                                + " as such. A model leaves things out: vibration, corrosion,"
                                + " workmanship, software faults that nobody thought of.",
                        "Test on the ground, with each source and each feed disconnected in turn,"
                                + " before any flight.");
        return invented
                ? Stream.concat(
                                Stream.of(
                                        "All data of this study are invented for demonstration;"
                                                + " no aircraft is built like this."),
                                general.stream())
                        .toList()
                : general;
    }
}
