package stillturning.reliability.asbuilt;

import java.util.List;

/**
 * A value that, were it another, would explain readings that do not keep to their prediction.
 *
 * @param needed what it would have to be, by least squares over all readings of the steps in
 *     question
 * @param half half the interval of 95 % of that
 * @param mended how many of those that disagree would then keep to their prediction
 * @param disagreeing how many disagree
 * @param spoilt how many of the others would then no longer keep to theirs
 * @param alike names of others that explain it and that these readings cannot tell from it
 */
public record Explanation(
        OpenValue value,
        double needed,
        double half,
        int mended,
        int disagreeing,
        int spoilt,
        List<String> alike) {

    public Explanation {
        alike = List.copyOf(alike);
    }

    Explanation alike(List<String> others) {
        return new Explanation(value, needed, half, mended, disagreeing, spoilt, others);
    }

    /** Whether it lies within what the study leaves open. */
    public boolean likely() {
        return needed >= value.low() && needed <= value.high();
    }
}
