package stillturning.report.joint;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import stillturning.model.Candidate;
import stillturning.quantity.Formats;
import stillturning.reliability.runup.Card;
import stillturning.reliability.runup.Check;
import stillturning.reliability.runup.RefusedCheck;
import stillturning.report.Spoken;
import stillturning.report.page.Block;
import stillturning.report.page.Block.Boxes;
import stillturning.report.page.Block.Heading;
import stillturning.report.page.Block.Note;
import stillturning.report.page.Block.Points;
import stillturning.report.page.Block.Words;

/** One candidate's card for the run-up before take-off. */
public final class RunUpSheet {

    private final CombinedFindings found;
    private final EventNames names;
    private final LatentRemedies hidden;
    private final Spoken spoken;
    private final CheckWords words;
    private final List<Block> blocks = new ArrayList<>();

    private RunUpSheet(CombinedFindings found) {
        this.found = found;
        this.hidden = new LatentRemedies(found);
        this.spoken = new Spoken(found.candidate());
        this.names = new EventNames(found.joint().events(), spoken::of);
        this.words = new CheckWords(spoken);
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
        sheet.refused();
        sheet.notRevealed();
        return List.copyOf(sheet.blocks);
    }

    /** One side of a kneeboard's sheet: what to move and what to see, each to be ticked. */
    public static List<Block> front(CombinedFindings found) {
        RunUpSheet sheet = new RunUpSheet(found);
        Card card = found.card();
        sheet.blocks.add(
                new Words(
                        "Engine running, "
                                + card.phase()
                                + (card.off().isEmpty()
                                        ? "."
                                        : "; off: " + sheet.spoken.all(card.off()) + ".")
                                + " One move after the other; hold "
                                + Formats.duration(card.pace().heldSeconds())
                                + ", look, set back in the order written. If it is otherwise, turn"
                                + " over."));
        if (card.checks().isEmpty()) {
            sheet.blocks.add(new Words("No check reveals anything that is hidden in flight."));
        }
        for (int i = 0; i < card.checks().size(); i++) {
            sheet.toTick(i + 1, card.checks().get(i));
        }
        sheet.after();
        return List.copyOf(sheet.blocks);
    }

    private void toTick(int number, Check check) {
        blocks.add(new Heading("Check " + number));
        blocks.add(
                new Boxes(
                        List.of(
                                capital(words.moves(check.moves())),
                                "see: " + words.expected(check),
                                "back: " + words.back(check, found.card()))));
    }

    /** The other side: what to look at where something else is seen, and what stays hidden. */
    public static List<Block> back(CombinedFindings found) {
        RunUpSheet sheet = new RunUpSheet(found);
        List<Check> checks = found.card().checks();
        for (int i = 0; i < checks.size(); i++) {
            List<String> points = sheet.otherwise(checks.get(i));
            if (!points.isEmpty()) {
                sheet.blocks.add(new Heading("Check " + (i + 1)));
                sheet.blocks.add(new Points(points));
            }
        }
        sheet.notRevealed();
        return List.copyOf(sheet.blocks);
    }

    /** Why moves are not offered as a check, in words. */
    public static String refusal(Candidate candidate, RefusedCheck refusal) {
        return new CheckWords(new Spoken(candidate)).refusal(refusal);
    }

    private void before() {
        Card card = found.card();
        String fewest = card.proven() ? "The fewest checks that reveal" : "Checks that reveal";
        blocks.add(
                new Words(
                        "Engine running, "
                                + card.phase()
                                + (card.off().isEmpty() ? "" : "; off: " + spoken.all(card.off()))
                                + ". Move one thing after the other in the order written; hold "
                                + Formats.duration(card.pace().heldSeconds())
                                + ", look, set back in the order written. "
                                + fewest
                                + " every hidden failure that a check can reveal and that ends the"
                                + " engine with one more."));
        if (!card.checks().isEmpty()) {
            blocks.add(
                    new Note(
                            "Played at "
                                    + Formats.duration(card.pace().moveSeconds())
                                    + " a move (a guess) and three times as slowly: on the way the"
                                    + " engine does not falter, no alternator loses its battery and"
                                    + " nothing is destroyed, if nothing is wrong."));
        }
        if (card.checks().isEmpty()) {
            blocks.add(
                    new Words(
                            card.thatMatter().isEmpty()
                                    ? "There is none to reveal, so nothing to check."
                                    : "No check reveals any."));
        }
    }

    private void check(int number, Check check) {
        blocks.add(new Heading(number + "  " + capital(words.moves(check.moves()))));
        List<String> points = new ArrayList<>();
        points.add("see: " + words.expected(check));
        points.addAll(otherwise(check));
        points.add("back: " + words.back(check, found.card()));
        blocks.add(new Points(points));
    }

    /** What else may be seen, each with what to look at then. */
    private List<String> otherwise(Check check) {
        Map<String, List<Integer>> instead = new LinkedHashMap<>();
        check.reveals().stream()
                .filter(r -> !found.card().unconfirmed().contains(r.event()))
                .forEach(
                        r ->
                                instead.computeIfAbsent(
                                                words.instead(r.seen()), s -> new ArrayList<>())
                                        .add(r.event()));
        List<String> points = new ArrayList<>();
        instead.forEach(
                (seen, events) ->
                        points.add("if " + seen + ": do not fly, look at " + suspects(events)));
        return points;
    }

    private static String capital(String text) {
        return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
    }

    private String suspects(List<Integer> events) {
        if (events.size() > 1) {
            return RunPartNames.listed(events.stream().map(names::part).toList(), spoken::of);
        }
        int event = events.get(0);
        return spoken.of(names.part(event)) + ": " + names.mode(event);
    }

    private void after() {
        Candidate candidate = found.candidate();
        List<String> levers = new ArrayList<>();
        candidate.cockpit().flight().forEach((lever, at) -> levers.add(spoken.move(lever, at)));
        blocks.add(new Heading("Last, before take-off"));
        blocks.add(
                new Words(
                        levers.isEmpty()
                                ? "No lever to set."
                                : "All levers as in flight: " + String.join(", ", levers) + "."));
    }

    private void refused() {
        List<RefusedCheck> refused = found.card().missing().refused();
        if (refused.isEmpty()) {
            return;
        }
        blocks.add(new Heading("Cannot be checked by moves on the ground"));
        blocks.add(
                new Points(
                        refused.stream()
                                .map(r -> suspects(r.events()) + ", by " + words.refusal(r))
                                .toList()));
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
