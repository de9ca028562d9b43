package stillturning.report.page;

import java.util.List;
import java.util.Optional;

/**
 * The whole page, from top to bottom.
 *
 * @param front what stands alone above everything else, as on paper
 * @param explorer what lets a reader ask the page, if it can be asked
 */
public record Page(
        PageHead head,
        List<Document.Chapter> front,
        AnswerSection answer,
        Optional<CaseTable> cases,
        RankingSection comparison,
        List<CandidateSheet> candidates,
        Matrix matrix,
        List<StoryChapter> chapters,
        List<Departure> departures,
        Foot foot,
        Optional<ExplorerSection> explorer) {

    /** What this page may do, as a policy for content says it. */
    public String policy() {
        return "default-src 'none'; style-src 'unsafe-inline'; base-uri 'none'; form-action 'none'"
                + explorer.map(e -> "; script-src '" + e.hash() + "'").orElse("");
    }

    /** A labelled fact. */
    public record Fact(String label, String value) {}

    /** A link inside the page; empty for none. */
    public record Link(String words, String anchor) {}

    /**
     * Title, what it is about, and what must be known before reading on.
     *
     * @param rationale the builder's own paragraphs
     */
    public record PageHead(
            String title,
            String about,
            List<Fact> facts,
            List<String> rationale,
            List<String> cautions) {
        public PageHead {
            rationale = List.copyOf(rationale);
            facts = List.copyOf(facts);
            cautions = List.copyOf(cautions);
        }
    }

    /**
     * The answer first.
     *
     * @param unwell candidates to which something happens although nothing fails
     * @param untold candidates of which something could not be computed
     */
    public record AnswerSection(
            String lead,
            String why,
            List<Link> candidates,
            List<RequirementRow> requirements,
            List<Fact> unwell,
            List<Fact> untold) {
        public AnswerSection {
            untold = List.copyOf(untold);
            unwell = List.copyOf(unwell);
            candidates = List.copyOf(candidates);
            requirements = List.copyOf(requirements);
        }
    }

    /** One hard requirement across the candidates. */
    public record RequirementRow(String requirement, List<MetMark> cells) {
        public RequirementRow {
            cells = List.copyOf(cells);
        }
    }

    /** Whether one candidate meets one requirement, and why. */
    public record MetMark(boolean met, String reason) {}

    /**
     * What happens in the study's own cases.
     *
     * @param meanings what each case means in which candidate
     */
    public record CaseTable(List<Link> candidates, List<CaseRow> rows, List<Fact> meanings) {
        public CaseTable {
            candidates = List.copyOf(candidates);
            rows = List.copyOf(rows);
            meanings = List.copyOf(meanings);
        }
    }

    /** One case; cells in the candidates' order. */
    public record CaseRow(String said, List<CaseCell> cells) {
        public CaseRow {
            cells = List.copyOf(cells);
        }
    }

    /** What the case does to one candidate; the anchor of its story, empty for none. */
    public record CaseCell(OutcomeSign mark, List<Fact> facts, String anchor) {
        public CaseCell {
            facts = List.copyOf(facts);
        }
    }

    /**
     * The ranking with everything that it rests on.
     *
     * @param behind chapters that go into it further
     */
    public record RankingSection(
            List<CriterionHead> criteria,
            List<RankingRow> rows,
            List<Block> scales,
            List<Fact> reasons,
            RankShareTable shares,
            List<String> unseating,
            List<Fact> unassessed,
            List<Document.Chapter> behind) {
        public RankingSection {
            criteria = List.copyOf(criteria);
            rows = List.copyOf(rows);
            scales = List.copyOf(scales);
            reasons = List.copyOf(reasons);
            unseating = List.copyOf(unseating);
            unassessed = List.copyOf(unassessed);
            behind = List.copyOf(behind);
        }
    }

    /** A criterion's name and weight. */
    public record CriterionHead(String name, String weight) {}

    /** One candidate in the ranking. */
    public record RankingRow(
            String rank, Link candidate, String points, List<ScoreCell> shares, String marks) {
        public RankingRow {
            shares = List.copyOf(shares);
        }
    }

    /**
     * A value, and what it adds.
     *
     * @param fill share of the criterion's weight that is reached, in per cent
     */
    public record ScoreCell(String value, String points, String fill) {}

    /** How often each candidate takes each rank. */
    public record RankShareTable(List<String> ranks, List<RankShareRow> rows, String note) {
        public RankShareTable {
            ranks = List.copyOf(ranks);
            rows = List.copyOf(rows);
        }
    }

    /** One candidate's shares, and whose weights put it first. */
    public record RankShareRow(String candidate, List<String> shares, String favouredBy) {
        public RankShareRow {
            shares = List.copyOf(shares);
        }
    }

    /**
     * One candidate on its own.
     *
     * @param drawing as SVG text
     * @param beside what is looked at beside the failures
     */
    public record CandidateSheet(
            String anchor,
            String title,
            String about,
            String drawing,
            List<Fact> grounds,
            List<Fact> burdens,
            CountList counts,
            List<Fact> flight,
            List<FactGroup> beside,
            List<OutcomeList> outcomes,
            PairTable pairs) {
        public CandidateSheet {
            beside = List.copyOf(beside);
            grounds = List.copyOf(grounds);
            burdens = List.copyOf(burdens);
            flight = List.copyOf(flight);
            outcomes = List.copyOf(outcomes);
        }
    }

    /** Protectors of which the wrong one may open first. */
    public record PairTable(String meaning, List<PairRow> rows) {
        public PairTable {
            rows = List.copyOf(rows);
        }
    }

    /** One pair, and the worst that may come of it. */
    public record PairRow(List<String> cells) {
        public PairRow {
            cells = List.copyOf(cells);
        }
    }

    /** Facts under a heading. */
    public record FactGroup(String heading, List<Fact> facts) {
        public FactGroup {
            facts = List.copyOf(facts);
        }
    }

    /** Counts and their stated sum. */
    public record CountList(List<Fact> items, String sum) {
        public CountList {
            items = List.copyOf(items);
        }
    }

    /**
     * Single failures of one outcome.
     *
     * @param mild whether paper need not name them one by one
     */
    public record OutcomeList(
            OutcomeSign mark, String words, int count, boolean mild, List<Link> failures) {
        public OutcomeList {
            failures = List.copyOf(failures);
        }
    }

    /** An outcome as sign, word and style class. */
    public record OutcomeSign(String sign, String word, String style) {}

    /** Failure by candidate, in parts from grave to mild. */
    public record Matrix(List<Link> candidates, List<Fact> legend, List<MatrixPart> parts) {
        public Matrix {
            candidates = List.copyOf(candidates);
            legend = List.copyOf(legend);
            parts = List.copyOf(parts);
        }
    }

    /** Some of the rows under one heading. */
    public record MatrixPart(String heading, boolean open, List<MatrixGroup> groups) {
        public MatrixPart {
            groups = List.copyOf(groups);
        }
    }

    /** Rows of one kind of part. */
    public record MatrixGroup(String kind, List<MatrixRow> rows) {
        public MatrixGroup {
            rows = List.copyOf(rows);
        }
    }

    /** One failure; cells in the candidates' order. */
    public record MatrixRow(String failure, List<MatrixCell> cells) {
        public MatrixRow {
            cells = List.copyOf(cells);
        }
    }

    /** What the failure does; everything empty where the candidate has no such part. */
    public record MatrixCell(OutcomeSign mark, String endurance, String anchor) {}

    /** Stories of one candidate. */
    public record StoryChapter(String title, String anchor, List<StorySheet> stories) {
        public StoryChapter {
            stories = List.copyOf(stories);
        }
    }

    /**
     * One story.
     *
     * @param alike further failures that take the same course
     * @param plot as SVG text
     */
    public record StorySheet(
            String anchor,
            String failure,
            OutcomeSign mark,
            List<String> alike,
            List<EventRow> events,
            String plot,
            List<Fact> ending) {
        public StorySheet {
            alike = List.copyOf(alike);
            events = List.copyOf(events);
            ending = List.copyOf(ending);
        }
    }

    /** One event; the cause is the number of another, empty for none. */
    public record EventRow(String number, String time, String event, String because) {}

    /** How a candidate departs from the baseline. */
    public record Departure(String candidate, List<Fact> differences) {
        public Departure {
            differences = List.copyOf(differences);
        }
    }

    /**
     * The sizes, what failures do together if that was asked, which guesses matter, what became of
     * layouts that have failed, where values come from, what to mind, and which files were read.
     */
    public record Foot(
            String baseline,
            SizeSection sizes,
            Optional<JointSection> together,
            Optional<GuessSection> guesses,
            List<Document.Chapter> chapters,
            List<AssumptionGroup> assumptions,
            List<String> cautions,
            String fingerprint) {
        public Foot {
            chapters = List.copyOf(chapters);
            assumptions = List.copyOf(assumptions);
            cautions = List.copyOf(cautions);
        }
    }

    /** Which guesses matter. */
    public record GuessSection(
            String method, String lower, String higher, List<GuessRow> rows, List<String> rest) {
        public GuessSection {
            rows = List.copyOf(rows);
            rest = List.copyOf(rest);
        }
    }

    /**
     * A guess that matters, and what another value does.
     *
     * @param likely chance that it turns an answer, and what knowing it is worth
     * @param finding how to find it out
     */
    public record GuessRow(
            String file,
            String path,
            String value,
            String likely,
            String ifLess,
            String ifMore,
            String finding) {}

    /** Values of one origin. */
    public record AssumptionGroup(String origin, boolean open, List<AssumptionRow> rows) {
        public AssumptionGroup {
            rows = List.copyOf(rows);
        }
    }

    /** One value. */
    public record AssumptionRow(String file, String path, String text, String note) {}

    public Page {
        front = List.copyOf(front);
        candidates = List.copyOf(candidates);
        chapters = List.copyOf(chapters);
        departures = List.copyOf(departures);
    }
}
