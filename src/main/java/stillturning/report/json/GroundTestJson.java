package stillturning.report.json;

import static stillturning.report.json.JsonTypes.TEXT;

import stillturning.model.Candidate.Hit;
import stillturning.reliability.groundtest.Configuration;
import stillturning.reliability.groundtest.Expected.Inputs;
import stillturning.reliability.groundtest.Hand;
import stillturning.reliability.groundtest.InstrumentReading;
import stillturning.reliability.groundtest.NotShown;
import stillturning.reliability.groundtest.Stage;
import stillturning.reliability.groundtest.TestStep;
import stillturning.report.groundtest.PlannedTest;
import stillturning.story.PilotView;

/** Plans of tests on the ground. */
final class GroundTestJson {

    private static final JsonShape<InstrumentReading> READING =
            JsonShape.<InstrumentReading>named("reading")
                    .word("of", InstrumentReading.MeasuredQuantity.class, InstrumentReading::of)
                    .text("at", InstrumentReading::at)
                    .says("Bus, source or load.")
                    .number("predicted", InstrumentReading::predicted)
                    .says("V, A or s, as played at the printed pace.")
                    .number("least", InstrumentReading::low)
                    .number("most", InstrumentReading::high);

    private static final JsonShape<Inputs> INPUTS =
            JsonShape.<Inputs>named("inputs")
                    .text("load", Inputs::load)
                    .texts("carrying", Inputs::carrying)
                    .says("Inputs that then carry current.");

    private static final JsonShape<TestStep> STEP =
            JsonShape.<TestStep>named("step")
                    .whole("number", TestStep::number)
                    .word("way", Hand.HandWay.class, s -> s.hand().way())
                    .text("part", s -> s.hand().part())
                    .text("terminal", s -> s.hand().terminal())
                    .says("Of the part, where something is taken off it; else empty.")
                    .map("levers", TEXT, s -> s.hand().levers())
                    .texts("apart", s -> s.hand().apart().stream().map(Hit::part).toList())
                    .says("Parts that are taken off or taken out.")
                    .maybe("switchedOn", TEXT, TestStep::switchedOn)
                    .says("Load that is switched on for it.")
                    .texts("dark", s -> s.expected().dark())
                    .texts("stayOn", s -> s.expected().stayOn())
                    .says("Loads of the engine that work on.")
                    .texts("onTheirOwnBattery", s -> s.expected().ownBattery())
                    .texts("cues", s -> s.expected().cues())
                    .texts("cuesOut", s -> s.expected().cuesOut())
                    .list("inputs", INPUTS, s -> s.expected().inputs())
                    .flag("engineNeedsMet", s -> s.expected().engine().needsMet())
                    .word("engine", PilotView.EngineSound.class, s -> s.expected().engine().heard())
                    .says("What is heard of it where it runs.")
                    .list("readings", READING, TestStep::readings)
                    .texts("shows", TestStep::shows)
                    .says("Single failures that it shows.");

    private static final JsonShape<Stage> STAGE =
            JsonShape.<Stage>named("stage")
                    .word("configuration", Configuration.class, Stage::configuration)
                    .flag("batteriesCharged", Stage::charged)
                    .says("Whether batteries are charged as stated before it begins.")
                    .texts("off", Stage::off)
                    .texts("showing", Stage::showing)
                    .list("readings", READING, Stage::readings)
                    .says("Before the first step.")
                    .list("steps", STEP, Stage::steps);

    private static final JsonShape<NotShown> NOT_SHOWN =
            JsonShape.<NotShown>named("notShown")
                    .text("failure", NotShown::failure)
                    .word("why", NotShown.Why.class, NotShown::why)
                    .maybe(
                            "harm",
                            TEXT,
                            n -> n.harm().map(event -> event.part() + " " + event.words()));

    private static final JsonShape<PlannedTest> PLAN =
            JsonShape.<PlannedTest>named("plan")
                    .text("candidate", t -> t.candidate().id())
                    .text("runningAsIn", t -> t.plan().phase())
                    .number("heldSeconds", t -> t.plan().pace().heldSeconds())
                    .number("backSeconds", t -> t.plan().pace().backSeconds())
                    .list("stages", STAGE, t -> t.plan().stages())
                    .list("notShown", NOT_SHOWN, t -> t.plan().notShown());

    static final JsonDocument<StudyAnswer<PlannedTest>> GROUND_TESTS =
            new JsonDocument<>(
                    "Ground test plans",
                    "What can be shown of each candidate on the ground, step by step.",
                    StudyAnswer.list("plans", PLAN));

    private GroundTestJson() {}
}
