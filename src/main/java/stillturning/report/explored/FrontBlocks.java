package stillturning.report.explored;

import static stillturning.report.table.Column.figures;
import static stillturning.report.table.Column.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import stillturning.assess.front.Tally;
import stillturning.model.goal.CriterionName;
import stillturning.parts.Part;
import stillturning.quantity.Formats;
import stillturning.report.ResultText;
import stillturning.report.explored.ExploredFront.ExploredLayout;
import stillturning.report.explored.Families.Family;
import stillturning.report.page.Block;
import stillturning.report.page.Block.Grid;
import stillturning.report.page.Block.Heading;
import stillturning.report.page.Block.Lead;
import stillturning.report.page.Block.Note;
import stillturning.report.page.Block.Points;
import stillturning.report.page.Block.Words;
import stillturning.report.table.Column;
import stillturning.report.table.Table;

/** What a search found, as running text. */
public final class FrontBlocks {

    private final ExploredFront explored;
    private final Families families;
    private final String currency;

    public FrontBlocks(ExploredFront explored) {
        this.explored = explored;
        this.families = new Families(explored);
        this.currency = explored.assessment().study().heading().currency();
    }

    /** Everything, what was found first. */
    public List<Block> all() {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Lead(lead()));
        blocks.add(new Grid(table()));
        blocks.addAll(inWords());
        blocks.add(new Heading("What was drawn, and how far it is from the front"));
        blocks.add(new Points(explored.drawings().stream().map(this::drawing).toList()));
        blocks.addAll(recipes());
        blocks.add(new Heading("What was looked at, and what was not"));
        limits(explored).forEach(text -> blocks.add(new Note(text)));
        return List.copyOf(blocks);
    }

    private String lead() {
        int found = explored.front().size();
        String by =
                String.join(
                        ", ", explored.by().criteria().stream().map(CriterionName::words).toList());
        if (found == 0) {
            return "Nothing that was looked at meets every hard requirement.";
        }
        return found
                + (found == 1 ? " layout is" : " layouts are")
                + " outdone by nothing that was looked at ("
                + by
                + "), and "
                + (found == 1 ? "meets" : "each meets")
                + " every hard requirement.";
    }

    /** One row for each layout on the front. */
    public Table<ExploredLayout> table() {
        List<Column<ExploredLayout>> columns = new ArrayList<>();
        columns.add(words("layout", 24, ExploredLayout::id));
        columns.add(words("made from", 36, this::origin));
        for (CriterionName criterion : criteria()) {
            columns.add(
                    figures(
                            head(criterion),
                            12,
                            layout ->
                                    ResultText.value(
                                            criterion,
                                            explored.value(layout, criterion),
                                            currency)));
        }
        columns.add(
                figures(
                        "parts",
                        6,
                        layout ->
                                String.valueOf(
                                        explored.of(layout).candidate().parts().stream()
                                                .filter(FrontBlocks::isBuilt)
                                                .count())));
        columns.add(
                figures(
                        "wrong sizes",
                        6,
                        layout -> number(explored.beside().brokenLimits(), layout)));
        if (!explored.beside().pairs().isEmpty()) {
            columns.add(
                    figures(
                            "pairs that end it",
                            6,
                            layout -> number(explored.beside().pairs(), layout)));
        }
        return new Table<>(columns, explored.front());
    }

    /** Its values and its changes, a sentence each. */
    public List<String> about(ExploredLayout layout) {
        List<String> about = new ArrayList<>();
        about.add(
                criteria().stream()
                                .map(
                                        c ->
                                                head(c)
                                                        + " "
                                                        + ResultText.value(
                                                                c,
                                                                explored.value(layout, c),
                                                                currency))
                                .collect(Collectors.joining(", "))
                        + ".");
        layout.steps().forEach(step -> about.add("\u2013 " + step));
        return about;
    }

    /** What layouts were compared by first, then the other values. */
    private List<CriterionName> criteria() {
        List<CriterionName> all = new ArrayList<>(explored.by().criteria());
        for (CriterionName criterion : CriterionName.values()) {
            if (!all.contains(criterion) && criterion != CriterionName.ENGINE_STOPS) {
                all.add(criterion);
            }
        }
        return all;
    }

    private static String head(CriterionName criterion) {
        return switch (criterion) {
            case PILOT_NEEDED -> "need pilot";
            case ENGINE_STOPS -> "stop it";
            case ENDURANCE -> "endurance";
            case WEIGHT, COMPLEXITY, COST -> criterion.words();
        };
    }

    private static String number(Map<String, Integer> numbers, ExploredLayout layout) {
        return Optional.ofNullable(numbers.get(layout.id())).map(String::valueOf).orElse("unknown");
    }

    private static boolean isBuilt(Part part) {
        return part.role() != Part.Role.WIRE && part.role() != Part.Role.LOAD;
    }

    /** From which drawing a layout was made, and by how many changes. */
    public String origin(ExploredLayout layout) {
        int steps = layout.steps().size();
        if (steps == 0) {
            return explored.drawings().stream().anyMatch(d -> d.id().equals(layout.id()))
                    ? "as drawn"
                    : layout.from();
        }
        return layout.from() + ", " + steps + (steps == 1 ? " change" : " changes");
    }

    private List<Block> inWords() {
        List<Block> blocks = new ArrayList<>();
        if (explored.front().isEmpty()) {
            return blocks;
        }
        blocks.add(new Heading("In words"));
        List<String> common = families.common();
        if (explored.front().size() > 1 && !common.isEmpty()) {
            blocks.add(
                    new Words(
                            "All that meet everything and are outdone by nothing have "
                                    + String.join(", ", common)
                                    + "."));
        }
        families.telling()
                .forEach(words -> blocks.add(new Words("Each of them has " + words + ".")));
        families.spared().forEach(words -> blocks.add(new Words(words)));
        for (CriterionName criterion : explored.by().criteria()) {
            explored.best(criterion)
                    .ifPresent(best -> blocks.add(new Words(best(criterion, best))));
        }
        bought().ifPresent(text -> blocks.add(new Words(text)));
        if (families.all().size() > 1) {
            blocks.add(new Points(families.all().stream().map(this::family).toList()));
        }
        return blocks;
    }

    private static String superlative(CriterionName criterion) {
        return switch (criterion) {
            case ENDURANCE -> "Longest lasting";
            case WEIGHT -> "Lightest";
            case COMPLEXITY -> "Simplest";
            case COST -> "Cheapest";
            case ENGINE_STOPS -> "Stopped by the fewest failures";
            case PILOT_NEEDED -> "Least in need of the pilot";
        };
    }

    private String best(CriterionName criterion, ExploredLayout best) {
        String value = ResultText.value(criterion, explored.value(best, criterion), currency);
        return superlative(criterion)
                + " is "
                + best.id()
                + ": "
                + criterion.words()
                + " "
                + value
                + " ("
                + origin(best)
                + ").";
    }

    /**
     * What is paid for more minutes, from the best by the first criterion to the longest lasting.
     */
    private Optional<String> bought() {
        Optional<ExploredLayout> first = explored.best(explored.by().criteria().get(0));
        Optional<ExploredLayout> longest = explored.best(CriterionName.ENDURANCE);
        if (first.isEmpty() || longest.isEmpty() || first.equals(longest)) {
            return Optional.empty();
        }
        String what = changes(first.get(), longest.get());
        String parts = String.join(", ", families.against(longest.get(), first.get()));
        return Optional.of(
                "From "
                        + first.get().id()
                        + " to "
                        + longest.get().id()
                        + ": "
                        + what
                        + (parts.isEmpty() ? "" : ", with " + parts)
                        + ".");
    }

    private String changes(ExploredLayout from, ExploredLayout to) {
        List<String> changes =
                criteria().stream()
                        .map(
                                c ->
                                        Figures.change(
                                                c,
                                                explored.value(from, c),
                                                explored.value(to, c),
                                                currency))
                        .filter(words -> !words.isEmpty())
                        .toList();
        return changes.isEmpty() ? "no difference in value" : String.join(", ", changes);
    }

    private String family(Family family) {
        ExploredLayout plain = family.layouts().get(0);
        String names =
                String.join(", ", family.layouts().stream().map(ExploredLayout::id).toList());
        String own = family.words() + ": " + names;
        if (family.layouts().size() == 1) {
            return own + ".";
        }
        ExploredLayout lightest =
                family.layouts().stream()
                        .reduce(
                                (one, other) ->
                                        explored.value(other, CriterionName.WEIGHT)
                                                        < explored.value(one, CriterionName.WEIGHT)
                                                ? other
                                                : one)
                        .orElse(plain);
        List<String> against = families.against(lightest, plain);
        if (lightest.equals(plain)) {
            return own + "; " + plain.id() + " is the lightest of them.";
        }
        return own
                + "; the lightest, "
                + lightest.id()
                + (against.isEmpty()
                        ? ", has as many parts of each kind as "
                        : ", has " + String.join(", ", against) + " than ")
                + plain.id()
                + ".";
    }

    private String drawing(ExploredLayout drawing) {
        String title = explored.of(drawing).candidate().title();
        List<String> missed = explored.missed(drawing);
        if (explored.isOnFront(drawing)) {
            return title + ": on the front.";
        }
        if (!missed.isEmpty()) {
            return title
                    + ": misses "
                    + String.join("; ", missed)
                    + explored.nearestFrom(drawing)
                            .map(
                                    near ->
                                            "; made to meet everything by "
                                                    + near.id()
                                                    + ", "
                                                    + changes(drawing, near))
                            .orElse("")
                    + ".";
        }
        return explored.outdoing(drawing).stream()
                .findFirst()
                .map(by -> title + ": outdone by " + by.id() + ", " + changes(drawing, by) + ".")
                .orElse(title + ": not on the front, and as good as nothing on it.");
    }

    private List<Block> recipes() {
        List<ExploredLayout> made =
                explored.front().stream().filter(layout -> !layout.steps().isEmpty()).toList();
        List<Block> blocks = new ArrayList<>();
        if (!made.isEmpty()) {
            blocks.add(new Heading("How each is made"));
            for (ExploredLayout layout : made) {
                blocks.add(new Words(layout.id() + ", from " + layout.from() + ":"));
                blocks.add(new Points(layout.steps()));
            }
        }
        return blocks;
    }

    /** What was looked at to find a front, and what was not. */
    public static List<String> limits(ExploredFront explored) {
        Tally tally = explored.search().tally();
        List<String> said = new ArrayList<>();
        said.add(
                "%s layouts were looked at, %s of them told as far as it takes to refuse or accept them: %s meet every hard requirement. %s more steps led to a layout that was there already, %s could not be drawn or would have left a wire without its protector."
                        .formatted(
                                Formats.count(tally.tried() + tally.outdone()),
                                Formats.count(tally.tried()),
                                Formats.count(tally.met()),
                                Formats.count(tally.twice()),
                                Formats.count(tally.refused())));
        if (!tally.missed().isEmpty()) {
            said.add("Refused first by: " + refusals(tally.missed()) + ".");
        }
        said.add(
                explored.search().whole()
                        ? "All that can be reached by at most %d changes was looked at."
                                .formatted(explored.search().mostSteps())
                        : "The search ended before everything was looked at: %s changes of layouts that it knows were not tried, and none of what lies beyond them. What is outdone by nothing here may be outdone by something there."
                                .formatted(Formats.count(tally.left())));
        said.add(
                "Nothing was refused by a guess: a layout is out when it does not do with nothing"
                        + " wrong what every drawing does, when one failure, judged as in the full"
                        + " assessment, breaks a hard requirement, or when its weight, price,"
                        + " complexity and endurance alone show that it is outdone. Everything on the"
                        + " front was read from its file and assessed in full.");
        said.add(pairs(explored));
        said.add(
                "Only changes from the program's catalogue were tried, and only from what is drawn"
                        + (explored.search().bare() > 0
                                ? " and from layouts stripped of what they run without ("
                                        + explored.search().bare()
                                        + ")"
                                : "")
                        + ". Simpler on paper is not yet buildable: nobody has looked at room,"
                        + " reach or heat. Wrong sizes are counted as size counts them, and not"
                        + " mended.");
        return said;
    }

    private static String pairs(ExploredFront explored) {
        return explored.beside().pairs().isEmpty()
                ? "Pairs of failures were not asked about: what a layout does without may be what"
                        + " stands in once two things have failed."
                : "Pairs of failures, events that take several parts among them, were asked about"
                        + " for what is on the front, and only"
                        + " there: nothing was refused by them, so what is outdone here may bear"
                        + " fewer of them than what outdoes it. Counted are pairs that end the"
                        + " engine though neither does alone, those that cannot be told among"
                        + " them.";
    }

    private static String refusals(Map<String, Integer> missed) {
        return String.join(
                "; ",
                missed.entrySet().stream()
                        .sorted(Map.Entry.<String, Integer>comparingByValue().reversed())
                        .map(e -> e.getKey() + " (" + e.getValue() + ")")
                        .toList());
    }
}
