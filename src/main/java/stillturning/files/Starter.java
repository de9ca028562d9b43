package stillturning.files;

import static java.util.Objects.requireNonNull;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.DirectoryNotEmptyException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import stillturning.yaml.Problem;
import stillturning.yaml.disk.WholeFolder;

/** Makes new studies from a few answers, so that nobody starts from an empty file. */
public final class Starter {

    private static final String FORMS = "/stillturning/files/";
    private static final String FOLDER = FORMS + "starting/";

    /** What the first line of each file names: an editor completes its words by it. */
    private static final List<String> SCHEMAS =
            List.of("study.schema.json", "candidate.schema.json");

    private static final List<String> FILES =
            List.of("study", "main-bus", "engine-bus", "two-engine-buses");

    /** The layout that is written with either kind of protection, so that they can be compared. */
    private static final String BOTH_KINDS = "two-engine-buses";

    private static final String CHOSEN = "chosen";
    private static final String ALTERNATIVE = "alternative";
    private static final String CONDITION = "  #:";
    private static final Pattern SCALED = Pattern.compile("@([0-9.]+)(A|Ah|V|ohm)@");

    /** How the loads are protected. */
    public enum LoadProtection {
        BREAKERS("breakers"),
        SOLID_STATE("solid-state");

        private final String word;

        LoadProtection(String word) {
            this.word = word;
        }

        private LoadProtection other() {
            return this == BREAKERS ? SOLID_STATE : BREAKERS;
        }
    }

    /** Whether the aircraft's structure leads current, so that it takes part in the returns. */
    public enum AirframeStructure {
        METAL("metal"),
        /** Wood or composite: every return is a wire. */
        NONE("no-metal");

        private final String word;

        AirframeStructure(String word) {
            this.word = word;
        }
    }

    /** Nominal voltage of the aircraft. */
    public enum Nominal {
        FOURTEEN_VOLTS(1),
        TWENTY_EIGHT_VOLTS(2);

        private final int factor;

        Nominal(int factor) {
            this.factor = factor;
        }
    }

    /** How many there are of what the engine hangs on: one or two each. */
    public record Counts(int batteries, int alternators, int computers, int pumps) {
        public Counts {
            oneOrTwo("batteries", batteries);
            oneOrTwo("alternators", alternators);
            oneOrTwo("computers", computers);
            oneOrTwo("pumps", pumps);
        }

        private static void oneOrTwo(String what, int count) {
            if (count != 1 && count != 2) {
                throw new IllegalArgumentException(what + ": " + count + " is neither 1 nor 2");
            }
        }
    }

    /**
     * What the builder has in mind.
     *
     * @param name title of the study
     */
    public record StarterAnswers(
            String name,
            Counts counts,
            LoadProtection protection,
            Nominal nominal,
            AirframeStructure structure) {
        public StarterAnswers {
            if (name.isBlank() || name.length() > 80 || name.chars().anyMatch(c -> c < ' ')) {
                throw new IllegalArgumentException(
                        "the study's name must be one line of 1 to 80 characters");
            }
        }
    }

    private Starter() {}

    /** Starting points by name, each with answers that somebody might give. */
    public static Map<String, StarterAnswers> startingPoints() {
        Map<String, StarterAnswers> points = new LinkedHashMap<>();
        points.put("one-battery", point(1, 1, LoadProtection.BREAKERS));
        points.put("two-batteries", point(2, 1, LoadProtection.BREAKERS));
        points.put("two-alternators", point(2, 2, LoadProtection.BREAKERS));
        points.put("solid-state", point(2, 1, LoadProtection.SOLID_STATE));
        return points;
    }

    private static StarterAnswers point(int batteries, int alternators, LoadProtection protection) {
        Counts counts = new Counts(batteries, alternators, 2, 2);
        return new StarterAnswers(
                "New study", counts, protection, Nominal.FOURTEEN_VOLTS, AirframeStructure.METAL);
    }

