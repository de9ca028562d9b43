package stillturning.quantity;

/** A text is no quantity or wire gauge; says what is wrong, what would be right, and where. */
public final class MalformedQuantity extends Exception {

    private static final long serialVersionUID = 1;

    private final int offset;
    private final String wrong;
    private final String right;

    MalformedQuantity(int offset, String wrong, String right) {
        super(wrong + "; " + right);
        this.offset = offset;
        this.wrong = wrong;
        this.right = right;
    }

    /** Index of the faulty place inside the text, from 0. */
    public int offset() {
        return offset;
    }

    /** What is wrong: {@code "amps" is no unit}. */
    public String wrong() {
        return wrong;
    }

    /** What would be right: {@code write 20 A}. */
    public String right() {
        return right;
    }
}
