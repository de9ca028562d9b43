package stillturning.report.joint;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import stillturning.structure.SharedPlaces.CommonPlace;
import stillturning.structure.SharedPlaces.CommonPlaceKind;
import stillturning.structure.SharedPlaces.HotFeed;
import stillturning.structure.SharedPlaces.PlaceStrand;
import stillturning.structure.SharedPlaces.SharedPlace;

/** Places that feeds share, each place once however many feeds meet there. */
final class PlaceGroups {

    private PlaceGroups() {}

    /** A sentence a place; where feeds cannot but meet is left out. */
    static List<String> shared(List<SharedPlace> all) {
        Map<CommonPlace, List<SharedPlace>> places =
                all.stream()
                        .filter(meeting -> !meeting.necessary())
                        .collect(
                                Collectors.groupingBy(
                                        SharedPlace::place,
                                        LinkedHashMap::new,
                                        Collectors.toList()));
        List<String> sentences = new ArrayList<>();
        places.forEach((place, met) -> sentences.add(shared(place, met)));
        return List.copyOf(sentences);
    }

    private static String shared(CommonPlace place, List<SharedPlace> met) {
        List<PlaceStrand> strands =
                met.stream().flatMap(one -> Stream.of(one.one(), one.other())).toList();
        long nowhereElse = met.stream().filter(SharedPlace::neitherElsewhere).count();
        return called(place)
                + ": "
                + (met.size() == 1 ? "one pair" : met.size() + " pairs")
                + ", of "
                + loads(strands)
                + ", through "
                + parts(strands)
                + (nowhereElse == 0
                        ? "; one of each pair has another way"
                        : nowhereElse == met.size()
                                ? "; without it no pair has a way left"
                                : "; without it " + nowhereElse + " of them have no way left");
    }

    /** A sentence a place. */
    static List<String> hotSide(List<HotFeed> all) {
        Map<CommonPlace, List<HotFeed>> places =
                all.stream()
                        .collect(
                                Collectors.groupingBy(
                                        HotFeed::place, LinkedHashMap::new, Collectors.toList()));
        List<String> sentences = new ArrayList<>();
        places.forEach((place, feeds) -> sentences.add(hotSide(place, feeds)));
        return List.copyOf(sentences);
    }

    private static String hotSide(CommonPlace place, List<HotFeed> feeds) {
        List<PlaceStrand> strands = feeds.stream().map(HotFeed::strand).toList();
        long crossing = feeds.stream().filter(feed -> !feed.endsThere()).count();
        return called(place)
                + ": feeds of "
                + loads(strands)
                + ", through "
                + parts(strands)
                + (crossing == 0
                        ? "; each has its source or its load there"
                        : "; " + crossing + " of " + feeds.size() + " only pass");
    }

    private static String called(CommonPlace place) {
        String hazards =
                place.hazards().stream()
                        .map(hazard -> hazard.name().toLowerCase(Locale.ROOT))
                        .collect(Collectors.joining(", "));
        String kind =
                place.kind() == CommonPlaceKind.ZONE
                        ? ""
                        : place.kind().name().toLowerCase(Locale.ROOT) + " ";
        return kind + place.name() + (hazards.isEmpty() ? "" : " (" + hazards + ")");
    }

    private static String loads(List<PlaceStrand> strands) {
        return strands.stream().map(PlaceStrand::load).distinct().collect(Collectors.joining(", "));
    }

    private static String parts(List<PlaceStrand> strands) {
        Set<String> parts = new LinkedHashSet<>();
        strands.forEach(strand -> parts.addAll(strand.parts()));
        return RunPartNames.listed(parts);
    }
}
