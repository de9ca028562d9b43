package stillturning.files.entry;

import java.util.regex.Pattern;

/** Names of parts, loads and files, as people give them. */
public final class Names {

    private static final Pattern PLAIN = Pattern.compile("[a-z0-9][a-z0-9-]*");

    private Names() {}

    /** Whether a name is made of lower case letters, digits and hyphens. */
    public static boolean isPlain(String name) {
        return PLAIN.matcher(name).matches();
    }

    /** A name as people say it. */
    public static String spoken(String name) {
        return name.replace('-', ' ');
    }
}
