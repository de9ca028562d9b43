package stillturning.story;

import java.util.List;

/**
 * What the engine or a load that it needs was doing, without a gap from the failure to the end of
 * the story.
 *
 * @param name {@code engine}, or the load
 */
public record StateBar(String name, List<StateSpan> spans) {

    public StateBar {
        spans = List.copyOf(spans);
    }

    /** One state from a time (s) to another. */
    public record StateSpan(double fromSeconds, double toSeconds, Activity doing) {}

    /** What something is doing. */
    public enum Activity {
        /** The engine's needs are met. */
        RUNS("runs"),
        /** They are not, and the engine still turns by itself. */
        FALTERS("falters"),
        /** The load does its work. */
        WORKS("works"),
        /** It rides through with less than its minimum voltage. */
        STARVED("starved"),
        /** Engine or load has stopped, or is on its way back. */
        STOPPED("stopped"),
        /**
         * The load is shed, or not in use in this phase; the engine is off as the flight has it.
         */
        SWITCHED_OFF("switched off");

        private final String words;

        Activity(String words) {
            this.words = words;
        }

        /** In words. */
        public String words() {
            return words;
        }
    }
}
