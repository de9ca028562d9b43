package stillturning.reliability.groundtest;

import java.util.List;
import stillturning.story.PilotView;

/**
 * What must happen in a step; lists in the order of the study and of the candidate.
 *
 * @param dark loads that are on and stop working
 * @param stayOn loads of the engine that work on
 * @param ownBattery loads that go over to a battery of their own
 * @param cues signs that come
 * @param cuesOut signs that go
 * @param inputs of loads with several: which carry current, where that changes
 * @param engine what becomes of the engine
 */
public record Expected(
        List<String> dark,
        List<String> stayOn,
        List<String> ownBattery,
        List<String> cues,
        List<String> cuesOut,
        List<Inputs> inputs,
        ExpectedEngine engine) {

    /**
     * Which inputs of a load carry current.
     *
     * @param carrying those that do
     */
    public record Inputs(String load, List<String> carrying) {
        public Inputs {
            carrying = List.copyOf(carrying);
        }
    }

    /**
     * The engine.
     *
     * @param needsMet whether everything works that it needs
     * @param heard what it does, where it runs
     */
    public record ExpectedEngine(boolean needsMet, PilotView.EngineSound heard) {}

    public Expected {
        dark = List.copyOf(dark);
        stayOn = List.copyOf(stayOn);
        ownBattery = List.copyOf(ownBattery);
        cues = List.copyOf(cues);
        cuesOut = List.copyOf(cuesOut);
        inputs = List.copyOf(inputs);
    }
}
