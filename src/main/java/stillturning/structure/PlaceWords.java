package stillturning.structure;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import stillturning.structure.SharedPlaces.CommonPlace;
import stillturning.structure.SharedPlaces.PlaceStrand;
import stillturning.structure.SharedPlaces.SharedPlace;

/** Shared places in plain words. */
final class PlaceWords {

    private static final String PRACTICE =
            "wiring is kept away from the side of exhaust and turbocharger where it can be"
                    + " (common practice, no published source)";

    private PlaceWords() {}

    /**
     * Two strands that share a place.
     *
     * @param inputs how many inputs the load of the first has
     */
    static String meeting(SharedPlace found, int inputs) {
        Set<String> parts = new LinkedHashSet<>(found.one().parts());
        parts.addAll(found.other().parts());
        CommonPlace place = found.place();
        String words =
                who(found.one(), found.other(), inputs)
                        + " "
                        + doing(place)
                        + aside(place)
                        + ": "
                        + FindingTexts.list(List.copyOf(parts));
        return words
                + (found.neitherElsewhere() ? "; neither has another way" : "")
                + (found.necessary() ? "; both have an end there" : "")
                + (place.hotSide() ? "; " + PRACTICE : "");
    }

    /** One feed on the hot side. */
    static String onHotSide(
            CommonPlace place, String source, PlaceStrand strand, boolean endsThere) {
        return "the feed of input "
                + strand.terminal()
                + " of "
                + strand.load()
                + " from "
                + source
                + (endsThere ? " ends in " : " crosses ")
                + place.name()
                + aside(place)
                + (endsThere ? ": " : " although neither of its ends is there: ")
                + FindingTexts.list(strand.parts())
                + "; "
                + PRACTICE;
    }

    private static String who(PlaceStrand one, PlaceStrand other, int inputs) {
        boolean returns = one.terminal().equals(FeedPaths.RETURN);
        if (returns) {
            return "the returns of " + one.load() + " and " + other.load();
        }
        if (!one.load().equals(other.load())) {
            return "the feeds of "
                    + one.load()
                    + " at "
                    + one.terminal()
                    + " and of "
                    + other.load()
                    + " at "
                    + other.terminal();
        }
        return inputs == 2
                ? "both feeds of " + one.load()
                : "the feeds of "
                        + one.load()
                        + " at "
                        + one.terminal()
                        + " and at "
                        + other.terminal();
    }

    private static String doing(CommonPlace place) {
        return switch (place.kind()) {
            case ZONE -> "pass " + place.name();
            case CROSSING -> "cross from " + place.name();
            case HOLE -> "pass the hole " + place.name();
            case BUNDLE -> "lie in the bundle " + place.name();
            case MOUNT -> "hang on the mount " + place.name();
            case CONNECTOR -> "pass the connector " + place.name();
            case GROUND -> "pass the ground point " + place.name();
        };
    }

    /** What can happen there, in brackets. */
    private static String aside(CommonPlace place) {
        List<String> all = new ArrayList<>();
        if (place.hotSide()) {
            all.add("hot side");
        }
        if (!place.hazards().isEmpty()) {
            all.add(
                    place.hazards().stream()
                            .map(hazard -> hazard.name().toLowerCase(Locale.ROOT))
                            .collect(Collectors.joining(", ")));
        }
        return all.isEmpty() ? "" : " (" + String.join("; ", all) + ")";
    }
}
