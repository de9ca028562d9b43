package stillturning.desktop.viewmodel.decide;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.Consumer;
import stillturning.assess.front.SearchLimits;
import stillturning.assess.front.SearchWatch;
import stillturning.assess.front.Tally;
import stillturning.assess.front.TrialResult;
import stillturning.desktop.draft.Draft;
import stillturning.desktop.viewmodel.BackgroundWork.Work;
import stillturning.desktop.viewmodel.BackgroundWork.WorkHandle;
import stillturning.desktop.viewmodel.offer.OfferedDrawing;
import stillturning.dossier.exploration.Exploration;
import stillturning.dossier.exploration.Explored;
import stillturning.files.ReadStudy;
import stillturning.files.StudyReader;
import stillturning.files.edit.ChangeRefused;
import stillturning.files.move.Drawn;
import stillturning.model.Candidate;
import stillturning.model.goal.CriterionName;
import stillturning.quantity.Formats;
import stillturning.report.explored.ExploredFront;
import stillturning.report.explored.ExploredFront.ExploredLayout;
import stillturning.report.explored.FrontBlocks;

/**
 * Looks for layouts that nothing outdoes.
 *
 * @param minutes how long it may take (min)
 * @param stop ends it with what is found by then
 * @param memory of earlier searches
 * @param growing takes what is found by then, on the screen's thread
 */
record ExploreWork(
        Draft draft,
        SearchLimits most,
        int minutes,
        AtomicBoolean stop,
        TrialMemory memory,
        Consumer<GrowingFront> growing)
        implements Work<ExploreWork.HeldFront> {

    private static final Clock CLOCK = Clock.systemUTC();

    /**
     * What was found.
     *
     * @param offers everything on the front that was not drawn before, by its name
     * @param fingerprint of the texts that it was found from
     */
    record HeldFront(ExploredFront front, List<OfferedDrawing> offers, String fingerprint) {
        HeldFront {
            offers = List.copyOf(offers);
        }
    }

    @Override
    public HeldFront done(WorkHandle progress) throws ChangeRefused {
        StudyReader reader = draft.reader();
        ReadStudy read = reader.reading().read();
        if (read.study().isEmpty()) {
            throw new ChangeRefused("a file of the study has a mistake; mend it first");
        }
        Instant end = CLOCK.instant().plus(Duration.ofMinutes(minutes));
        SearchWatch watch =
                new Told(
                        progress,
                        stop,
                        new TimeSpan(CLOCK.instant(), end),
                        memory.of(read.fingerprint()),
                        growing);
        Explored found = Exploration.of(reader, read, Exploration.USUALLY_BY, most, watch);
        return new HeldFront(found.front(), offers(found), read.fingerprint());
    }

    private static List<OfferedDrawing> offers(Explored found) throws ChangeRefused {
        FrontBlocks words = new FrontBlocks(found.front());
        List<OfferedDrawing> offers = new ArrayList<>();
        for (ExploredLayout layout : found.front().front()) {
            Drawn drawn = found.drawn().get(layout.id());
            if (drawn != null) {
                String id = drawn.candidate().id();
                Candidate before = drawn.study().candidate(id).orElse(drawn.candidate());
                offers.add(
                        new OfferedDrawing(
                                layout.id() + ", from " + words.origin(layout),
                                words.about(layout),
                                before,
                                drawn,
                                layout.id(),
                                found.file(layout.id()).text()));
            }
        }
        return offers;
    }

    /** Everything that the picture shows: the candidates, then what was found. */
    static List<TradeOff.Valued> valued(
            ExploredFront front, CriterionName across, CriterionName upwards) {
        Set<String> drawn = new HashSet<>();
        List<TradeOff.Valued> all = new ArrayList<>();
        for (ExploredLayout layout : front.drawings()) {
            drawn.add(layout.id());
            all.add(valued(front, layout, new CriterionName[] {across, upwards}, false));
        }
        for (ExploredLayout layout : front.front()) {
            if (!drawn.contains(layout.id())) {
                all.add(valued(front, layout, new CriterionName[] {across, upwards}, true));
            }
        }
        return all;
    }

    private static TradeOff.Valued valued(
            ExploredFront front, ExploredLayout layout, CriterionName[] axes, boolean found) {
        return new TradeOff.Valued(
                layout.id(),
                found ? layout.id() : front.of(layout).candidate().title(),
                front.missed(layout).size(),
                front.value(layout, axes[0]),
                front.value(layout, axes[1]),
                found);
    }

    /** When it began, and when its time is up. */
    private record TimeSpan(Instant begun, Instant end) {
        double gone() {
            return Math.min(1, (double) millis(CLOCK.instant()) / millis(end));
        }

        boolean over() {
            return CLOCK.instant().isAfter(end);
        }

        private long millis(Instant until) {
            return Duration.between(begun, until).toMillis();
        }
    }

    /** Tells how far it is and what is found, and ends it when its time is up. */
    private record Told(
            WorkHandle progress,
            AtomicBoolean stop,
            TimeSpan time,
            Map<String, TrialResult> trials,
            Consumer<GrowingFront> growing)
            implements SearchWatch {

        @Override
        public Optional<TrialResult> known(String way) {
            return Optional.ofNullable(trials.get(way));
        }

        @Override
        public void done(String way, TrialResult trial) {
            trials.put(way, trial);
        }

        @Override
        public void seen(Tally tally, List<List<Double>> front) {
            GrowingFront now = new GrowingFront(front);
            progress.show(() -> growing.accept(now));
            progress.report(
                    time.gone(),
                    Formats.count(tally.tried() + tally.outdone())
                            + " layouts looked at, "
                            + Formats.count(tally.met())
                            + " meet everything, "
                            + front.size()
                            + " on the front");
        }

        @Override
        public boolean enough() {
            return stop.get() || time.over();
        }
    }
}
