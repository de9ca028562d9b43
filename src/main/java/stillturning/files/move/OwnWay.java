package stillturning.files.move;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import stillturning.files.edit.CandidateOutline.OutlineRun;
import stillturning.files.edit.WrittenKeys;
import stillturning.yaml.DocumentPlaces;

/** Leads one of those that go through a hole, a bundle or a connector another way. */
final class OwnWay implements Finder {

    private static final List<String> PLACES = List.of("hole", "bundle");

    @Override
    public Stream<Move> in(Drawn drawn) {
        List<WrittenKeys> shares = drawn.outline().all().under("shares").items();
        Stream<Move> places =
                IntStream.range(0, shares.size())
                        .boxed()
                        .flatMap(i -> share(drawn, shares.get(i), i));
        return Stream.concat(
                places, drawn.outline().runs().stream().flatMap(run -> plug(drawn, run)));
    }

    private static Stream<Move> share(Drawn drawn, WrittenKeys share, int index) {
        Optional<String> kind =
                PLACES.stream().filter(place -> share.text(place).isPresent()).findFirst();
        if (kind.isEmpty()) {
            return Stream.empty();
        }
        String place = kind.get() + " " + share.text(kind.get()).orElse("");
        List<String> parts = share.under("parts").itemTexts();
        return IntStream.range(0, parts.size())
                .mapToObj(
                        i ->
                                new Move(
                                        MoveKind.SEPARATED,
                                        "Lead " + parts.get(i) + " another way than the " + place,
                                        touched(drawn, parts.get(i)),
                                        pen -> {
                                            String path = DocumentPlaces.item("shares", index);
                                            if (parts.size() > 2) {
                                                pen.removeItem(
                                                        DocumentPlaces.under(path, "parts"), i);
                                            } else {
                                                pen.remove(path);
                                            }
                                        }));
    }

    private static List<String> touched(Drawn drawn, String name) {
        List<String> touched = new ArrayList<>(List.of(name));
        drawn.outline().runs().stream()
                .filter(run -> run.key().equals(name))
                .forEach(run -> touched.addAll(run.makes()));
        return touched;
    }

    private static Stream<Move> plug(Drawn drawn, OutlineRun run) {
        return Runs.through(run).stream()
                .filter(part -> drawn.isKind(part, "connector"))
                .map(
                        plug ->
                                new Move(
                                        MoveKind.SEPARATED,
                                        "Lead "
                                                + run.key()
                                                + " past the connector "
                                                + drawn.called(plug),
                                        List.of(plug, run.key()),
                                        pen ->
                                                pen.run(
                                                        run.path(),
                                                        run.line().without(plug::equals).text())));
    }
}
