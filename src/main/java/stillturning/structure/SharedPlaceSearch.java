package stillturning.structure;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import stillturning.model.Candidate;
import stillturning.model.Chances.Odds;
import stillturning.model.EngineLogic;
import stillturning.model.EngineLogic.AtLeast;
import stillturning.model.Study.Aircraft;
import stillturning.structure.FeedPaths.FromSource;
import stillturning.structure.FeedPaths.SupplySide;
import stillturning.structure.PartPlaces.Peopled;
import stillturning.structure.SharedPlaces.CommonPlaceKind;
import stillturning.structure.SharedPlaces.HotFeed;
import stillturning.structure.SharedPlaces.PlaceStrand;
import stillturning.structure.SharedPlaces.SharedPlace;

/** Looks for places that redundant feeds share, function by function. */
final class SharedPlaceSearch {

    private final Wiring wiring;
    private final EngineLogic logic;
    private final List<LoadEnds> loads;
    private final FeedPaths strands;
    private final PartPlaces places;
    private final List<SharedPlace> shared = new ArrayList<>();
    private final List<HotFeed> hot = new ArrayList<>();

    /** Two sides of which one can stand in for the other. */
    private record Pair(SupplySide one, SupplySide other) {}

    SharedPlaceSearch(Aircraft aircraft, Candidate candidate, Odds odds) {
        wiring = new Wiring(candidate, Set.of());
        logic = aircraft.engine().logic();
        loads =
                logic.loads().stream()
                        .map(load -> LoadEnds.of(load, wiring))
                        .flatMap(Optional::stream)
                        .filter(LoadEnds::isFed)
                        .toList();
        strands = new FeedPaths(wiring, loads);
        places = new PartPlaces(aircraft, wiring, odds);
    }

    SharedPlaces found() {
        for (EngineLogic function : logic.needed()) {
            List<Pair> pairs = pairs(function);
            for (Peopled place : places.all()) {
                pairs.forEach(pair -> meet(function.inWords(), place, pair));
            }
            function.loads().stream()
                    .flatMap(id -> ends(id).stream())
                    .flatMap(load -> strands.feeds(load).stream())
                    .forEach(feed -> findHot(function.inWords(), feed));
        }
        return new SharedPlaces(shared, hot);
    }

    private Optional<LoadEnds> ends(String id) {
        return loads.stream().filter(load -> load.id().equals(id)).findFirst();
    }

    private List<Pair> pairs(EngineLogic function) {
        List<Pair> pairs = new ArrayList<>();
        for (String id : function.loads()) {
            ends(id).ifPresent(load -> addPairs(strands.feeds(load), pairs));
        }
        for (List<String> two : alternatives(function)) {
            Optional<LoadEnds> one = ends(two.get(0));
            Optional<LoadEnds> other = ends(two.get(1));
            if (one.isPresent() && other.isPresent()) {
                List<SupplySide> theirs = strands.feeds(other.get());
                strands.feeds(one.get())
                        .forEach(feed -> theirs.forEach(t -> pairs.add(new Pair(feed, t))));
                pairs.add(new Pair(strands.back(one.get()), strands.back(other.get())));
            }
        }
        return pairs;
    }

    private static void addPairs(List<SupplySide> feeds, List<Pair> pairs) {
        for (int i = 0; i < feeds.size(); i++) {
            for (int j = i + 1; j < feeds.size(); j++) {
                pairs.add(new Pair(feeds.get(i), feeds.get(j)));
            }
        }
    }

    /** Loads of different terms of which not all are needed, two by two. */
    private static Set<List<String>> alternatives(EngineLogic logic) {
        Set<List<String>> found = new LinkedHashSet<>();
        if (logic instanceof AtLeast some) {
            for (int i = 0; i < some.of().size(); i++) {
                for (int j = i + 1; j < some.of().size() && some.least() < some.of().size(); j++) {
                    for (String one : some.of().get(i).loads()) {
                        some.of().get(j).loads().stream()
                                .filter(other -> !other.equals(one))
                                .forEach(other -> found.add(List.of(one, other)));
                    }
                }
                found.addAll(alternatives(some.of().get(i)));
            }
        }
        return found;
    }

    private void meet(String function, Peopled place, Pair pair) {
        List<Integer> one = pair.one.in(place.parts());
        List<Integer> other = pair.other.in(place.parts());
        if (one.isEmpty() || other.isEmpty()) {
            return;
        }
        boolean neither =
                !strands.hasWayWithout(pair.one, place.parts())
                        && !strands.hasWayWithout(pair.other, place.parts());
        boolean necessary =
                place.zone()
                        .filter(zone -> endsIn(pair.one, zone) && endsIn(pair.other, zone))
                        .isPresent();
        SharedPlace found =
                new SharedPlace(
                        function,
                        place.place(),
                        strand(pair.one, one),
                        strand(pair.other, other),
                        neither,
                        necessary,
                        "");
        int inputs = pair.one.load().inputs().size();
        shared.add(found.saying(PlaceWords.meeting(found, inputs)));
    }

    private PlaceStrand strand(SupplySide side, List<Integer> parts) {
        return new PlaceStrand(side.load().id(), side.terminal(), strands.ids(parts));
    }

    /** Whether its load, or every source that feeds it, is in a zone. */
    private boolean endsIn(SupplySide side, String zone) {
        return isIn(side.load().work().part(), zone)
                || (!side.isReturn()
                        && side.ways().stream().allMatch(way -> isIn(way.source(), zone)));
    }

    private boolean isIn(int part, String zone) {
        return wiring.parts.get(part).tag().zone().equals(zone);
    }

    private void findHot(String function, SupplySide feed) {
        for (FromSource way : feed.ways()) {
            for (Peopled place : places.all()) {
                List<Integer> there = way.parts().stream().filter(place.parts()::get).toList();
                if (place.place().kind() == CommonPlaceKind.ZONE
                        && place.place().hotSide()
                        && !there.isEmpty()) {
                    String zone = place.zone().orElse("");
                    boolean ends =
                            isIn(way.source(), zone) || isIn(feed.load().work().part(), zone);
                    PlaceStrand strand = strand(feed, there);
                    String source = wiring.id(way.source());
                    hot.add(
                            new HotFeed(
                                    function,
                                    source,
                                    strand,
                                    place.place(),
                                    ends,
                                    PlaceWords.onHotSide(place.place(), source, strand, ends)));
                }
            }
        }
    }
}
