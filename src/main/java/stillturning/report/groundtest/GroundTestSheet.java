package stillturning.report.groundtest;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import stillturning.model.Circuit;
import stillturning.parts.Part;
import stillturning.parts.element.Element;
import stillturning.quantity.Formats;
import stillturning.reliability.groundtest.Configuration;
import stillturning.reliability.groundtest.GroundTest;
import stillturning.reliability.groundtest.InstrumentReading.MeasuredQuantity;
import stillturning.reliability.groundtest.NotShown;
import stillturning.reliability.groundtest.NotShown.Why;
import stillturning.reliability.groundtest.Stage;
import stillturning.report.page.Block;
import stillturning.report.page.Block.Grid;
import stillturning.report.page.Block.Heading;
import stillturning.report.page.Block.Note;
import stillturning.report.page.Block.Points;
import stillturning.report.page.Block.Warning;
import stillturning.report.page.Block.Words;

/** The plan of one candidate, to be gone through with a pencil. */
public final class GroundTestSheet {

    /** More parts than this are counted. */
    private static final int MOST_NAMED = 4;

    private final PlannedTest test;
    private final StepWords said;
    private final List<Block> blocks = new ArrayList<>();

    private GroundTestSheet(PlannedTest test) {
        this.test = test;
        this.said = new StepWords(test);
    }

    /** The blocks, without a title and without the cautions that belong above them. */
    public static List<Block> of(PlannedTest test) {
        GroundTestSheet sheet = new GroundTestSheet(test);
        sheet.before();
        List<Stage> stages = test.plan().stages();
        for (int i = 0; i < stages.size(); i++) {
            sheet.heading(i + 1, stages.get(i));
            if (i > 0 && stages.get(i - 1).configuration() == stages.get(i).configuration()) {
                sheet.again(i);
            } else {
                sheet.ready(stages.get(i));
            }
            sheet.blocks.add(new Grid(GroundTestTables.steps(test, stages.get(i))));
        }
        sheet.notShown();
        return List.copyOf(sheet.blocks);
    }

    private void before() {
        GroundTest plan = test.plan();
        long shown =
                plan.steps().stream().flatMap(step -> step.shows().stream()).distinct().count();
        blocks.add(
                new Words(
                        plan.steps().size()
                                + " steps show "
                                + shown
                                + " of "
                                + (shown + plan.notShown().size())
                                + " single failures; the others stand at the end with the reason."
                                + " Each step begins and ends with all as in flight: do what is"
                                + " written, hold it "
                                + Formats.duration(plan.pace().heldSeconds())
                                + ", look, read and write, put it back, wait "
                                + Formats.duration(plan.pace().backSeconds())
                                + ", and see that all is as before; wait as long after switching a"
                                + " load. Where it is otherwise, stop and look for why."));
        blocks.add(
                new Note(
                        "Played in this order, at this pace and half as quickly: nothing is harmed,"
                                + " if nothing is wrong. Limits hold what both played, and "
                                + allowance(MeasuredQuantity.VOLTS, "V")
                                + " and "
                                + allowance(MeasuredQuantity.AMPS, "A")
                                + " for instruments and for what is stated of loads (guesses)."
                                + voltsAgainst()));
        blocks.add(
                new Warning(
                        "Before you begin",
                        List.of(
                                "Wheels chocked, a fire extinguisher and somebody at the master"
                                        + " switch.",
                                "With the engine at rest ignition and fuel pumps are live: nobody"
                                        + " touches the propeller, and fuel lines are looked at for"
                                        + " leaks.",
                                "Cover every end that you take off, and keep what was on one stud"
                                        + " together.",
                                "Leads come off while current flows: air batteries that were just"
                                        + " charged first, since a spark lights their gas.",
                                "While the propeller turns, only switches and breakers are"
                                        + " touched.")));
    }

    /**
     * Lifted off, a ground takes what hangs on it away from where returns meet, and its volts too.
     */
    private String voltsAgainst() {
        List<Integer> meetings = test.candidate().circuit().returns().all();
        return " Volts are against the "
                + meetings.stream().map(this::meeting).collect(Collectors.joining(" or the "))
                + (meetings.size() == 1
                        ? ": the meter's minus is on it, not on what is lifted off it."
                        : ", whichever leads back what is measured: nothing joins them, and from"
                                + " one to the other a meter shows nothing. Its minus is on that,"
                                + " not on what is lifted off it.");
    }

