package stillturning.files.move;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import stillturning.files.edit.CandidateOutline;
import stillturning.files.edit.WrittenKeys;
import stillturning.yaml.YamlValue;
import stillturning.yaml.YamlValue.Field;

/**
 * Shows the pilot too little or too much voltage of a bus, an alternator that gives nothing, or
 * that one of several loads of the engine has stopped, of which he would notice nothing.
 */
final class AddedWarning implements Finder {

    /** Of the nominal voltage: 13 V of 14 V. Common practice, no published source. */
    private static final double LOW = 13.0 / 14;

    /** Of the nominal voltage: 15.5 V of 14 V. Common practice, no published source. */
    private static final double HIGH = 15.5 / 14;

    private static final String SEES = "sees";

    @Override
    public Stream<Move> in(Drawn drawn) {
        Stream<Move> buses =
                drawn.ofKind(Site.BUS).stream()
                        .flatMap(
                                bus ->
                                        Stream.of(
                                                        voltage(drawn, bus, "low", "below", LOW),
                                                        voltage(drawn, bus, "high", "above", HIGH))
                                                .flatMap(Optional::stream));
        Stream<Move> alternators =
                drawn.ofKind("alternator").stream()
                        .filter(a -> !isWatched(drawn, "alternator", "alternator", a))
                        .map(a -> light(drawn, a));
        Stream<Move> loads =
                drawn.engineLoads().stream()
                        .sorted()
                        .filter(load -> isOneOfSeveral(drawn, load))
                        .filter(load -> !isWatched(drawn, "load", "load", load))
                        .map(load -> stopped(drawn, load));
        return Stream.of(buses, alternators, loads).flatMap(moves -> moves);
    }

    private static boolean isOneOfSeveral(Drawn drawn, String load) {
        return drawn.study().aircraft().engine().logic().runsOn(l -> !l.equals(load));
    }

    private static Move stopped(Drawn drawn, String load) {
        return warning(
                "Put a light on the panel that shows when the " + drawn.called(load) + " stops",
                load,
                load + "-light",
                List.of(YamlValue.field("watches", "load"), YamlValue.field("load", load)));
    }

    private static boolean isWatched(Drawn drawn, String watches, String key, String what) {
        WrittenKeys sees = drawn.outline().all().under(SEES);
        return sees.fields().keySet().stream()
                .map(sees::under)
                .filter(cue -> cue.text("watches").equals(Optional.of(watches)))
                .flatMap(cue -> cue.text(key).stream())
                .anyMatch(said -> said.equals(what) || said.startsWith(what + "."));
    }

    private static Optional<Move> voltage(
            Drawn drawn, String bus, String side, String than, double share) {
        String watches = side + "-voltage";
        if (isWatched(drawn, watches, "at", bus)) {
            return Optional.empty();
        }
        double volts = share * drawn.study().aircraft().nominalVolts();
        return Optional.of(
                warning(
                        "Warn of " + side + " voltage at the " + drawn.called(bus),
                        bus,
                        bus + "-" + side,
                        List.of(
                                YamlValue.field("watches", watches),
                                YamlValue.field("at", bus + ".bar"),
                                YamlValue.field(
                                        than, String.format(Locale.ROOT, "%.1f V (guess)", volts)),
                                YamlValue.field("for", "3 s (guess)"))));
    }

    private static Move light(Drawn drawn, String alternator) {
        return warning(
                "Put a light on the panel that shows when the "
                        + drawn.called(alternator)
                        + " gives nothing",
                alternator,
                alternator + "-light",
                List.of(
                        YamlValue.field("watches", "alternator"),
                        YamlValue.field("alternator", alternator)));
    }

    private static Move warning(String words, String touches, String name, List<Field> says) {
        return new Move(
                MoveKind.WARNING_ADDED,
                words,
                List.of(touches),
                pen -> {
                    String free =
                            CandidateOutline.free(
                                    name, pen.written().under(SEES).fields().keySet());
                    pen.put(SEES, free, YamlValue.fields(says.toArray(Field[]::new)));
                });
    }
}
