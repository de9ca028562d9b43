package stillturning.structure;

import java.util.List;
import stillturning.model.Candidate;
import stillturning.model.Chances.Odds;
import stillturning.model.Study.Aircraft;
import stillturning.model.Zone.Hazard;

/**
 * Where feeds that ought to be independent come together without being joined, and which feeds run
 * on the hot side of the firewall.
 *
 * <p>A feed is a shortest way from each source to an input of a load. That wiring is kept away from
 * the side of exhaust and turbocharger is common practice, with no published source.
 *
 * @param shared by function, place and pair of feeds
 * @param hotSide by function, load, input and source
 */
public record SharedPlaces(List<SharedPlace> shared, List<HotFeed> hotSide) {

    /** What sort of place. */
    public enum CommonPlaceKind {
        /** Anywhere in the same zone. */
        ZONE,
        /** The boundary of two zones, perhaps not at the same point. */
        CROSSING,
        HOLE,
        BUNDLE,
        MOUNT,
        CONNECTOR,
        GROUND
    }

    /**
     * A place.
     *
     * @param name its own, or the labels of its zones
     * @param hotSide whether it is on the hot side of the firewall, or on its boundary
     * @param hazards what can happen there: of every zone where something of it is
     */
    public record CommonPlace(
            CommonPlaceKind kind, String name, boolean hotSide, List<Hazard> hazards) {
        public CommonPlace {
            hazards = List.copyOf(hazards);
        }
    }

    /**
     * What runs through a place.
     *
     * @param terminal input that it feeds, or the return
     * @param parts its parts there, from the source on
     */
    public record PlaceStrand(String load, String terminal, List<String> parts) {
        public PlaceStrand {
            parts = List.copyOf(parts);
        }
    }

    /**
     * Two feeds of one load, or two feeds or returns of loads of which one can stand in for the
     * other, that share a place.
     *
     * @param function what they serve: {@code "pump-1 or pump-2"}
     * @param neitherElsewhere whether neither has a way left without what is in that place
     * @param necessary whether both have an end there, so that they cannot but meet
     * @param words the same in a sentence
     */
    public record SharedPlace(
            String function,
            CommonPlace place,
            PlaceStrand one,
            PlaceStrand other,
            boolean neitherElsewhere,
            boolean necessary,
            String words) {

        SharedPlace saying(String sentence) {
            return new SharedPlace(
                    function, place, one, other, neitherElsewhere, necessary, sentence);
        }
    }

    /**
     * A feed on the hot side.
     *
     * @param endsThere whether its source or its load is in that zone; it crosses the zone
     *     otherwise
     * @param words the same in a sentence
     */
    public record HotFeed(
            String function,
            String source,
            PlaceStrand strand,
            CommonPlace place,
            boolean endsThere,
            String words) {}

    public SharedPlaces {
        shared = List.copyOf(shared);
        hotSide = List.copyOf(hotSide);
    }

    /**
     * What the redundant feeds of a candidate share.
     *
     * @param odds what its parts share beside their joints, and the zones that its wires pass; a
     *     wire without a route is in its own zone only
     */
    public static SharedPlaces of(Aircraft aircraft, Candidate candidate, Odds odds) {
        return new SharedPlaceSearch(aircraft, candidate, odds).found();
    }
}
