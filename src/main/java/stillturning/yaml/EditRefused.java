package stillturning.yaml;

/**
 * An edit cannot be made without touching what it should leave alone, or its place does not exist.
 */
public final class EditRefused extends Exception {

    private static final long serialVersionUID = 1;

    EditRefused(String message) {
        super(message);
    }
}
