package stillturning.parts.element;

/**
 * One electrical behaviour between two terminals of a part.
 *
 * <p>Terminal names are local to the part ({@code "in"}, {@code "plus"}); {@link #STRUCTURE} is the
 * metal that a chafed wire touches.
 */
public sealed interface Element
        permits Cell,
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
}
