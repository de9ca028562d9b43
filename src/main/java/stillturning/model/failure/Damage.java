package stillturning.model.failure;

import static java.util.Map.entry;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import stillturning.model.Candidate.Hit;
import stillturning.parts.Alternator;
import stillturning.parts.Battery;
import stillturning.parts.Breaker;
import stillturning.parts.Bus;
import stillturning.parts.Connector;
import stillturning.parts.Contactor;
import stillturning.parts.DcConverter;
import stillturning.parts.Diode;
import stillturning.parts.Fuse;
import stillturning.parts.GroundPoint;
import stillturning.parts.Load;
import stillturning.parts.OvervoltageGuard;
import stillturning.parts.Part;
import stillturning.parts.SolidStateController;
import stillturning.parts.Switch;
import stillturning.parts.Wire;

/**
 * What an event does to the parts that it reaches: which of a part's failure modes it causes.
 * Common practice, no published source.
 */
enum Damage {
    /** Broken off, crushed, torn: what conducts or gives, no longer does. */
    TORN,

    /**
     * Hotter than its insulation stands, not yet as hot as copper melts: plastic goes first. So
     * wires touch metal before they part, and a carrier lets its bar down onto the structure.
     */
    SCORCHED,

    /**
     * Wet with water that conducts a little: what has bare terminals near each other, or a board
     * inside, stops or creeps to ground; the middle of a wire and what is cast in resin does not
     * mind.
     */
    SOAKED,

    /** Wires rubbed until they part. */
    WORN_APART,

    /** Wires rubbed until their copper touches metal. */
    WORN_BARE,

    /** The program inside stops. */
    HUNG;

    /**
     * What becomes of one kind of part, as the end of its failure modes' names.
     *
     * @param torn when it is torn off
     * @param scorched when it gets too hot
     * @param soaked when it gets wet
     * @param hung when its program stops
     * @param rubs whether it lies along metal for a way
     */
    private record Row(String torn, String scorched, String soaked, String hung, boolean rubs) {

        static final String NOTHING = "";

        /** Of what runs no program and lies still. */
        Row(String torn, String scorched, String soaked) {
            this(torn, scorched, soaked, NOTHING, false);
        }
    }

    private static final Map<Class<? extends Part>, Row> ROWS =
            Map.ofEntries(
                    entry(Alternator.class, new Row("no output", "no output", "no output")),
                    // torn off its terminals; between them water passes too little to matter
                    entry(
                            Battery.class,
                            new Row(
                                    "disconnects itself",
                                    "disconnects itself",
                                    Row.NOTHING,
                                    "disconnects itself",
                                    false)),
                    // heat is what a protector opens from, and a wet contact corrodes open
                    entry(Breaker.class, sameFor("opens for no reason")),
                    entry(Fuse.class, sameFor("opens for no reason")),
                    entry(Bus.class, new Row("open", "short to ground", "short to ground")),
                    entry(
                            Connector.class,
                            new Row("comes apart", "comes apart", "high resistance")),
                    entry(Contactor.class, sameFor("drops out")),
                    entry(DcConverter.class, sameFor("no output")),
                    // a junction that gets too hot alloys through
                    entry(Diode.class, new Row("open", "shorted", Row.NOTHING)),
                    // a bolt on metal does not mind heat
                    entry(GroundPoint.class, new Row("open", Row.NOTHING, "high resistance")),
                    entry(
                            Load.class,
                            new Row(
                                    "stops working",
                                    "stops working",
                                    "stops working",
                                    "stops working",
                                    false)),
                    entry(OvervoltageGuard.class, sameFor("opens for no reason")),
                    // its channels, that is: none gives anything, whatever its defaults
                    entry(
                            SolidStateController.class,
                            new Row("off", "off", "off", "logic dead", false)),
                    entry(Switch.class, new Row("stuck open", "stuck open", "short to ground")),
                    entry(
                            Wire.class,
                            new Row("open", "chafed to ground", Row.NOTHING, Row.NOTHING, true)));

    private static Row sameFor(String mode) {
        return new Row(mode, mode, mode);
    }

    /** End of the names of the modes that it causes in a kind of part; empty for none. */
    static Optional<String> modes(Damage harm, Class<? extends Part> kind) {
        Row row =
                Optional.ofNullable(ROWS.get(kind))
                        .orElseThrow(
                                () -> new IllegalArgumentException("nothing is said of " + kind));
        return Optional.of(harm.in(row)).filter(mode -> !mode.isEmpty());
    }

    private String in(Row row) {
        return switch (this) {
            case TORN -> row.torn;
            case SCORCHED -> row.scorched;
            case SOAKED -> row.soaked;
            case WORN_APART -> row.rubs ? "open" : Row.NOTHING;
            case WORN_BARE -> row.rubs ? "chafed to ground" : Row.NOTHING;
            case HUNG -> row.hung;
        };
    }

    /** What it does to a part; empty where it does nothing. */
    List<Hit> to(Part part) {
        Optional<String> end = modes(this, part.getClass());
        return part.failureModes().stream()
                .filter(mode -> end.filter(e -> ends(mode.name(), e)).isPresent())
                .map(mode -> new Hit(part.id(), mode))
                .toList();
    }

    private static boolean ends(String mode, String words) {
        return mode.equals(words) || mode.endsWith(" " + words);
    }
}
