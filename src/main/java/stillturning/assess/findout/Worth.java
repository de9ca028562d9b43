package stillturning.assess.findout;

import java.util.List;

/**
 * What finding out one number would bring, every place of its range as likely as any other.
 *
 * @param first share of the range in which another candidate is first
 * @param any share of the range in which that or a verdict is another
 * @param shareError greatest error of these shares, from how near the turns are known
 * @param points mean worth that is gained by knowing it before choosing
 * @param pointsError its error, from looking half as often
 * @param turns where answers turn, those nearest to the likely value first
 */
public record Worth(
        double first,
        double any,
        double shareError,
        double points,
        double pointsError,
        List<Turn> turns) {

    /** Of a number that turns nothing. */
    public static final Worth NOTHING = new Worth(0, 0, 0, 0, 0, List.of());

    public Worth {
        turns = List.copyOf(turns);
    }
}
