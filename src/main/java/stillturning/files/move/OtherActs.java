package stillturning.files.move;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import stillturning.files.edit.Naming;
import stillturning.files.edit.WrittenKeys;
import stillturning.model.LoadNeed;
import stillturning.yaml.DocumentPlaces;
import stillturning.yaml.YamlValue;

/** Changes what the pilot does: an act more, an act less, two acts the other way round. */
final class OtherActs implements Finder {

    private static final String PROCEDURES = "procedures";

    @Override
    public Stream<Move> in(Drawn drawn) {
        WrittenKeys procedures = drawn.outline().all().under(PROCEDURES);
        Stream<Move> inProcedures =
                procedures.fields().keySet().stream()
                        .filter(name -> procedures.under(name).text("by").isEmpty())
                        .flatMap(name -> procedure(drawn, name, procedures.under(name)));
        return Stream.concat(Stream.concat(flight(drawn), drill(drawn)), inProcedures);
    }

    /** Where the levers stand in flight, without the key, which nobody turns then. */
    private static Map<String, String> flightPositions(Drawn drawn) {
        Map<String, String> positions =
                new LinkedHashMap<>(
                        drawn.outline().all().under("positions").under("flight").texts());
        positions.keySet().removeIf(drawn::isKey);
        return positions;
    }

    private static boolean isOnOrOff(String position) {
        return position.equals("on") || position.equals("off");
    }

    private static String other(String position) {
        return position.equals("on") ? "off" : "on";
    }

    private static Stream<Move> flight(Drawn drawn) {
        return flightPositions(drawn).entrySet().stream()
                .filter(e -> isOnOrOff(e.getValue()))
                .map(
                        e ->
                                new Move(
                                        MoveKind.ACT_CHANGED,
                                        "Fly with the "
                                                + called(drawn, e.getKey())
                                                + " "
                                                + other(e.getValue()),
                                        List.of(Naming.part(e.getKey())),
                                        pen -> pen.flight(e.getKey(), other(e.getValue()))));
    }

    private static String called(Drawn drawn, String lever) {
        return lever.contains(".") ? lever : drawn.called(lever);
    }

    private static Stream<Move> drill(Drawn drawn) {
        WrittenKeys drill = drawn.outline().all().under("positions").under("master-off");
        return drill.fields().isEmpty()
                ? Stream.empty()
                : moves(drawn, "positions", "master-off", drill.texts(), "with the master off");
    }

    private static Stream<Move> procedure(Drawn drawn, String name, WrittenKeys written) {
        String path = DocumentPlaces.under(PROCEDURES, name);
        String said = "in \"" + name.replace('-', ' ') + "\"";
        return Stream.concat(
                moves(drawn, path, "moves", written.under("moves").texts(), said),
                sheds(drawn, path, written.under("sheds").itemTexts(), said));
    }

    private static Stream<Move> moves(
            Drawn drawn, String path, String key, Map<String, String> now, String said) {
        String mapping = DocumentPlaces.under(path, key);
        List<Move> moves = new ArrayList<>();
        flightPositions(drawn)
                .forEach(
                        (lever, position) -> {
                            if (!now.containsKey(lever) && isOnOrOff(position)) {
                                moves.add(
                                        act(
                                                "Put the "
                                                        + called(drawn, lever)
                                                        + " "
                                                        + other(position)
                                                        + " "
                                                        + said,
                                                lever,
                                                pen -> pen.put(mapping, lever, other(position))));
                            }
                        });
        now.keySet()
                .forEach(
                        lever ->
                                moves.add(
                                        act(
                                                "Leave the "
                                                        + called(drawn, lever)
                                                        + " alone "
                                                        + said,
                                                lever,
                                                pen ->
                                                        pen.remove(
                                                                DocumentPlaces.under(
                                                                        mapping, lever)))));
        List<String> levers = List.copyOf(now.keySet());
        for (int i = 1; i < levers.size(); i++) {
            List<String> order = new ArrayList<>(levers);
            Collections.swap(order, i - 1, i);
            moves.add(
                    act(
                            "Move the "
                                    + called(drawn, order.get(i - 1))
                                    + " before the "
                                    + called(drawn, order.get(i))
                                    + " "
                                    + said,
                            order.get(i - 1),
                            pen -> pen.put(path, key, inOrder(order, now))));
        }
        return moves.stream();
    }

    private static YamlValue inOrder(List<String> order, Map<String, String> positions) {
        return YamlValue.fields(
                order.stream()
                        .map(l -> YamlValue.field(l, positions.getOrDefault(l, "")))
                        .toArray(YamlValue.Field[]::new));
    }

    private static Move act(String words, String lever, Move.Redrawing drawing) {
        return new Move(MoveKind.ACT_CHANGED, words, List.of(Naming.part(lever)), drawing);
    }

    private static Stream<Move> sheds(Drawn drawn, String path, List<String> now, String said) {
        String list = DocumentPlaces.under(path, "sheds");
        List<Move> moves = new ArrayList<>();
        if (!now.isEmpty()) {
            drawn.study().aircraft().loads().stream()
                    .filter(load -> load.shedOrder().isPresent())
                    .map(LoadNeed::id)
                    .filter(load -> !now.contains(load))
                    .filter(load -> !drawn.outline().leavesOut().contains(load))
                    .forEach(
                            load ->
                                    moves.add(
                                            act(
                                                    "Switch " + drawn.called(load) + " off " + said,
                                                    load,
                                                    pen -> pen.addItem(list, load))));
        }
        for (int i = 0; i < now.size() && now.size() > 1; i++) {
            int index = i;
            moves.add(
                    act(
                            "Leave " + drawn.called(now.get(i)) + " on " + said,
                            now.get(i),
                            pen -> pen.removeItem(list, index)));
        }
        return moves.stream();
    }
}
