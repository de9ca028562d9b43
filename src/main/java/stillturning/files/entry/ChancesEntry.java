package stillturning.files.entry;

import java.util.Map;
import java.util.Optional;
import stillturning.quantity.Dimension;
import stillturning.quantity.field.Default;
import stillturning.quantity.field.Describes;
import stillturning.quantity.field.OfDimension;
import stillturning.yaml.notation.Given;

/** How often things fail, as written in the study's file. */
@Describes("How often things fail, where the shipped table does not suit.")
public record ChancesEntry(
        @Describes("Length of a flight; all its phases if not written.")
                @OfDimension(value = Dimension.TIME, above = "0 s")
                Optional<Given> flight,
        @Describes(
                        "Time flown between two inspections that find everything; 50 h (a guess),"
                                + " or one flight, if not written.")
                @OfDimension(value = Dimension.TIME, above = "0 s")
                Optional<Given> inspectedEvery,
        @Describes("How often a zone suffers from its hazards, by hazard: \"heat: 1e-6 /h\".")
                @Default("{}")
                Map<String, RateText> events,
        @Describes("How often all goes together that shares a hole, a bundle or a mount, by these.")
                @Default("{}")
                Map<String, RateText> sharing,
        @Describes(
                        "Share of a unit's own failures that take along what runs the same program"
                                + " or is alike.")
                @Default("10 % (catalogue, generic average of NUREG/CR-4780, recalled, unverified)")
                @OfDimension(value = Dimension.RATIO, least = "0 %", most = "100 %")
                Given beta,
        @Describes("How often one switch is left in a wrong position before a flight.")
                @Default("1e-3 /flight within 10 (guess)")
                RateText leftSwitch,
        @Describes("How often a pilot who should act does not.")
                @Default("1e-2 /need within 10 (guess)")
                RateText idlePilot,
        @Describes("Rates by kind of part and failure mode: \"wire: {open: 3e-6 /h}\".")
                @Default("{}")
                Map<String, Map<String, RateText>> rates,
        @Describes("Rates by load and failure mode: \"pump: {stops-working: 2e-5 /h}\".")
                @Default("{}")
                Map<String, Map<String, RateText>> fails)
        implements NotInStories {}
