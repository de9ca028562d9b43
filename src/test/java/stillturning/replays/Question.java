package stillturning.replays;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import stillturning.assess.verdict.Outcome;
import stillturning.cli.Session;
import stillturning.quantity.field.Key;
import tools.jackson.databind.JsonNode;

/** What somebody asks of a layout before flight, and the findings of the answer in their order. */
public enum Question {
    /** What is wrong before anything fails. */
    CHECK("check") {
        @Override
        Stream<String> findings(JsonNode answer) {
            return Stream.of(
                            each(answer, "normalFlight", "withNothingWrong"),
                            each(answer, "normalFlight", "nearTheLimit"),
                            each(answer, "sizes"),
                            each(answer, "remarks"))
                    .flatMap(s -> s);
        }
    },
    /** What decides, beside the failures one by one. */
    DECIDE("decide") {
        @Override
        Stream<String> findings(JsonNode answer) {
            JsonNode candidate = answer.get("candidates").get(0);
            return Stream.of(
                            each(candidate, "requirements").filter(r -> r.contains("met false")),
                            each(candidate, "missingWarnings"))
                    .flatMap(s -> s);
        }
    },
    /** What every single failure does, the worst first. */
    BREAK("break") {
        @Override
        Stream<String> findings(JsonNode answer) {
            return worstFirst(each(answer, "failures").toList());
        }
    },
    /** What alone stops the engine, by what mends it. */
    ENDINGS("break") {
        @Override
        Stream<String> findings(JsonNode answer) {
            return each(answer, "endings");
        }

        @Override
        String typed() {
            return "break, by mend";
        }
    },
    /** Switches left wrong with which the engine starts, as below the failures; the worst first. */
    LEFT("decide") {
        @Override
        Stream<String> findings(JsonNode answer) {
            return worstFirst(
                    each(answer.get("candidates").get(0).path("beside"), "leftSwitches")
                            .filter(l -> l.contains("engineRunsOnTheGround true"))
                            .toList());
        }

        @Override
        String typed() {
            return "break, switches left";
        }
    },
    /** Parts that everything passes, by shape alone. */
    SHAPE("break --causes") {
        @Override
        Stream<String> findings(JsonNode answer) {
            return each(answer.get("candidates").get(0), "singlePoints");
        }
    },
    /** What is too small. */
    SIZE("size") {
        @Override
        Stream<String> findings(JsonNode answer) {
            return each(answer.get("candidates").get(0), "findings");
        }
    },
    /** What hides, and what else then ends the engine. */
    LATENT("break --latent") {
        @Override
        Stream<String> findings(JsonNode answer) {
            // those that end nothing with one more are only counted below the table
            return each(answer.get("candidates").get(0), "latent")
                    .filter(l -> !l.contains(" with  "));
        }
    },
    /** What is tried on the ground, and what that cannot reveal. */
    @Key("run-up")
    RUN_UP("run-up") {
        @Override
        Stream<String> findings(JsonNode answer) {
            JsonNode card = answer.get("cards").get(0);
            return Stream.concat(each(card, "checks"), each(card, "notRevealed"));
        }
    };

    private final String words;

    Question(String words) {
        this.words = words;
    }

    abstract Stream<String> findings(JsonNode answer);

    /** What a person types for it, and where he looks. */
    String typed() {
        return words;
    }

    /** The findings of a study, first things first. */
    List<String> of(Path study) {
        List<String> line = new ArrayList<>(List.of(words.split(" ", -1)));
        line.add(1, study.toString());
        line.add("--json");
        Session.Ran ran = Session.in(study).run(line.toArray(new String[0]));
        if (ran.out().isBlank()) {
            throw new AssertionError(typed() + " says nothing of " + study + ": " + ran.err());
        }
        return findings(Session.tree(ran.out())).toList();
    }

    private static Stream<String> worstFirst(List<String> told) {
        return Stream.of(Outcome.values())
                .flatMap(outcome -> told.stream().filter(f -> f.contains(outcomeWord(outcome))));
    }

    private static String outcomeWord(Outcome outcome) {
        return " " + outcome.name().toLowerCase(Locale.ROOT).replace('_', '-') + " ";
    }

    /** The texts below a path of lists. */
    private static Stream<String> each(JsonNode from, String... path) {
        Stream<JsonNode> nodes = Stream.of(from);
        for (String name : path) {
            nodes = nodes.flatMap(node -> node.path(name).valueStream());
        }
        return nodes.map(node -> " " + text(node) + " ");
    }

    /** Everything that stands in it, names and values, one after the other. */
    private static String text(JsonNode node) {
        if (!node.isContainer()) {
            return node.asString();
        }
        List<String> all = new ArrayList<>();
        for (Map.Entry<String, JsonNode> inside : node.properties()) {
            all.add(inside.getKey() + " " + text(inside.getValue()));
        }
        if (node.isArray()) {
            node.valueStream().forEach(inside -> all.add(text(inside)));
        }
        return String.join(" ", all);
    }
}
