package stillturning.parts.element;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One electrical behaviour between two terminals of a part.
 *
 * <p>Terminal names are local to the part ({@code "in"}, {@code "plus"}); {@link #STRUCTURE} is the
 * metal that a chafed wire touches.
 */
public sealed interface Element
        permits Capacitor,
                Cell,
                Channel,
                Coil,
                Conversion,
                Conductor,
                Consumer,
                Contact,
                Generator,
                Guard,
                Protector,
                Rectifier {

    /** Stands for the grounded metal of the aircraft wherever a terminal name is expected. */
    String STRUCTURE = "structure";

    /** Name inside the part, unique there. */
    String name();

    /** Local name of the terminal that current enters when it is positive. */
    String from();

    /** Local name of the terminal that current leaves when it is positive. */
    String to();

    /** The same with so much in store, from 0 to 1; itself where its charge is not stated. */
    default Element charged(double charge) {
        return this;
    }

    /** The same without what disconnects it to protect it; only a battery has that. */
    default Element unmanaged() {
        return this;
    }

    /** How current gets through it. */
    enum Passage {
        /** It works there, or is made there. */
        NONE,
        BOTH_WAYS,
        /** From {@code from} to {@code to} only. */
        ONE_WAY
    }

    /** Whether current passes through on its way from a source to a load and back. */
    default Passage passage() {
        return Passage.NONE;
    }

    /** Local name of the terminal at which what it carries or makes comes out. */
    default String outlet() {
        return to();
    }

    /** What it is there for. */
    enum Role {
        BATTERY,
        GENERATOR,
        /** Keeps a voltage up for moments; makes no current of its own. */
        CAPACITOR,
        LOAD,
        /** Draws, and moves contacts while it does. */
        COIL,
        CONVERTER,
        /** Metal or a diode: notices nothing but its own current. */
        PATH,
        /** A path that electronics open or close by what they measure. */
        ELECTRONICS;

        /** Whether it makes current. */
        public boolean isSource() {
            return switch (this) {
                case BATTERY, GENERATOR -> true;
                case CAPACITOR, LOAD, COIL, CONVERTER, PATH, ELECTRONICS -> false;
            };
        }

        /** Whether it uses up what it draws. */
        public boolean isLoad() {
            return switch (this) {
                case LOAD, COIL -> true;
                case BATTERY, GENERATOR, CAPACITOR, CONVERTER, PATH, ELECTRONICS -> false;
            };
        }
    }

    Role role();

    /**
     * Resistance (ohm) against which it takes up a change of current by itself, as long as the
     * field of an alternator needs to follow; empty for what takes up none.
     */
    default OptionalDouble surplusOhms() {
        return OptionalDouble.empty();
    }

    /** What opens and closes it on command; empty if nothing does. */
    default Optional<Control> commandedBy() {
        return Optional.empty();
    }

    /** What opens it when it carries too much; empty if nothing does. */
    default Optional<Channel.Trip> overload() {
        return Optional.empty();
    }

    /**
     * Whether metal in its place makes no difference until it is called on to open.
     *
     * @param conducts whether it carries current in normal flight
     */
    default boolean isStuckUnseen(boolean conducts) {
        return false;
    }

    /** One answer for each kind of element. */
    interface Visitor<T> {
        T visit(Capacitor capacitor);

        T visit(Cell cell);

        T visit(Channel channel);

        T visit(Coil coil);

        T visit(Conversion conversion);

        T visit(Conductor conductor);

        T visit(Consumer consumer);

        T visit(Contact contact);

        T visit(Generator generator);

        T visit(Guard guard);

        T visit(Protector protector);

        T visit(Rectifier diode);
    }

    /** The answer for this kind of element. */
    <T> T accept(Visitor<T> visitor);
}
