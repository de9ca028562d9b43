package stillturning.files.entry;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import stillturning.model.CriterionName;
import stillturning.model.Zone;
import stillturning.quantity.Dimension;
import stillturning.quantity.Quantity;
import stillturning.yaml.Bounds;
import stillturning.yaml.Default;
import stillturning.yaml.Given;
import stillturning.yaml.Unit;
import stillturning.yaml.Words;

/** A study's file as written: what all candidates share. */
@Words("One aircraft: its loads, engine logic, flight phases, zones and requirements.")
public record StudyEntry(
        @Words("Title of the study.") String study,
        @Words("What it is about.") Optional<String> about,
        @Words("What the builder says about the choice, paragraph by paragraph.") @Default("[]")
                List<String> rationale,
        @Words("Whether its data are made up.") @Default("no") boolean invented,
        @Words("Three-letter code of the money that prices are in.") @Default("EUR")
                String currency,
        @Words("Voltage at which loads are stated.") @Unit(value = Dimension.VOLTAGE, above = "0 V")
                Quantity nominal,
        @Words("Places where parts sit.") Map<String, ZoneEntry> zones,
        @Words("Length of wire between zones that are next to each other.") @Default("[]")
                List<Distance> distances,
        @Words("How wires are laid, where nothing else is said of one.") @Default("{}")
                WiringEntry wiring,
        @Words("Everything that needs electricity.") Map<String, LoadEntry> loads,
        @Words("What the engine needs, and what becomes of it without.") EngineEntry engine,
        @Words("The flight, in order.") List<PhaseEntry> phases,
        @Words("The phase in which failures happen.") String failuresIn,
        @Words(
                        "The phase on the ground in which checks are made; the first without the starter if not written.")
                Optional<String> runUpIn,
        @Words("How long the engine must run on for a failure not to count as ending it.")
                @Unit(value = Dimension.TIME, above = "0 s")
                Quantity timeToLand,
        @Words("Hard requirements.") @Default("{}") RequirementsEntry requirements,
        @Words("How much each criterion counts, against the others.")
                @Default("{}")
                @Bounds(least = 0, most = 1000)
                Map<String, Double> weights,
        @Words("The candidate that the others are departures from.") Optional<String> baseline,
        @Words("What loads share beside their joints, in every candidate.") @Default("[]")
                List<SharedEntry> shares,
        @Words("How often things fail, where the shipped table does not suit.") @Default("{}")
                ChancesEntry chances,
        @Words("Failures to be told first, as one would say them: \"main bus short\".")
                @Default("[]")
                List<String> cases) {

    /** A place in the aircraft. */
    @Words("A place in the aircraft.")
    public record ZoneEntry(
            @Words("What a person calls it.") Optional<String> label,
            @Words("Which side of the firewall.") @Default("cold") Zone.Side side,
            @Words("What can happen there: heat, water, chafe, impact.") @Default("[]")
                    List<Zone.Hazard> hazards,
            @Words("Usual length of a wire that stays inside the zone.")
                    @Default("0.5 m")
                    @Unit(value = Dimension.LENGTH, above = "0 m")
                    Given across,
            @Words("Temperature there, of the air and of what does not warm itself.")
                    @Default("25 °C")
                    @Unit(value = Dimension.TEMPERATURE, above = "-60 °C", most = "200 °C")
                    Given temperature,
            @Words("Distance of its middle behind the datum; no moment without.")
                    @Unit(Dimension.LENGTH)
                    Optional<Given> arm) {}

    /** How wires are laid. */
    @Words("How wires are laid, where nothing else is said of one.")
    public record WiringEntry(
            @Words("Highest altitude flown: thin air cools less.")
                    @Default("3000 m")
                    @Unit(value = Dimension.LENGTH, least = "0 m", most = "18288 m")
                    Given altitude,
            @Words("Temperature that the insulation stands for ever.")
                    @Default("150 °C")
                    @Unit(value = Dimension.TEMPERATURE, least = "60 °C", most = "260 °C")
                    Given insulation,
            @Words("Wires in a bundle; AWG 8 and thicker lie alone.")
                    @Default("8")
                    @Bounds(least = 1, most = 60)
                    int bundle,
            @Words("Share of the bundle's capacity that is used.")
                    @Default("60 %")
                    @Unit(value = Dimension.RATIO, above = "0 %", most = "100 %")
                    Given loaded) {}

    /** Length of wire between two zones. */
    @Words("Length of wire between two zones.")
    public record Distance(
            @Words("One zone.") String from,
            @Words("The other zone.") String to,
            @Words("Length of wire.") @Unit(value = Dimension.LENGTH, above = "0 m")
                    Given length) {}

    /** A phase of the flight. */
    @Words("A phase of the flight.")
    public record PhaseEntry(
            @Words("Name of the phase.") String name,
            @Words("How long it lasts.") @Unit(value = Dimension.TIME, above = "0 s")
                    Quantity lasts,
            @Words("Speed of the alternator while the engine runs.")
                    @Unit(value = Dimension.ROTATION, least = "0 rpm")
                    Given alternator) {}

    /** What the engine needs. */
    @Words("What the engine needs, and what becomes of it without.")
    public record EngineEntry(
            @Words(
                            "Loads that it needs: \"(computer-a or computer-b) and pump and 2 of (x, y, z)\".")
                    NeedsText needs,
            @Words("How long it runs on with its needs unmet.")
                    @Unit(value = Dimension.TIME, least = "0 s")
                    Given tolerates,
            @Words("Time from needs met again to running, while something turns it.")
                    @Unit(value = Dimension.TIME, least = "0 s")
                    Given restartsIn,
            @Words("Whether airspeed turns the stopped engine.") boolean windmills,
            @Words("Alternator speed while airspeed turns it.")
                    @Default("0 rpm")
                    @Unit(value = Dimension.ROTATION, least = "0 rpm")
                    Given windmilling,
            @Words("The load that cranks it; it runs in the phase in which the engine is started.")
                    Optional<String> starter,
            @Words("Share of their charge that tired batteries bring to a hard start.")
                    @Default("50 % (guess)")
                    @Unit(value = Dimension.RATIO, above = "0 %", most = "100 %")
                    Given tiredBattery,
            @Words("Temperature of a cold start.")
                    @Default("-10 °C (guess)")
                    @Unit(value = Dimension.TEMPERATURE, above = "-60 °C", most = "60 °C")
                    Given coldStart) {}

    /** Hard requirements; what is not written is not required. */
    @Words("Hard requirements; what is not written is not required.")
    public record RequirementsEntry(
            @Words("No single failure ends the engine.") @Default("no")
                    boolean noSingleFailureStopsEngine,
            @Words("The engine stays running with the master off.") @Default("no")
                    boolean runsWithMasterOff,
            @Words("Least time that the engine runs on after charging is lost.")
                    @Unit(value = Dimension.TIME, above = "0 s")
                    Optional<Quantity> enduranceWithoutCharging,
            @Words("Every interruption of the engine's supply is shorter than this.")
                    @Unit(value = Dimension.TIME, above = "0 s")
                    Optional<Quantity> interruptionBelow,
            @Words("Heaviest allowed electrical system.")
                    @Unit(value = Dimension.MASS, above = "0 kg")
                    Optional<Quantity> weightAtMost) {}

    /** The criterion of a key in {@code weights}, if there is one. */
    public static Optional<CriterionName> criterion(String key) {
        return Arrays.stream(CriterionName.values()).filter(c -> key(c).equals(key)).findFirst();
    }

    /** The key of a criterion in {@code weights}. */
    public static String key(CriterionName name) {
        return name.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
