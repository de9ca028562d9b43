package stillturning.files.entry;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import stillturning.model.Reach;
import stillturning.quantity.Dimension;
import stillturning.quantity.Quantity;
import stillturning.quantity.field.Bounds;
import stillturning.quantity.field.Default;
import stillturning.quantity.field.Describes;
import stillturning.quantity.field.Key;
import stillturning.quantity.field.OfDimension;
import stillturning.yaml.notation.Discriminator;
import stillturning.yaml.notation.Given;

/** A candidate's file as written. */
@Describes("One electrical architecture.")
public record CandidateEntry(
        @Describes("Title of the candidate.") String candidate,
        @Describes("Why one would build it so.") Optional<String> about,
        @Describes("Its parts, loads excepted.") Map<String, PartEntry> parts,
        @Describes("Ground point at which the loads of each zone return, by zone.") @Default("{}")
                Map<String, String> returns,
        @Describes("Runs between parts: \"from battery.plus to main-contactor, wire AWG 4 0.6 m\".")
                @Default("{}")
                Map<String, RunText> links,
        @Describes("Runs to loads, by load or by load.input: \"from main-bus, breaker 5 A\".")
                @Default("{}")
                Map<String, RunText> feeds,
        @Describes("What is to be said of single wires, by part.") @Default("{}")
                Map<String, WireNote> wires,
        @Describes(
                        "Distance behind the datum of parts that do not sit in the middle of their zone.")
                @Default("{}")
                @OfDimension(Dimension.LENGTH)
                Map<String, Given> arms,
        @Describes(
                        "Rates by part and failure mode, where the study's do not suit: \"{open: 1e-5 /h (measured)}\".")
                @Default("{}")
                Map<String, Map<String, RateText>> fails,
        @Describes("What parts share beside their joints.") @Default("[]") List<SharedEntry> shares,
        @Describes("Loads of the study that this candidate leaves out.") @Default("[]")
                List<String> leavesOut,
        @Describes("Where levers stand, by configuration.") Positions positions,
        @Describes(
                        "From where the pilot can move parts that are not reached as their zone is: seat, ground, none; by part.")
                @Default("{}")
                Map<String, Reach> reach,
        @Describes("What the pilot can notice, by name.") @Default("{}") Map<String, CueEntry> sees,
        @Describes("What the pilot does about it, by name.") @Default("{}")
                Map<String, ProcedureEntry> procedures) {

    /** What is to be said of one wire. */
    @Describes("What is to be said of one wire.")
    public record WireNote(
            @Describes("In any words.") Optional<String> colour,
            @Describes("What is crimped to its ends, in any words.") Optional<String> terminals,
            @Describes("Temperature that its insulation withstands continuously.")
                    @OfDimension(value = Dimension.TEMPERATURE, least = "60 °C", most = "260 °C")
                    Optional<Given> insulation,
            @Describes("Wires in its bundle, itself counted.") @Bounds(least = 1, most = 60)
                    Optional<Integer> bundle) {}

    /** Where levers stand. */
    @Describes("Where levers stand, by configuration.")
    public record Positions(
            @Describes("In normal flight, for every switch.") @Default("{}")
                    Map<String, String> flight,
            @Describes("In the drill that takes all power off the airframe; others stay.")
                    @Default("{}")
                    Map<String, String> masterOff,
            @Describes("While the engine is started; others stand as in flight.") @Default("{}")
                    Map<String, String> starting) {}

    /** Something that the pilot can notice. */
    @Describes("Something that the pilot can notice.")
    @Discriminator("watches")
    public sealed interface CueEntry
            permits CueEntry.LowVoltage,
                    CueEntry.HighVoltage,
                    CueEntry.AlternatorOut,
                    CueEntry.LoadStops,
                    CueEntry.EngineStops {

        /**
         * Load that must work for the pilot to see it, and against whose minus a voltage is
         * measured; a lamp of its own if not written.
         */
        Optional<String> shownBy();

        /** A voltage below a limit. */
        @Key("low-voltage")
        record LowVoltage(
                @Describes(
                                "Part or part.terminal: measured against the minus of what shows it,"
                                        + " or the structure, or the ground at the battery's minus"
                                        + " where there is none.")
                        String at,
                @OfDimension(value = Dimension.VOLTAGE, above = "0 V") Given below,
                @Key("for") @Default("2 s") @OfDimension(value = Dimension.TIME, least = "0 s")
                        Given lasting,
                Optional<String> shownBy)
                implements CueEntry {}

        /** A voltage above a limit. */
        @Key("high-voltage")
        record HighVoltage(
                @Describes(
                                "Part or part.terminal: measured against the minus of what shows it,"
                                        + " or the structure, or the ground at the battery's minus"
                                        + " where there is none.")
                        String at,
                @OfDimension(value = Dimension.VOLTAGE, above = "0 V") Given above,
                @Key("for") @Default("1 s") @OfDimension(value = Dimension.TIME, least = "0 s")
                        Given lasting,
                Optional<String> shownBy)
                implements CueEntry {}

        /** An alternator that delivers nothing. */
        @Key("alternator")
        record AlternatorOut(String alternator, Optional<String> shownBy) implements CueEntry {}

        /** A load that stops. */
        @Key("load")
        record LoadStops(String load, Optional<String> shownBy) implements CueEntry {}

        /** The engine that stops. */
        @Key("engine")
        record EngineStops(Optional<String> shownBy) implements CueEntry {}
    }

    /** What the pilot does. */
    @Describes("What the pilot does about a cue.")
    public record ProcedureEntry(
            @Describes("Cues, any of which starts it.") List<String> when,
            @Describes("Time from the cue to the moves.")
                    @OfDimension(value = Dimension.TIME, least = "0 s")
                    Given after,
            @Describes("Position by lever.") @Default("{}") Map<String, String> moves,
            @Describes("Loads switched off at their own switches.") @Default("[]")
                    List<String> sheds,
            @Describes("Whether the starter is pressed after the moves.") @Default("no")
                    boolean pressesStarter,
            @Describes(
                            "Part or load that does it by itself while it works; the pilot if not written.")
                    Optional<String> by,
            @Describes(
                            "Time from one load to the next, lowest shed rank first, while a cue lasts; all at once if not written.")
                    @OfDimension(value = Dimension.TIME, above = "0 s")
                    Optional<Quantity> oneEach) {}
}
