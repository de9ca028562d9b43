package stillturning.files.entry;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import stillturning.quantity.Dimension;
import stillturning.quantity.Quantity;
import stillturning.yaml.Bounds;
import stillturning.yaml.Called;
import stillturning.yaml.Default;
import stillturning.yaml.Discriminator;
import stillturning.yaml.Given;
import stillturning.yaml.Unit;
import stillturning.yaml.Words;

/** A candidate's file as written. */
@Words("One electrical architecture.")
public record CandidateEntry(
        @Words("Title of the candidate.") String candidate,
        @Words("Why one would build it so.") Optional<String> about,
        @Words("Its parts, loads excepted.") Map<String, PartEntry> parts,
        @Words("Ground point at which the loads of each zone return, by zone.") @Default("{}")
                Map<String, String> returns,
        @Words("Runs between parts: \"from battery.plus to main-contactor, wire AWG 4 0.6 m\".")
                @Default("{}")
                Map<String, RunText> links,
        @Words("Runs to loads, by load or by load.input: \"from main-bus, breaker 5 A\".")
                @Default("{}")
                Map<String, RunText> feeds,
        @Words("What is to be said of single wires, by part.") @Default("{}")
                Map<String, WireNote> wires,
        @Words("Distance behind the datum of parts that do not sit in the middle of their zone.")
                @Default("{}")
                @Unit(Dimension.LENGTH)
                Map<String, Given> arms,
        @Words(
                        "Rates by part and failure mode, where the study's do not suit: \"{open: 1e-5 /h (measured)}\".")
                @Default("{}")
                Map<String, Map<String, RateText>> fails,
        @Words("What parts share beside their joints.") @Default("[]") List<SharedEntry> shares,
        @Words("Loads of the study that this candidate leaves out.") @Default("[]")
                List<String> leavesOut,
        @Words("Where levers stand, by configuration.") Positions positions,
        @Words("What the pilot can notice, by name.") @Default("{}") Map<String, CueEntry> sees,
        @Words("What the pilot does about it, by name.") @Default("{}")
                Map<String, ProcedureEntry> procedures) {

    /** What is to be said of one wire. */
    @Words("What is to be said of one wire.")
    public record WireNote(
            @Words("In any words.") Optional<String> colour,
            @Words("What is crimped to its ends, in any words.") Optional<String> terminals,
            @Words("Temperature that its insulation stands for ever.")
                    @Unit(value = Dimension.TEMPERATURE, least = "60 °C", most = "260 °C")
                    Optional<Given> insulation,
            @Words("Wires in its bundle, itself counted.") @Bounds(least = 1, most = 60)
                    Optional<Integer> bundle) {}

    /** Where levers stand. */
    @Words("Where levers stand, by configuration.")
    public record Positions(
            @Words("In normal flight, for every switch.") @Default("{}") Map<String, String> flight,
            @Words("In the drill that takes all power off the airframe; others stay.")
                    @Default("{}")
                    Map<String, String> masterOff,
            @Words("While the engine is started; others stand as in flight.") @Default("{}")
                    Map<String, String> starting) {}

    /** Something that the pilot can notice. */
    @Words("Something that the pilot can notice.")
    @Discriminator("watches")
    public sealed interface CueEntry
            permits CueEntry.LowVoltage,
                    CueEntry.HighVoltage,
                    CueEntry.AlternatorOut,
                    CueEntry.LoadStops,
                    CueEntry.EngineStops {

        /** Load that must work for the pilot to see it; a lamp of its own if not written. */
        Optional<String> shownBy();

        /** A voltage below a limit. */
        @Called("low-voltage")
        record LowVoltage(
                @Words("Part or part.terminal.") String at,
                @Unit(value = Dimension.VOLTAGE, above = "0 V") Given below,
                @Called("for") @Default("2 s") @Unit(value = Dimension.TIME, least = "0 s")
                        Given lasting,
                Optional<String> shownBy)
                implements CueEntry {}

        /** A voltage above a limit. */
        @Called("high-voltage")
        record HighVoltage(
                @Words("Part or part.terminal.") String at,
                @Unit(value = Dimension.VOLTAGE, above = "0 V") Given above,
                @Called("for") @Default("1 s") @Unit(value = Dimension.TIME, least = "0 s")
                        Given lasting,
                Optional<String> shownBy)
                implements CueEntry {}

        /** An alternator that delivers nothing. */
        @Called("alternator")
        record AlternatorOut(String alternator, Optional<String> shownBy) implements CueEntry {}

        /** A load that stops. */
        @Called("load")
        record LoadStops(String load, Optional<String> shownBy) implements CueEntry {}

        /** The engine that stops. */
        @Called("engine")
        record EngineStops(Optional<String> shownBy) implements CueEntry {}
    }

    /** What the pilot does. */
    @Words("What the pilot does about a cue.")
    public record ProcedureEntry(
            @Words("Cues, any of which starts it.") List<String> when,
            @Words("Time from the cue to the moves.") @Unit(value = Dimension.TIME, least = "0 s")
                    Given after,
            @Words("Position by lever.") @Default("{}") Map<String, String> moves,
            @Words("Loads switched off at their own switches.") @Default("[]") List<String> sheds,
            @Words("Part or load that does it by itself while it works; the pilot if not written.")
                    Optional<String> by,
            @Words(
                            "Time from one load to the next, lowest shed rank first, while a cue lasts; all at once if not written.")
                    @Unit(value = Dimension.TIME, above = "0 s")
                    Optional<Quantity> oneEach) {}
}
