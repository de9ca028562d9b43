package stillturning.cli.breaking;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import stillturning.assess.ranges.EnduranceRange;
import stillturning.assess.verdict.Outcome;
import stillturning.cli.breaking.Stories.ToldFailure;
import stillturning.cli.breaking.Stories.UntoldFailure;
import stillturning.cli.terminal.Output;
import stillturning.model.Candidate;
import stillturning.quantity.Formats;
import stillturning.report.PrintedNames;
import stillturning.report.ResultText;
import stillturning.report.StoryText;
import stillturning.report.table.Column;
import stillturning.report.table.Table;
import stillturning.report.table.TerminalColour.Ink;
import stillturning.report.table.TextTable;
import stillturning.report.terminal.RangeText;
import stillturning.story.Moment.FlightSpan;
import stillturning.story.Story;
import stillturning.story.StoryEvent;
import stillturning.story.StoryEvent.Kind;

/** Stories for a person: in full for one candidate, side by side and in short for several. */
final class StoriesText {

    private static final int MOST_EVENTS = 8;

    private static final Set<Kind> TELLING =
            EnumSet.of(
                    Kind.FAILURE,
                    Kind.PROTECTOR_OPENS,
                    Kind.WIRE_OVERHEATS,
                    Kind.WIRE_MELTS,
                    Kind.GUARD_SHORTS,
                    Kind.LOAD_STARTS,
                    Kind.BATTERY_EMPTY,
                    Kind.BATTERY_DISCONNECTS,
                    Kind.BATTERY_RECONNECTS,
                    Kind.BATTERY_GASSES,
                    Kind.BATTERIES_EQUALISE,
                    Kind.SOURCE_STOPS,
                    Kind.SOURCE_UNSTEADY,
                    Kind.LOAD_DUMP,
                    Kind.PILOT,
                    Kind.CRANKING,
                    Kind.ENGINE_INTERRUPTED,
                    Kind.ENGINE_RECOVERS,
                    Kind.ENGINE_STOPS,
                    Kind.ENGINE_RESTARTS,
                    Kind.CHATTER,
                    Kind.UNTOLD);

    private final Stories stories;
    private final List<EnduranceRange> ranges;
    private final Output out;

    /**
     * @param ranges one a told story, or none
     */
    StoriesText(Stories stories, List<EnduranceRange> ranges, Output out) {
        this.stories = stories;
        this.ranges = ranges;
        this.out = out;
    }

    /**
     * Tells them: several candidates' in short, unless pictures show their numbered events.
     *
     * @param drawn what was drawn into which file
     */
    void tell(List<String> drawn) {
        if (stories.compared()) {
            out.paragraph(introduction()).line("").lines(table());
        }
        if (stories.compared() && drawn.isEmpty()) {
            shortStories();
        } else {
            fullStories();
        }
        ranges.forEach(
                range -> {
                    out.section("How sure that is: " + range.failure());
                    RangeText.of(range).forEach(l -> out.paragraph("  ", l));
                });
        stories.untold().forEach(this::untold);
        if (!drawn.isEmpty()) {
            out.line("").lines(drawn);
        }
    }

    private void untold(UntoldFailure story) {
        out.line("")
                .paragraph(
                        story.candidate()
                                + ", "
                                + story.failure()
                                + ": cannot be computed: "
                                + story.reason());
    }

    private String introduction() {
        String flown =
                stories.moment().span() == FlightSpan.FLOWN
                        ? "the failure comes as "
                                + stories.moment().phase()
                                + " begins, and the rest"
                                + " of the flight is flown"
                        : "the failure comes in " + stories.moment().phase() + ", which then lasts";
        return "Pilot "
                + stories.pilot().words()
                + "; "
                + flown
                + ". How long the engine runs, by pilot:";
    }

    private void fullStories() {
        out.line("").paragraph(StoryText.READING);
        for (ToldFailure told : stories.told()) {
            out.section(told.candidate().title())
                    .lines(
                            StoryText.of(
                                    told.verdict(),
                                    stories.pilot(),
                                    stories.lasting(told),
                                    new PrintedNames(told.candidate())));
        }
    }

    private List<String> table() {
        Function<ToldFailure, Outcome> outcome = t -> t.verdict().outcome(stories.pilot());
        List<Column<ToldFailure>> columns =
                List.of(
                        Column.<ToldFailure>words("candidate", 24, t -> t.candidate().title())
                                .ink(t -> Ink.STRONG)
                                .once(),
                        Column.words("failure", 22, t -> t.verdict().failure().name()),
                        Column.<ToldFailure>words("outcome", 20, t -> outcome.apply(t).words())
                                .ink(t -> ink(outcome.apply(t))),
                        endurance("pilot as planned", t -> t.verdict().planned()),
                        endurance("pilot late", t -> t.verdict().late()),
                        endurance("pilot never", t -> t.verdict().unaided()),
                        Column.figures(
                                "acts by",
                                7,
                                t -> t.verdict().actBySeconds().map(Formats::lasting).orElse("-")));
        return TextTable.lines(new Table<>(columns, stories.told()), out.paint());
    }

    private static Column<ToldFailure> endurance(String head, Function<ToldFailure, Story> told) {
        return Column.figures(
                head, 8, t -> ResultText.endurance(told.apply(t).engine().endurance()));
    }

    private static Ink ink(Outcome outcome) {
        if (outcome.compareTo(Outcome.STOPS_UNTIL_PILOT_ACTS) <= 0) {
            return Ink.ALARM;
        }
        return outcome.compareTo(Outcome.INTERRUPTED) <= 0 ? Ink.WARNING : Ink.PLAIN;
    }

    /** The worst of each candidate. */
    private void shortStories() {
        out.section("The worst of each in short");
        List<String> shown = new ArrayList<>();
        for (ToldFailure told : stories.told()) {
            if (!shown.contains(told.candidate().id())) {
                shown.add(told.candidate().id());
                out.line("  " + told.candidate().title());
                inShort(told.verdict().with(stories.pilot()), new PrintedNames(told.candidate()));
            }
        }
        String without =
                stories.without().stream().map(Candidate::title).collect(Collectors.joining("; "));
        if (!without.isEmpty()) {
            out.paragraph("  ", "Without such a part: " + without);
        }
    }

    private void inShort(Story story, PrintedNames names) {
        List<StoryEvent> events =
                story.happenings().stream().filter(h -> TELLING.contains(h.kind())).toList();
        events.stream().limit(MOST_EVENTS).forEach(e -> event(e, names));
        if (events.size() > MOST_EVENTS) {
            out.line(String.format(Locale.ROOT, "  %14s  and so on", "..."));
        }
    }

    private void event(StoryEvent happening, PrintedNames names) {
        boolean itself = happening.kind() == Kind.FAILURE;
        boolean act = happening.kind() == Kind.PILOT;
        String who = act ? "pilot, by " + happening.part() + ":" : happening.part();
        String words = (itself ? "" : who + " ") + happening.words();
        String time = happening.seconds() == 0 ? "0 ms" : Formats.duration(happening.seconds());
        out.paragraph(String.format(Locale.ROOT, "  %14s  ", time), names.in(words));
    }
}
