package stillturning.files;

import java.util.regex.Pattern;

/** Names of parts, loads and files. */
final class Names {

    private static final Pattern PLAIN = Pattern.compile("[a-z0-9][a-z0-9-]*");

    private Names() {}

    static boolean isPlain(String name) {
        return PLAIN.matcher(name).matches();
    }

    /** Tells that a name has a point in it, which stands between a part and its terminal. */
    static void refusePoint(String name, Spot spot, Report report) {
        if (!isPlain(name)) {
            report.problem(
                    spot,
                    "\"" + name + "\" cannot be a name, since a point leads to a terminal",
                    "use lower case letters, digits and hyphens");
        }
    }

    /** A name as people say it. */
    static String spoken(String name) {
        return name.replace('-', ' ');
    }
}
