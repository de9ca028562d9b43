package stillturning.replays;

import java.util.List;
import java.util.Optional;
import stillturning.quantity.Dimension;
import stillturning.quantity.Quantity;
import stillturning.quantity.field.Bounds;
import stillturning.quantity.field.Default;
import stillturning.quantity.field.OfDimension;
import stillturning.story.Pilot;

/**
 * What the file of a replay says.
 *
 * @param report its number, with the authority
 * @param cause what stopped the engine, in one line
 * @param course what the report tells of the flight; absent if it is not modelled
 * @param beforeFlight where the cause has to be found without knowing the accident
 * @param notModelled why there is no model of it, or what a model of it leaves out
 * @param mend what is asked for that would have prevented it
 * @param noMend why no change of the layout would have
 */
public record ReplayFile(
        String report,
        String cause,
        Optional<Course> course,
        @Default("[]") List<Found> beforeFlight,
        Optional<String> notModelled,
        Optional<Mend> mend,
        Optional<String> noMend) {

    /**
     * What the report tells of the flight.
     *
     * @param happens failures by their names, all from the first instant; nothing fails if empty
     * @param in phase at whose beginning they come; the rest of the flight is flown
     * @param pilot how he keeps to the procedures
     * @param order loads that stop or go over to their own battery, in this order, others between
     *     them or not
     * @param engine when it stops first; it never does if absent
     */
    public record Course(
            @Default("[]") List<String> happens,
            String in,
            @Default("planned") Pilot pilot,
            @Default("[]") List<String> order,
            Optional<Window> engine) {}

    /** Between which times after the failure. */
    public record Window(
            @OfDimension(value = Dimension.TIME, least = "0 s") Quantity after,
            @OfDimension(value = Dimension.TIME, above = "0 s") Quantity before) {}

    /**
     * Where an answer has to name the cause.
     *
     * @param asked what is asked
     * @param says words that the finding holds, all of them
     * @param atMost greatest place that it may have, 1 for the first
     */
    public record Found(
            Question asked, List<String> says, @Bounds(least = 1, most = 99) int atMost) {}

    /**
     * What is to be mended, and a change that does.
     *
     * @param failures the single failure, or one that nobody sees and one more
     * @param finding words of what is found before anything fails, all of them in one finding
     * @param says words of the change among the first three, all of them
     * @param moves how many moves one after the other
     * @param leaves whether something was wrong before the flight already, and so need only show
     */
    public record Mend(
            @Default("[]") List<String> failures,
            @Default("[]") List<String> finding,
            @Default("[]") List<String> says,
            @Bounds(least = 1, most = 2) @Default("1") int moves,
            @Default("no") boolean leaves) {}
}
