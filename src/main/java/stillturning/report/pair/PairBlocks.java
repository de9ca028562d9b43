package stillturning.report.pair;

import static stillturning.report.table.Column.figures;
import static stillturning.report.table.Column.words;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Stream;
import stillturning.assess.Appraisal;
import stillturning.assess.CandidateDifferences;
import stillturning.assess.CandidateDifferences.Shift;
import stillturning.assess.PilotBurden;
import stillturning.assess.exchange.Attribution;
import stillturning.assess.exchange.Attribution.AttributedShare;
import stillturning.assess.exchange.Group;
import stillturning.assess.verdict.Outcome;
import stillturning.assess.verdict.Verdict;
import stillturning.model.Study.Weight;
import stillturning.model.goal.ComplexityCount;
import stillturning.model.goal.CriterionName;
import stillturning.parts.Part;
import stillturning.quantity.Formats;
import stillturning.quantity.UnitSystem;
import stillturning.report.PartNames;
import stillturning.report.ResultText;
import stillturning.report.page.Block;
import stillturning.report.page.Block.Grid;
import stillturning.report.page.Block.Heading;
import stillturning.report.page.Block.Lead;
import stillturning.report.page.Block.Note;
import stillturning.report.page.Block.Points;
import stillturning.report.page.Block.Words;
import stillturning.report.table.Column;

/** Two candidates side by side, as running text. */
public final class PairBlocks {

    private static final int NAMED = 12;
    private static final int FEW = 4;

    private final PairQuestion pair;
    private final Attribution mixes;

    public PairBlocks(PairQuestion pair) {
        this.pair = pair;
        this.mixes = pair.mixes();
    }

