package stillturning.yaml.edit;

/**
 * An edit cannot be made without touching what it should leave alone, or its place does not exist.
 */
public final class EditRefused extends Exception {

    private static final long serialVersionUID = 1;

    private final String because;

    EditRefused(String message, String because) {
        super(message + ": " + because);
        this.because = because;
    }

    /** Why, without the place and the edit. */
    public String because() {
        return because;
    }
}
