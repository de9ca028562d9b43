package stillturning.dossier.proposal;

/**
 * One part of another size.
 *
 * @param part the wire or protector
 * @param from size as it is: AWG of a wire, rating of a protector (A)
 * @param to size as proposed
 */
public record Resize(String part, ResizedThing of, String from, String to) {

    /** What changes its size. */
    public enum ResizedThing {
        WIRE,
        PROTECTOR
    }
}