    /** Everything, the verdict first. */
    public List<Block> all() {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Lead(pair.verdict()));
        if (!pair.aside().isEmpty()) {
            blocks.add(
                    new Note(
                            "Left aside here, since mixes are not held against it: "
                                    + String.join("; ", pair.aside())
                                    + "."));
        }
        blocks.add(new Heading("What is bought, what is paid"));
        pair.paragraph().forEach(text -> blocks.add(new Words(text)));
        blocks.addAll(numbers());
        blocks.addAll(shares());
        blocks.addAll(parts());
        blocks.addAll(failures());
        String currency = pair.two().study().heading().currency();
        Stream.of(pair.one(), pair.other())
                .flatMap(
                        a ->
                                pair.controllers(a).stream()
                                        .map(use -> ControllerWords.of(use, a, currency)))
                .forEach(blocks::addAll);
        return List.copyOf(blocks);
    }

    /** A number of each. */
    private record Row(String what, String one, String other) {}

    private List<Block> numbers() {
        List<Row> rows = new ArrayList<>();
        for (Weight weight : pair.two().study().goals().weights()) {
            rows.add(row(weight.criterion().words(), a -> value(weight.criterion(), a)));
        }
        rows.addAll(counts());
        rows.add(row("requirements missed", a -> count(a.met().stream().filter(m -> !m.met()))));
        rows.add(row("single failures", a -> String.valueOf(a.singles().size())));
        rows.add(
                row(
                        "parts without wires",
                        a ->
                                count(
                                        a.candidate().parts().stream()
                                                .filter(
                                                        p ->
                                                                p.role() != Part.Role.WIRE
                                                                        && p.role()
                                                                                != Part.Role
                                                                                        .LOAD))));
        rows.add(row("wires", a -> count(a.candidate().wires())));
        rows.add(row("weight of wires", a -> mass(a.measures().burdens().cableKilograms())));
        rows.add(
                row(
                        "logics",
                        a ->
                                String.valueOf(
                                        a.candidate().parts().stream()
                                                .mapToInt(Part::logics)
                                                .sum())));
        return List.of(
                new Heading("In numbers"),
                Grid.of(
                        rows,
                        List.of(
                                words("of each", 44, Row::what),
                                figures(title(pair.one()), 22, Row::one),
                                figures(title(pair.other()), 22, Row::other))));
    }

    /** What complexity counts, where the two differ in it, and what the pilot has to do. */
    private List<Row> counts() {
        List<Row> rows = new ArrayList<>();
        for (ComplexityCount count : ComplexityCount.values()) {
            Row counted =
                    row(
                            "counted in complexity: " + count.words(),
                            a -> String.valueOf(a.measures().complexity().count(count)));
            if (!counted.one.equals(counted.other)) {
                rows.add(counted);
            }
        }
        rows.add(row("acts in procedures", a -> String.valueOf(acts(a.measures().pilot()))));
        rows.add(row("acts by heart", a -> String.valueOf(a.measures().pilot().byHeart().size())));
        return rows;
    }

    private static int acts(PilotBurden pilot) {
        return pilot.byHeart().size() + pilot.withTimeInHand().size();
    }

    private Row row(String what, Function<Appraisal, String> get) {
        return new Row(what, get.apply(pair.one()), get.apply(pair.other()));
    }

    private static String count(Stream<?> some) {
        return String.valueOf(some.count());
    }

    private static String mass(double kilograms) {
        return Formats.mass(kilograms, UnitSystem.METRIC);
    }

    private String value(CriterionName criterion, Appraisal appraisal) {
        return ResultText.value(
                criterion,
                appraisal.measures().values().getOrDefault(criterion, Double.NaN),
                pair.two().study().heading().currency());
    }

    /** Which group of differences makes how much. */
    private List<Block> shares() {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Heading("What makes the difference"));
        blocks.add(
                new Note(
                        "Each group of differences was exchanged between the two in all "
                                + mixes.mixes().size()
                                + " mixes, each assessed; a share is what the group adds, averaged"
                                + " over all orders (Shapley). Shares sum to the whole."));
        blocks.add(Grid.of(mixes.shares(), shareColumns()));
        if (!mixes.inseparable().isEmpty()) {
            blocks.add(new Note("Groups in one line go together: " + mixes.inseparable() + "."));
        }
        List<String> notLayout =
                mixes.shares().stream().filter(s -> !s.isLayout()).map(PairBlocks::unlike).toList();
        blocks.add(
                notLayout.isEmpty()
                        ? new Words(
                                "Nothing differs but the layout: they are compared like for like.")
                        : new Words(
                                "No matter of layout, and yet different: "
                                        + String.join("; ", notLayout)
                                        + "."));
        pair.marks().map(this::known).map(Words::new).ifPresent(blocks::add);
        return blocks;
    }

    private String known(ValueMarks marks) {
        return "How well their values are known: "
                + marks.words("\"" + title(pair.one()) + "\"", "\"" + title(pair.other()) + "\"")
                + (marks.unlike() ? "." : "; no value is a guess in one and known in the other.");
    }

    private List<Column<AttributedShare>> shareColumns() {
        List<Column<AttributedShare>> columns = new ArrayList<>();
        columns.add(words("group", 26, s -> Group.words(s.together())));
        columns.add(figures("points", 7, s -> signed(s.points(), 3)));
        for (Weight weight : pair.two().study().goals().weights()) {
            CriterionName criterion = weight.criterion();
            columns.add(figures(head(criterion), 10, s -> share(criterion, s)));
        }
        columns.add(words("turns the order", 7, s -> mixes.turnedBy(s) ? "yes" : "no"));
        return columns;
    }

    private static String head(CriterionName criterion) {
        return switch (criterion) {
            case ENGINE_STOPS -> "stops";
            case PILOT_NEEDED -> "pilot";
            case ENDURANCE -> "endurance (min)";
            case WEIGHT -> "weight (kg)";
            case COMPLEXITY -> "complexity";
            case COST -> "cost";
        };
    }

    private static String share(CriterionName criterion, AttributedShare share) {
        double value = share.values().getOrDefault(criterion, Double.NaN);
        if (!Double.isFinite(value)) {
            return "without limit";
        }
        return switch (criterion) {
            case ENDURANCE -> signed(value / 60, 1);
            case WEIGHT -> signed(value, 2);
            case ENGINE_STOPS, PILOT_NEEDED, COMPLEXITY -> signed(value, 1);
            case COST -> signed(value, 0);
        };
    }

    private static String signed(double value, int decimals) {
        String text = Formats.fixed(value, decimals);
        return value > 0 && !text.equals(Formats.fixed(0, decimals)) ? "+" + text : text;
    }

    private static String unlike(AttributedShare share) {
        return Group.words(share.together()) + " (" + some(share.parts(), FEW) + ")";
    }

    private List<Block> parts() {
        CandidateDifferences differences = pair.differences();
        return List.of(
                new Heading("What only one of them has"),
                new Points(
                        Stream.of(
                                        only(pair.one(), differences.leftOut()),
                                        only(pair.other(), differences.added()))
                                .toList()));
    }

    private static String only(Appraisal appraisal, List<Part> parts) {
        List<String> kinds = new ArrayList<>();
        new TreeMap<>(PartNames.byKind(parts, names -> some(names, FEW)))
                .forEach((kind, names) -> kinds.add(kind + ": " + names));
        return title(appraisal) + ": " + (kinds.isEmpty() ? "nothing" : String.join("; ", kinds));
    }

    /** A failure that does not come to the same. */
    private record Unlike(String failure, Optional<Outcome> one, Optional<Outcome> other) {
        Outcome worst() {
            return Stream.of(one, other)
                    .flatMap(Optional::stream)
                    .min(Comparator.naturalOrder())
                    .orElse(Outcome.NO_EFFECT);
        }
    }

    private List<Block> failures() {
        CandidateDifferences differences = pair.differences();
        List<Unlike> unlike = new ArrayList<>();
        for (Shift shift : differences.shifts()) {
            unlike.add(
                    new Unlike(
                            shift.failure(),
                            Optional.of(shift.before()),
                            Optional.of(shift.after())));
        }
        differences.spared().stream()
                .filter(PairBlocks::grave)
                .forEach(
                        v ->
                                unlike.add(
                                        new Unlike(
                                                name(v),
                                                Optional.of(v.outcome()),
                                                Optional.empty())));
        differences.own().stream()
                .filter(PairBlocks::grave)
                .forEach(
                        v ->
                                unlike.add(
                                        new Unlike(
                                                name(v),
                                                Optional.empty(),
                                                Optional.of(v.outcome()))));
        unlike.sort(Comparator.comparing(Unlike::worst));
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Heading("Failures that do not come to the same"));
        blocks.add(new Words(PairVerdict.counts(differences) + "."));
        if (!unlike.isEmpty()) {
            blocks.add(
                    Grid.of(
                            unlike.stream().limit(NAMED).toList(),
                            List.of(
                                    words("failure", 36, Unlike::failure),
                                    words(title(pair.one()), 28, u -> outcome(u.one())),
                                    words(title(pair.other()), 28, u -> outcome(u.other())))));
        }
        if (unlike.size() > NAMED) {
            blocks.add(
                    new Note(
                            (unlike.size() - NAMED)
                                    + " more, milder or as grave as the last; all are in the"
                                    + " JSON."));
        }
        return blocks;
    }

    private static boolean grave(Verdict verdict) {
        return !verdict.engineOwn() && verdict.outcome().compareTo(Outcome.REDUNDANCY_LOST) < 0;
    }

    private static String name(Verdict verdict) {
        return verdict.failure().name();
    }

    private static String outcome(Optional<Outcome> outcome) {
        return outcome.map(Outcome::words).orElse("(no such part)");
    }

    static String title(Appraisal appraisal) {
        return appraisal.candidate().title();
    }

    static String some(List<String> names, int most) {
        int left = names.size() - most;
        return String.join(", ", names.subList(0, Math.min(most, names.size())))
                + (left > 0 ? " and " + left + " more" : "");
    }
}
