package stillturning.story;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import stillturning.model.CountsFrom;
import stillturning.model.Landing;
import stillturning.model.failure.Failure;

/**
 * Everything that follows from one failure in one candidate, in one setting.
 *
 * @param happenings events in order of time
 * @param engine what became of the engine
 * @param aftermath what still works once the quick events are over
 * @param measured what was measured on the way
 * @param endSeconds when the telling stops (s)
 */
public record Story(
        Failure failure,
        Moment moment,
        Setting setting,
        List<StoryEvent> happenings,
        EngineFate engine,
        Aftermath aftermath,
        Measurements measured,
        double endSeconds) {

    public Story {
        happenings = List.copyOf(happenings);
    }

    /**
     * What was measured on the way.
     *
     * @param contests what gave way by too much current, and what might have instead
     * @param traces voltages of the buses and charges of the batteries
     * @param bars what the engine and each load of its logic were doing, the engine first
     * @param balance where the energy came from and where it went
     * @param doubtfullySteadied alternators that half or twice the largest resistance behind which
     *     a battery steadies them would have made out otherwise
     */
    public record Measurements(
            List<TripContest> contests,
            List<Trace> traces,
            List<StateBar> bars,
            Balance balance,
            Set<String> doubtfullySteadied) {
        public Measurements {
            contests = List.copyOf(contests);
            traces = List.copyOf(traces);
            bars = List.copyOf(bars);
            doubtfullySteadied = Set.copyOf(doubtfullySteadied);
        }
    }

    /** What gave way by too much current, and what might have instead. */
    public List<TripContest> contests() {
        return measured.contests;
    }

    /** Voltages of the buses and charges of the batteries. */
    public List<Trace> traces() {
        return measured.traces;
    }

    /** What the engine and each load of its logic were doing, the engine first. */
    public List<StateBar> bars() {
        return measured.bars;
    }

    /** Where the energy came from and where it went. */
    public Balance balance() {
        return measured.balance;
    }

    /**
     * What became of the engine.
     *
     * @param endurance how long it can run, times left out in which the flight has it off
     * @param sign the first that the pilot can notice; empty if there is nothing to notice
     * @param ranUnnoticedSeconds how long it has run until then, or until the telling stops (s)
     * @param longestInterruptionSeconds longest time that its needs were not met without stopping
     *     it (s), 0 for none
     * @param stops how often it stopped
     * @param runningAtEnd whether it runs when the telling stops
     */
    public record EngineFate(
            Endurance endurance,
            Optional<FirstSign> sign,
            double ranUnnoticedSeconds,
            double longestInterruptionSeconds,
            int stops,
            boolean runningAtEnd) {

        /**
         * Seconds for comparisons, as {@link Endurance#seconds}, from the moment from which time
         * counts.
         */
        public double lastsFrom(CountsFrom from) {
            double seconds = endurance.seconds();
            return endurance.ends() && from == CountsFrom.FIRST_SIGN
                    ? seconds - Math.min(seconds, ranUnnoticedSeconds)
                    : seconds;
        }

        /** Whether it stops before the aircraft has landed. */
        public boolean misses(Landing landing) {
            return landing.isMissed(lastsFrom(landing.countsFrom()), endurance.seconds());
        }

        /** When the first sign comes (s); infinite for never. */
        public double signSeconds() {
            return sign.map(FirstSign::seconds).orElse(Double.POSITIVE_INFINITY);
        }

        /** Endurance by which two stories may differ through the charge of one run of a motor. */
        private static final double ONE_RUN = 0.9;

        /** Whether the engine fares worse than in another story of the same failure. */
        public boolean isWorseThan(EngineFate other) {
            double lasts = endurance.seconds();
            double otherLasts = other.endurance.seconds();
            if (lasts < ONE_RUN * otherLasts || otherLasts < ONE_RUN * lasts) {
                return lasts < otherLasts;
            }
            return stops == other.stops
                    ? longestInterruptionSeconds > other.longestInterruptionSeconds
                    : stops > other.stops;
        }

        /** Whether it stopped and ran again. */
        public boolean stoppedAndCameBack() {
            return stops > (runningAtEnd ? 0 : 1);
        }

        /** Whether it faltered or stopped, and went on. */
        public boolean interrupted() {
            return stoppedAndCameBack() || longestInterruptionSeconds > 0;
        }
    }

    /**
     * What works once the quick events are over and before batteries run down.
     *
     * @param working loads that work, or that the pilot has switched off
     * @param feeds which source can reach which input of a load
     * @param actedPilot whether a procedure was carried out
     */
    public record Aftermath(Set<String> working, Set<Feed> feeds, boolean actedPilot) {
        public Aftermath {
            working = Set.copyOf(working);
            feeds = Set.copyOf(feeds);
        }
    }

    /** A source that can reach an input of a load. */
    public record Feed(String source, String load, String input) {}

    /** The pilot of the setting. */
    public Pilot pilot() {
        return setting.pilot();
    }

    /** Why it cannot be told on to its end, if so. */
    public Optional<String> untold() {
        return engine.endurance() instanceof Endurance.Untold untold
                ? Optional.of(untold.reason())
                : Optional.empty();
    }

    /** The same events in the same order, at times no further apart than rounding puts them. */
    public boolean isCourseOf(Story other) {
        return happenings.size() == other.happenings.size()
                && IntStream.range(0, happenings.size())
                        .allMatch(n -> happenings.get(n).isRoundedTo(other.happenings.get(n)));
    }

    /** Whether an event of it happens at a time (s), but for rounding. */
    public boolean hasEventAt(double seconds) {
        return happenings.stream().anyMatch(event -> event.isAt(seconds));
    }

    /** Events of one kind. */
    public List<StoryEvent> of(StoryEvent.Kind kind) {
        return happenings.stream().filter(h -> h.kind() == kind).toList();
    }
}