    /** The files of a new study, by name; reading them gives no problem. */
    public static Map<String, String> files(StarterAnswers answers) {
        Map<String, String> files = new LinkedHashMap<>();
        FILES.forEach(file -> files.put(file + ".yaml", filled(template(file), answers, CHOSEN)));
        StarterAnswers other =
                new StarterAnswers(
                        answers.name,
                        answers.counts,
                        answers.protection.other(),
                        answers.nominal,
                        answers.structure);
        files.put(
                alternative(answers).get(1) + ".yaml",
                filled(template(BOTH_KINDS), other, ALTERNATIVE));
        return files;
    }

    /** Two candidates of a new study, by id, that are alike but for what protects their loads. */
    public static List<String> alternative(StarterAnswers answers) {
        return List.of(BOTH_KINDS, BOTH_KINDS + "-" + answers.protection.other().word);
    }

    /**
     * Writes a new study into a folder that is new or empty: all of it, or nothing.
     *
     * @return what kept it from being written; empty if it is
     */
    public static List<Problem> write(Path folder, StarterAnswers answers) {
        Map<String, byte[]> files = new LinkedHashMap<>();
        files(answers)
                .forEach((name, text) -> files.put(name, text.getBytes(StandardCharsets.UTF_8)));
        SCHEMAS.forEach(
                name -> files.put(name, text(FORMS + name).getBytes(StandardCharsets.UTF_8)));
        try {
            WholeFolder.create(folder, files);
            return List.of();
        } catch (DirectoryNotEmptyException occupied) {
            String wrong = "the folder is not empty: it holds " + occupied.getMessage();
            return refused(folder, wrong, "name a new folder");
        } catch (IOException refused) {
            return refused(folder, "the study cannot be written: " + refused, "name a new folder");
        }
    }

    private static List<Problem> refused(Path folder, String wrong, String right) {
        return List.of(new Problem(folder, 1, 1, "", wrong, right));
    }

    private static String template(String name) {
        return text(FOLDER + name + ".yaml");
    }

    private static String text(String resource) {
        try (InputStream in =
                requireNonNull(Starter.class.getResourceAsStream(resource), resource)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    /** Keeps the lines whose conditions hold, and puts the answers in. */
    private static String filled(String template, StarterAnswers answers, String role) {
        Set<String> holding = conditions(answers, role);
        String lines =
                template.lines()
                        .filter(line -> holds(line, holding))
                        .map(Starter::withoutCondition)
                        .collect(Collectors.joining("\n", "", "\n"));
        String quoted = "'" + answers.name.replace("'", "''") + "'";
        return SCALED.matcher(lines)
                .replaceAll(number -> scaled(number, answers.nominal))
                .replace("@name@", quoted);
    }

    private static Set<String> conditions(StarterAnswers answers, String role) {
        Counts counts = answers.counts;
        return Set.of(
                role,
                counts.batteries == 1 ? "one-battery" : "two-batteries",
                counts.alternators == 1 ? "one-alternator" : "two-alternators",
                counts.computers == 1 ? "one-computer" : "two-computers",
                counts.pumps == 1 ? "one-pump" : "two-pumps",
                answers.protection.word,
                answers.structure.word);
    }

    private static boolean holds(String line, Set<String> holding) {
        int at = line.indexOf(CONDITION);
        return at < 0
                || holding.containsAll(
                        List.of(line.substring(at + CONDITION.length()).strip().split(" ")));
    }

    private static String withoutCondition(String line) {
        int at = line.indexOf(CONDITION);
        return at < 0 ? line : line.substring(0, at);
    }

    /** A value of a 14 V aircraft in one of another voltage, at the same power. */
    private static String scaled(MatchResult number, Nominal nominal) {
        BigDecimal value = new BigDecimal(number.group(1));
        BigDecimal factor = BigDecimal.valueOf(nominal.factor);
        String unit = number.group(2);
        BigDecimal scaled =
                switch (unit) {
                    case "V" -> value.multiply(factor);
                    case "ohm" -> value.multiply(factor).multiply(factor);
                    default -> value.divide(factor);
                };
        return scaled.stripTrailingZeros().toPlainString() + " " + unit;
    }
}
