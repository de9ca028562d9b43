package stillturning.report.drawing.diagram;

import java.util.Optional;
import java.util.Set;

/** What a symbol is drawn as, in the manner of the standard for electrical diagrams, IEC 60617. */
public enum Glyph {
    /** Its positive plate looks east, or west if only that side has lines. */
    BATTERY(GlyphForm.INLINE, 24, 24, 12),
    ALTERNATOR(GlyphForm.INLINE, 30, 30, 15),
    BUS(GlyphForm.BAR, 6, 0, 0),
    FUSE(GlyphForm.INLINE, 28, 10, 5),
    FUSE_BLOWN(GlyphForm.INLINE, 28, 10, 5),
    BREAKER_CLOSED(GlyphForm.INLINE, 30, 12, 8),
    BREAKER_OPEN(GlyphForm.INLINE, 30, 12, 8),
    SWITCH_CLOSED(GlyphForm.INLINE, 30, 12, 8),
    SWITCH_OPEN(GlyphForm.INLINE, 30, 12, 8),
    /** The contact lies between west and east; lines from north or south end at the coil. */
    CONTACTOR_CLOSED(GlyphForm.INLINE, 30, 32, 8),
    CONTACTOR_OPEN(GlyphForm.INLINE, 30, 32, 8),
    /** Lets current through from west to east. */
    DIODE(GlyphForm.INLINE, 24, 12, 6),
    CONNECTOR(GlyphForm.INLINE, 24, 12, 6),
    SHUNT(GlyphForm.INLINE, 28, 12, 7),
    CONVERTER(GlyphForm.INLINE, 28, 28, 14),
    MOTOR(GlyphForm.INLINE, 24, 24, 12),
    STARTER(GlyphForm.INLINE, 30, 30, 15),
    LAMP(GlyphForm.INLINE, 20, 20, 10),
    LOAD(GlyphForm.BOX, 0, 0, 0),
    CONTROLLER(GlyphForm.BOX, 0, 0, 0),
    /** With one line a short stub on the other symbol; with several a ground bar. */
    EARTH(GlyphForm.GROUND, 14, 12, 0),
    /** As {@link #EARTH}, for the airframe or the engine block. */
    FRAME(GlyphForm.GROUND, 14, 12, 0);

    /** How a symbol takes its place: strokes between ports, a box with text, a bar, or a stub. */
    public enum GlyphForm {
        INLINE,
        BOX,
        BAR,
        GROUND
    }

    public final GlyphForm form;
    public final double width;
    public final double height;

    /** Distance of the line through the symbol from its upper edge. */
    public final double axis;

    Glyph(GlyphForm form, double width, double height, double axis) {
        this.form = form;
        this.width = width;
        this.height = height;
        this.axis = axis;
    }

    /** Whether it lies in a line of two ends and has room for words beside it. */
    public boolean bearsWordsInLine() {
        return Set.of(FUSE, BREAKER_CLOSED, BREAKER_OPEN, SWITCH_CLOSED, SWITCH_OPEN, DIODE)
                .contains(this);
    }

    /**
     * The same with its contacts closed or open, a fuse whole or blown; empty for what has none.
     */
    public Optional<Glyph> with(boolean closed) {
        return switch (this) {
            case FUSE, FUSE_BLOWN -> Optional.of(closed ? FUSE : FUSE_BLOWN);
            case BREAKER_CLOSED, BREAKER_OPEN ->
                    Optional.of(closed ? BREAKER_CLOSED : BREAKER_OPEN);
            case SWITCH_CLOSED, SWITCH_OPEN -> Optional.of(closed ? SWITCH_CLOSED : SWITCH_OPEN);
            case CONTACTOR_CLOSED, CONTACTOR_OPEN ->
                    Optional.of(closed ? CONTACTOR_CLOSED : CONTACTOR_OPEN);
            case BATTERY,
                    ALTERNATOR,
                    BUS,
                    DIODE,
                    CONNECTOR,
                    SHUNT,
                    CONVERTER,
                    MOTOR,
                    STARTER,
                    LAMP,
                    LOAD,
                    CONTROLLER,
                    EARTH,
                    FRAME ->
                    Optional.empty();
        };
    }

    /** The same with its contacts the other way; empty for what has none. */
    public Optional<Glyph> turned() {
        return with(true).flatMap(closed -> with(closed != this));
    }

    /** Whether a layout made for the other one holds for this one as well. */
    boolean takesTheRoomOf(Glyph other) {
        return form == other.form
                && width == other.width
                && height == other.height
                && axis == other.axis
                && (this == LOAD) == (other == LOAD);
    }
}
