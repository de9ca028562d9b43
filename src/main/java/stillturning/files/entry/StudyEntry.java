package stillturning.files.entry;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import stillturning.model.CountsFrom;
import stillturning.model.Reach;
import stillturning.model.Requirement;
import stillturning.model.Zone;
import stillturning.model.goal.ComplexityCount;
import stillturning.model.goal.CriterionName;
import stillturning.quantity.Dimension;
import stillturning.quantity.Quantity;
import stillturning.quantity.field.Bounds;
import stillturning.quantity.field.Default;
import stillturning.quantity.field.Describes;
import stillturning.quantity.field.Fields;
import stillturning.quantity.field.MeasuredBy;
import stillturning.quantity.field.OfDimension;
import stillturning.yaml.notation.Given;

/** A study's file as written: what all candidates share. */
@Describes("One aircraft: its loads, engine logic, flight phases, zones and requirements.")
public record StudyEntry(
        @Describes("Title of the study.") String study,
        @Describes("What it is about.") Optional<String> about,
        @Describes("What the builder says about the choice, paragraph by paragraph.") @Default("[]")
                List<String> rationale,
        @Describes("Whether its data are made up.") @Default("no") boolean invented,
        @Describes("Three-letter code of the money that prices are in.") @Default("EUR")
                String currency,
        @Describes("Voltage at which loads are stated.")
                @OfDimension(value = Dimension.VOLTAGE, above = "0 V")
                Quantity nominal,
        @Describes("Places where parts sit.") Map<String, ZoneEntry> zones,
        @Describes("Length of wire between zones that are next to each other.") @Default("[]")
                List<Distance> distances,
        @Describes("How wires are laid, where nothing else is said of one.") @Default("{}")
                WiringEntry wiring,
        @Describes(
                        "Class of the parts of a kind that name none, by kind: {breaker: fast}; the"
                                + " kind's first if not written.")
                @Default("{}")
                Map<String, String> classes,
        @Describes("Everything that needs electricity.") Map<String, LoadEntry> loads,
        @Describes("What the engine needs, and what becomes of it without.") EngineEntry engine,
        @Describes("The flight, in order.") List<PhaseEntry> phases,
        @Describes("The phase in which failures happen.") String failuresIn,
        @Describes(
                        "The phase on the ground in which checks are made; the first without the"
                                + " starter if not written.")
                Optional<String> runUpIn,
        @Describes("How long the engine must run on for a failure not to count as ending it.")
                @OfDimension(value = Dimension.TIME, above = "0 s")
                Quantity timeToLand,
        @Describes("Time that a hand takes from one move to the next.")
                @Default("2 s (guess)")
                @OfDimension(value = Dimension.TIME, above = "0 s", most = "60 s")
                @MeasuredBy("sit in the seat and time your hand")
                Given aMoveTakes,
        @Describes(
                        "From when that time and the requirements count: from the first sign that"
                                + " the pilot can have, or from the failure.")
                @Default("first-sign")
                CountsFrom timeCountsFrom,
        @Describes("Hard requirements.") @Default("{}") RequirementsEntry requirements,
        @Describes(
                        "How much each criterion counts, against the others: the worth of going"
                                + " from what is acceptable to what is enough. Give 100 to the way that"
                                + " you would go first, and the others their share of that.")
                @Default("{}")
                @Bounds(least = 0, most = 1000)
                Map<String, Double> weights,
        @Describes(
                        "From where to where the values of each criterion run, whatever the"
                                + " candidates; usual ones where not written.")
                @Default("{}")
                CriteriaEntry criteria,
        @Describes(
                        "What is known for certain of the order of the weights: \"weight over"
                                + " cost\". Without weights the mean of all that agree is taken.")
                @Default("[]")
                List<String> importance,
        @Describes(
                        "What one of each count adds to complexity: {wire-ends: 0.5}; usual weights"
                                + " where not written.")
                @Default("{}")
                @Bounds(least = 0, most = 100)
                Map<String, Double> complexity,
        @Describes("The candidate that the others are departures from.") Optional<String> baseline,
        @Describes("What loads share beside their joints, in every candidate.") @Default("[]")
                List<SharedEntry> shares,
        @Describes("How often things fail, where the shipped table does not suit.") @Default("{}")
                ChancesEntry chances,
        @Describes("Failures to be told first, as one would say them: \"main bus short\".")
                @Default("[]")
                List<String> cases) {

    /** A place in the aircraft. */
    @Describes("A place in the aircraft.")
    public record ZoneEntry(
            @Describes("What a person calls it.") Optional<String> label,
            @Describes("Which side of the firewall.") @Default("cold") Zone.FirewallSide side,
            @Describes("What can happen there: heat, water, chafe, impact.") @Default("[]")
                    List<Zone.Hazard> hazards,
            @Describes("Usual length of a wire that stays inside the zone.")
                    @Default("0.5 m")
                    @OfDimension(value = Dimension.LENGTH, above = "0 m")
                    @MeasuredBy("a string or tape along the way of its wires")
                    Given across,
            @Describes("Temperature there, of the air and of what does not warm itself.")
                    @Default("25 °C")
                    @OfDimension(value = Dimension.TEMPERATURE, above = "-60 °C", most = "200 °C")
                    @MeasuredBy("a thermometer left there in flight on a hot and on a cold day")
                    Given temperature,
            @Describes("Distance of its middle behind the datum; no moment without.")
                    @OfDimension(Dimension.LENGTH)
                    @MeasuredBy("a tape from the datum")
                    Optional<Given> arm,
            @Describes(
                            "From where the pilot can move what sits there: seat (strapped in, in"
                                    + " flight), ground (before the flight only), none.")
                    Optional<Reach> reach) {}

    /** How wires are laid. */
    @Describes("How wires are laid, where nothing else is said of one.")
    public record WiringEntry(
            @Describes("Highest altitude flown: thin air cools less.")
                    @Default("3000 m")
                    @OfDimension(value = Dimension.LENGTH, least = "0 m", most = "18288 m")
                    @MeasuredBy("decide how high you will fly")
                    Given altitude,
            @Describes("Temperature that the insulation withstands continuously.")
                    @Default("150 °C")
                    @OfDimension(value = Dimension.TEMPERATURE, least = "60 °C", most = "260 °C")
                    @MeasuredBy("the marking on the wire and its maker's sheet")
                    Given insulation,
            @Describes("Wires in a bundle; AWG 8 and thicker lie alone.")
                    @Default("8")
                    @Bounds(least = 1, most = 60)
                    int bundle,
            @Describes("Share of the bundle's capacity that is used.")
                    @Default("60 %")
                    @OfDimension(value = Dimension.RATIO, above = "0 %", most = "100 %")
                    @MeasuredBy("a clamp meter on the wires of the bundle in cruise")
                    Given loaded) {}

    /** Length of wire between two zones. */
    @Describes("Length of wire between two zones.")
    public record Distance(
            @Describes("One zone.") String from,
            @Describes("The other zone.") String to,
            @Describes("Length of wire.")
                    @OfDimension(value = Dimension.LENGTH, above = "0 m")
                    @MeasuredBy("a string or tape along the way of the wires")
                    Given length) {}

    /** A phase of the flight. */
    @Describes("A phase of the flight.")
    public record PhaseEntry(
            @Describes("Name of the phase.") String name,
            @Describes("How long it lasts.") @OfDimension(value = Dimension.TIME, above = "0 s")
                    Quantity lasts,
            @Describes("Speed of the alternator while the engine runs.")
                    @OfDimension(value = Dimension.ROTATION, least = "0 rpm")
                    Given alternator,
            @Describes("Whether the engine is off on purpose, as in a glider that soars.")
                    @Default("no")
                    boolean engineOff) {}

    /** What the engine needs. */
    @Describes("What the engine needs, and what becomes of it without.")
    public record EngineEntry(
            @Describes(
                            "Loads that it needs: \"(computer-a or computer-b) and pump and 2 of"
                                    + " (x, y, z)\".")
                    NeedsText needs,
            @Describes("How long it runs on with its needs unmet.")
                    @OfDimension(value = Dimension.TIME, least = "0 s")
                    @MeasuredBy(
                            "on the ground, tied down: take its supply away for longer and longer")
                    Given tolerates,
            @Describes("Time from needs met again to running, while something turns it.")
                    @OfDimension(value = Dimension.TIME, least = "0 s")
                    @MeasuredBy("on the ground, tied down: give its supply back and time it")
                    Given restartsIn,
            @Describes("Whether airspeed turns the stopped engine.") boolean windmills,
            @Describes("Alternator speed while airspeed turns it.")
                    @Default("0 rpm")
                    @OfDimension(value = Dimension.ROTATION, least = "0 rpm")
                    @MeasuredBy("the engine maker's figure for a stopped engine in the glide")
                    Given windmilling,
            @Describes(
                            "The load that cranks it; it runs in the phase in which the engine is"
                                    + " started.")
                    Optional<String> starter,
            @Describes(
                            "Time after which the pilot presses the starter by habit once the"
                                    + " engine has stopped in flight; never if not written.")
                    @OfDimension(value = Dimension.TIME, least = "0 s")
                    @MeasuredBy("practise it on the ground and time it")
                    Optional<Given> pressesStarterAfter,
            @Describes("Share of their charge that tired batteries bring to a hard start.")
                    @Default("50 % (guess)")
                    @OfDimension(value = Dimension.RATIO, above = "0 %", most = "100 %")
                    @MeasuredBy("the voltage of the battery at rest after a week without charge")
                    Given tiredBattery,
            @Describes("Temperature of a cold start.")
                    @Default("-10 °C (guess)")
                    @OfDimension(value = Dimension.TEMPERATURE, above = "-60 °C", most = "60 °C")
                    @MeasuredBy("decide down to which temperature you will fly")
                    Given coldStart) {}

    /** Hard requirements; what is not written is not required. */
    @Describes("Hard requirements; what is not written is not required.")
    public record RequirementsEntry(
            @Describes("No single failure ends the engine.") @Default("no")
                    boolean noSingleFailureStopsEngine,
            @Describes("The engine stays running with the master off.") @Default("no")
                    boolean runsWithMasterOff,
            @Describes("Least time that the engine runs on after charging is lost.")
                    @OfDimension(value = Dimension.TIME, above = "0 s")
                    Optional<Quantity> enduranceWithoutCharging,
            @Describes("Every interruption of the engine's supply is shorter than this.")
                    @OfDimension(value = Dimension.TIME, above = "0 s")
                    Optional<Quantity> interruptionBelow,
            @Describes(
                            "A stopped engine can be started again in flight after any single"
                                    + " failure, the batteries at their stated charge and cold.")
                    @Default("no")
                    boolean restartsInFlight,
            @Describes("The engine starts in the cold with tired batteries.") @Default("no")
                    boolean startsCold,
            @Describes("Heaviest allowed electrical system.")
                    @OfDimension(value = Dimension.MASS, above = "0 kg")
                    Optional<Quantity> weightAtMost,
            @Describes("Highest allowed price of it, in the study's currency.")
                    @Bounds(least = 0, most = 10_000_000)
                    Optional<Double> costAtMost,
            @Describes("Loads that no single failure of what supplies them may darken.")
                    @Default("[]")
                    List<String> neverDark,
            @Describes("Most acts that one procedure may ask of the pilot.")
                    @Bounds(least = 0, most = 100)
                    Optional<Integer> actsAtMost,
            @Describes("Most parts, wires and loads apart, that may be other than in the baseline.")
                    @Bounds(least = 0, most = 10_000)
                    Optional<Integer> departuresAtMost,
            @Describes(
                            "Every wire, protector, contact and source is within the limits of its"
                                    + " size.")
                    @Default("no")
                    boolean noSizeLimitBroken,
            @Describes("Where the centre of gravity of the electrical parts may lie.")
                    Optional<ArmEntry> arm,
            @Describes(
                            "No failure that stays unseen ends the engine with one more: unseen"
                                    + " in-flight, whatever a run-up shows, or in-flight-and-run-up."
                                    + " Takes a minute or more for each candidate.")
                    Optional<Requirement.NoLatentPair.Unseen> noLatentPair) {}

    /** A range of arms. */
    @Describes("A range of distances behind the datum.")
    public record ArmEntry(
            @Describes("The foremost place.") @OfDimension(Dimension.LENGTH) Quantity least,
            @Describes("The rearmost place.") @OfDimension(Dimension.LENGTH) Quantity most) {}

    /** The criterion of a key in {@code weights}, if there is one. */
    public static Optional<CriterionName> criterion(String key) {
        return Arrays.stream(CriterionName.values()).filter(c -> key(c).equals(key)).findFirst();
    }

    /** The count of a key in {@code complexity}, if there is one. */
    public static Optional<ComplexityCount> count(String key) {
        return Arrays.stream(ComplexityCount.values()).filter(c -> key(c).equals(key)).findFirst();
    }

    /** The key of a count in {@code complexity}. */
    public static String key(ComplexityCount count) {
        return Fields.hyphenated(count.name());
    }

    /** The key of a criterion in {@code weights}. */
    public static String key(CriterionName name) {
        return name.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
