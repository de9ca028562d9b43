package stillturning.reliability.likelihood;

import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import stillturning.model.Chances;
import stillturning.reliability.chance.Exposure;
import stillturning.reliability.chance.Occurrence;
import stillturning.reliability.runup.Card;
import stillturning.reliability.runup.Latent;

/**
 * How often to look for what no check reveals, so that it and one more failure add no more than a
 * yardstick to the mean chance per flight hour: rate of the one times rate of the others times half
 * the interval, in the mean of what the rates may be.
 *
 * @see "form of AC 25.1309 and ARP4761 (from memory, unverified)"
 */
final class Inspecting {

    private static final double HOUR_SECONDS = 3600;

    /**
     * A tenth of 1e-6 per flight hour (1/s), the figure that AC 23.1309-1E has for catastrophic
     * failures of its class I (from memory, unverified); the tenth is a guess.
     */
    private static final double YARDSTICK = 1e-7 / HOUR_SECONDS;

    private final Exposure exposure;
    private final double usualSeconds;

    Inspecting(Exposure checked, Chances.ExposureTimes flown) {
        exposure = checked;
        usualSeconds = flown.inspectionSeconds();
    }

    /** For every latent failure that matters and that no check reveals, in the card's order. */
    List<Inspection> of(Card card) {
        List<Integer> unrevealed =
                Stream.concat(card.hidden().stream(), card.unconfirmed().stream()).toList();
        return card.thatMatter().stream()
                .filter(latent -> unrevealed.contains(latent.event()))
                .map(this::of)
                .toList();
    }

    private Inspection of(Latent latent) {
        double others =
                latent.with().stream()
                        .mapToDouble(
                                other -> afterIt(other) * exposure.together(latent.event(), other))
                        .sum();
        double interval = 2 * YARDSTICK / (perSecond(latent.event()) * others);
        return Double.isInfinite(interval)
                ? new Inspection(
                        latent.event(),
                        OptionalDouble.empty(),
                        "nothing to compute with: by their rates it or its partners never fail")
                : new Inspection(
                        latent.event(),
                        OptionalDouble.of(Math.min(interval, usualSeconds)),
                        words(interval));
    }

    /** A partner that goes unnoticed as well may also come first: that makes it two chances. */
    private double afterIt(int partner) {
        boolean stays = exposure.occurrences().get(partner) instanceof Occurrence.LatentOccurrence;
        return perSecond(partner) * (stays ? 2 : 1);
    }

    /** Mean rate (1/s). */
    private double perSecond(int event) {
        return exposure.occurrences().get(event).perSecond(exposure.flightSeconds());
    }

    private String words(double interval) {
        if (interval >= usualSeconds) {
            return "the usual inspection every " + hours(usualSeconds) + " is often enough";
        }
        return interval < exposure.flightSeconds()
                ? "before every flight, and even then it is likelier than it should be"
                : "at least every " + hours(interval) + " flown";
    }

    /** Rounded down, or more would be allowed than was computed; but not below what it just is. */
    static String hours(double seconds) {
        double hours = seconds / HOUR_SECONDS * (1 + 1e-9);
        return hours >= 10
                ? String.format(Locale.ROOT, "%.0f h", Math.floor(hours))
                : String.format(Locale.ROOT, "%.1f h", Math.floor(hours * 10) / 10);
    }
}
