package stillturning.report.joint;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import stillturning.model.Candidate;
import stillturning.quantity.Formats;
import stillturning.reliability.runup.Card;
import stillturning.reliability.runup.Check;
import stillturning.report.page.Block;
import stillturning.report.page.Block.Heading;
import stillturning.report.page.Block.Note;
import stillturning.report.page.Block.Points;
import stillturning.report.page.Block.Words;

/** One candidate's card for the run-up before take-off. */
public final class RunUpSheet {

    private final CombinedFindings found;
    private final EventNames names;
    private final LatentRemedies hidden;
    private final List<Block> blocks = new ArrayList<>();

    private RunUpSheet(CombinedFindings found) {
        this.found = found;
        this.names = new EventNames(found.joint().events());
        this.hidden = new LatentRemedies(found);
    }

    /** The blocks, without a title and without the cautions that belong above them. */
    public static List<Block> of(CombinedFindings found) {
        RunUpSheet sheet = new RunUpSheet(found);
        sheet.before();
        List<Check> checks = found.card().checks();
        for (int i = 0; i < checks.size(); i++) {
            sheet.check(i + 1, checks.get(i));
        }
        sheet.after();
        sheet.notRevealed();
        return List.copyOf(sheet.blocks);
    }

    private void before() {
        Card card = found.card();
        String fewest = card.proven() ? "The fewest checks that reveal" : "Checks that reveal";
        blocks.add(
                new Words(
                        "Engine running, "
                                + card.phase()
                                + "; hold each position "
                                + Formats.duration(card.pace().heldSeconds())
                                + ". Levers stand as in flight before each check. "
                                + fewest
                                + " every hidden failure that a check can reveal and that ends the"
                                + " engine with one more."));
        if (card.checks().isEmpty()) {
            blocks.add(
                    new Words(
                            card.thatMatter().isEmpty()
                                    ? "There is none to reveal, so nothing to check."
                                    : "No check reveals any."));
        }
    }

    private void check(int number, Check check) {
        blocks.add(new Heading(number + "  Set: " + CheckWords.moves(check.moves())));
        List<String> points = new ArrayList<>();
        points.add("look for: " + CheckWords.expected(check));
        Map<String, List<Integer>> instead = new LinkedHashMap<>();
        check.reveals().stream()
                .filter(r -> !found.card().unconfirmed().contains(r.event()))
                .forEach(
                        r ->
                                instead.computeIfAbsent(
                                                CheckWords.instead(r.seen()),
                                                s -> new ArrayList<>())
                                        .add(r.event()));
        instead.forEach(
                (seen, events) ->
                        points.add("if instead " + seen + ": look at " + suspects(events)));
        points.add("set back: " + back(check));
        blocks.add(new Points(points));
    }

    private String suspects(List<Integer> events) {
        return events.size() == 1
                ? names.of(events.get(0))
                : PartNames.listed(events.stream().map(names::part).toList());
    }

    private static String back(Check check) {
        List<String> words = new ArrayList<>();
        check.back().forEach((lever, position) -> words.add(lever + " " + position));
        return String.join(", ", words);
    }

    private void after() {
        Candidate candidate = found.candidate();
        List<String> levers = new ArrayList<>();
        candidate.cockpit().flight().forEach((lever, at) -> levers.add(lever + " " + at));
        blocks.add(new Heading("Last, before take-off"));
        blocks.add(
                new Words(
                        levers.isEmpty()
                                ? "No lever to set."
                                : "All levers as in flight: " + String.join(", ", levers) + "."));
    }

    private void notRevealed() {
        Map<String, List<Integer>> inspected = hidden.inspected();
        if (inspected.isEmpty()) {
            return;
        }
        blocks.add(new Heading("Not revealed by any check"));
        List<String> points = new ArrayList<>();
        inspected.forEach((how, events) -> points.add(names.anyOf(events) + ": " + how));
        blocks.add(new Points(points));
        blocks.add(new Note(LatentSheet.INSPECTING));
    }
}