    private String meeting(int net) {
        Circuit circuit = test.candidate().circuit();
        return net == 0
                ? "structure"
                : test.candidate()
                        .all(Part.Role.GROUND)
                        .filter(g -> circuit.net(g.id(), g.entry()) == net)
                        .map(g -> g.tag().label())
                        .findFirst()
                        .orElseGet(() -> minus(circuit, net));
    }

    private String minus(Circuit circuit, int net) {
        return circuit.placed().stream()
                .filter(p -> p.element().role() == Element.Role.BATTERY && p.to() == net)
                .map(p -> "minus of " + test.candidate().part(p.part()).orElseThrow().tag().label())
                .findFirst()
                .orElse("minus of its source");
    }

    private static String allowance(MeasuredQuantity of, String unit) {
        return StepWords.shown(of, of.allowance(0))
                + " "
                + unit
                + " with "
                + Formats.fixed(100 * (of.allowance(1) - of.allowance(0)), 0)
                + " %";
    }

    private void heading(int number, Stage stage) {
        String configuration = StepWords.configuration(stage.configuration());
        blocks.add(new Heading("Stage " + number + ": " + configuration));
    }

    private void again(int before) {
        blocks.add(
                new Words(
                        "Charge the batteries again; everything else, and what reads before the"
                                + " first step, as in stage "
                                + before
                                + "."));
    }

    private void ready(Stage stage) {
        List<String> ready = new ArrayList<>();
        if (stage.charged()) {
            ready.add("Batteries charged as the study states.");
        }
        ready.add(
                stage.configuration() == Configuration.ENGINE_RUNNING
                        ? "Engine running as in " + test.plan().phase() + "."
                        : "Engine at rest; everything on that is on in flight.");
        if (!said.levers().isEmpty()) {
            ready.add("Levers: " + said.levers() + ".");
        }
        if (!stage.off().isEmpty()) {
            ready.add("Off at their own switches: " + said.all(stage.off()) + ".");
        }
        ready.add(
                stage.showing().isEmpty()
                        ? "No sign shows."
                        : "Shows all the time: " + said.all(stage.showing()) + ".");
        blocks.add(new Words(String.join(" ", ready)));
        blocks.add(
                new Block.Boxes(
                        List.of(
                                "Before the first step: "
                                        + stage.readings().stream()
                                                .map(r -> said.reading(r) + " ____")
                                                .collect(Collectors.joining("; ")))));
    }

    private void notShown() {
        Map<Why, List<NotShown>> byReason = new LinkedHashMap<>();
        for (Why why : Why.values()) {
            List<NotShown> those =
                    test.plan().notShown().stream().filter(n -> n.why() == why).toList();
            if (!those.isEmpty()) {
                byReason.put(why, those);
            }
        }
        if (byReason.isEmpty()) {
            return;
        }
        blocks.add(new Heading("Not shown on the ground"));
        byReason.forEach(
                (why, those) -> {
                    blocks.add(new Words(capital(StepWords.why(why)) + ":"));
                    blocks.add(new Points(points(those)));
                });
    }

    /** Failures of one kind on one line; those that do harm by what they do. */
    private List<String> points(List<NotShown> those) {
        Map<String, List<String>> alike = new LinkedHashMap<>();
        for (NotShown not : those) {
            int colon = not.failure().indexOf(": ");
            String part = said.of(not.failure().substring(0, colon));
            String mode = not.failure().substring(colon + 2);
            alike.computeIfAbsent(
                            not.harm()
                                    .map(harm -> said.of(harm.part()) + " " + harm.words())
                                    .orElse(mode),
                            key -> new ArrayList<>())
                    .add(not.harm().isPresent() ? part + " " + mode : part);
        }
        return alike.entrySet().stream()
                .map(
                        e ->
                                e.getKey()
                                        + ": "
                                        + (e.getValue().size() > MOST_NAMED
                                                ? e.getValue().size() + " parts"
                                                : String.join(", ", e.getValue())))
                .toList();
    }

    private static String capital(String text) {
        return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
    }
}
