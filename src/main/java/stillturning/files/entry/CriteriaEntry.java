package stillturning.files.entry;

import java.util.Optional;
import stillturning.model.goal.CriterionName;
import stillturning.quantity.Dimension;
import stillturning.quantity.Quantity;
import stillturning.quantity.field.Bounds;
import stillturning.quantity.field.Describes;
import stillturning.quantity.field.OfDimension;

/** From where to where the values of each criterion run. */
@Describes(
        "From where to where the values of each criterion run, whatever the candidates; usual ones"
                + " where not written.")
public record CriteriaEntry(
        @Describes("Single failures that stop the engine.") Optional<Count> engineStops,
        @Describes("Single failures that need the pilot.") Optional<Count> pilotNeeded,
        @Describes("Endurance without charging.") Optional<Time> endurance,
        @Describes("Weight of the electrical system.") Optional<Mass> weight,
        @Describes("Complexity, as decide counts it.") Optional<Count> complexity,
        @Describes("Cost, in the study's currency.") Optional<Count> cost) {

    private static final String SWING =
            "What it is worth to go all the way from acceptable to enough here, against the"
                    + " criterion where that is worth most, which has 100. Takes the place of weights.";

    /** What the entries of all criteria say, in the criterion's own unit inside. */
    public record ScaleEnds(
            double acceptable, Optional<Double> halfway, double enough, Optional<Double> swing) {}

    /** The scale of something counted. */
    @Describes("The scale of something counted, or of money.")
    public record Count(
            @Describes("As bad as you could accept: worth nothing.")
                    @Bounds(least = 0, most = 10_000_000)
                    double acceptable,
            @Describes("Worth half of the way from there to enough; in the middle if not written.")
                    @Bounds(least = 0, most = 10_000_000)
                    Optional<Double> halfway,
            @Describes("As good as you need: worth everything, and better is worth no more.")
                    @Bounds(least = 0, most = 10_000_000)
                    double enough,
            @Describes(SWING) @Bounds(least = 0, most = 100) Optional<Double> swing) {
        private ScaleEnds ends() {
            return new ScaleEnds(acceptable, halfway, enough, swing);
        }
    }

    /** The scale of a time. */
    @Describes("The scale of a time.")
    public record Time(
            @Describes("As bad as you could accept: worth nothing.")
                    @OfDimension(value = Dimension.TIME, least = "0 s")
                    Quantity acceptable,
            @Describes("Worth half of the way from there to enough; in the middle if not written.")
                    @OfDimension(value = Dimension.TIME, above = "0 s")
                    Optional<Quantity> halfway,
            @Describes("As good as you need: worth everything, and better is worth no more.")
                    @OfDimension(value = Dimension.TIME, above = "0 s")
                    Quantity enough,
            @Describes(SWING) @Bounds(least = 0, most = 100) Optional<Double> swing) {
        private ScaleEnds ends() {
            return new ScaleEnds(acceptable.si(), halfway.map(Quantity::si), enough.si(), swing);
        }
    }

    /** The scale of a mass. */
    @Describes("The scale of a mass.")
    public record Mass(
            @Describes("As bad as you could accept: worth nothing.")
                    @OfDimension(value = Dimension.MASS, above = "0 kg")
                    Quantity acceptable,
            @Describes("Worth half of the way from there to enough; in the middle if not written.")
                    @OfDimension(value = Dimension.MASS, above = "0 kg")
                    Optional<Quantity> halfway,
            @Describes("As good as you need: worth everything, and better is worth no more.")
                    @OfDimension(value = Dimension.MASS, least = "0 kg")
                    Quantity enough,
            @Describes(SWING) @Bounds(least = 0, most = 100) Optional<Double> swing) {
        private ScaleEnds ends() {
            return new ScaleEnds(acceptable.si(), halfway.map(Quantity::si), enough.si(), swing);
        }
    }

    /** What is written of a criterion. */
    public Optional<ScaleEnds> of(CriterionName criterion) {
        return switch (criterion) {
            case ENGINE_STOPS -> engineStops.map(Count::ends);
            case PILOT_NEEDED -> pilotNeeded.map(Count::ends);
            case ENDURANCE -> endurance.map(Time::ends);
            case WEIGHT -> weight.map(Mass::ends);
            case COMPLEXITY -> complexity.map(Count::ends);
            case COST -> cost.map(Count::ends);
        };
    }
}
