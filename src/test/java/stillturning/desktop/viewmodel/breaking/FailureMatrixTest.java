package stillturning.desktop.viewmodel.breaking;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import stillturning.assess.verdict.Outcome;
import stillturning.desktop.viewmodel.AreaName;
import stillturning.desktop.viewmodel.Destination;
import stillturning.desktop.viewmodel.breaking.FailureMatrix.Grouping;
import stillturning.desktop.viewmodel.breaking.FailureMatrix.MatrixLine;
import stillturning.desktop.viewmodel.breaking.FailureMatrix.Order;
import stillturning.report.FailureRows.FailureRow;

@Timeout(120)
class FailureMatrixTest {

    @TempDir private Path folder;
    private OpenDesk open;
    private FailureMatrix matrix;

    @BeforeEach
    void open() throws IOException {
        open = new OpenDesk(OpenDesk.SMALL, folder.resolve("study"));
        matrix = new FailureMatrix(open.desk);
        assertEquals(List.of(), matrix.lines());
        open.settle();
    }

    @AfterEach
    void close() {
        open.close();
    }

    private List<FailureRow> rows() {
        return matrix.lines().stream().flatMap(line -> line.row().stream()).toList();
    }

    private List<MatrixLine> headings() {
        return matrix.lines().stream().filter(line -> line.row().isEmpty()).toList();
    }

    @Test
    void everyFailureHasARowUnderItsHeading() {
        assertEquals(
                open.desk.study().orElseThrow().candidates().size(), matrix.candidates().size());
        assertTrue(rows().size() > 50, matrix.count());
        assertEquals(rows().size(), headings().stream().mapToInt(MatrixLine::below).sum());
        for (Grouping grouping : Grouping.values()) {
            int all = rows().size();
            matrix.arrangement().grouping().set(grouping);
            assertEquals(all, rows().size(), grouping.words());
        }
        assertEquals(List.of(), headings());
    }

    @Test
    void byOutcomeTheWorstComesFirst() {
        matrix.arrangement().grouping().set(Grouping.OUTCOME);
        List<Outcome> worst = rows().stream().map(FailureRow::worst).toList();
        assertEquals(worst.stream().sorted().toList(), worst);
        assertEquals(worst.get(0).words(), headings().get(0).name());
    }

    @Test
    void filtersLeaveWhatFits() {
        int all = rows().size();
        matrix.arrangement().outcome().set(Optional.of(Outcome.ENGINE_LOST));
        assertTrue(rows().stream().allMatch(r -> r.worst() == Outcome.ENGINE_LOST));
        assertFalse(rows().isEmpty());
        matrix.arrangement().outcome().set(Optional.empty());

        matrix.arrangement().kind().set(Optional.of("buses"));
        assertTrue(rows().stream().allMatch(r -> r.kind().equals("buses")));
        matrix.arrangement().kind().set(Optional.empty());

        matrix.arrangement().search().set("main bus short");
        assertEquals(
                List.of("main-bus: short to ground"),
                rows().stream().map(FailureRow::failure).toList());
        assertEquals("1 of " + all + " failures", matrix.count());
        matrix.arrangement().search().set("");

        matrix.arrangement().differingOnly().set(true);
        assertTrue(rows().size() < all);
        for (FailureRow row : rows()) {
            List<Outcome> outcomes =
                    row.byCandidate().stream().map(v -> v.orElseThrow().outcome()).toList();
            assertTrue(outcomes.stream().distinct().count() > 1, row.failure());
        }
    }

    @Test
    void ordersWithinAGroup() {
        matrix.arrangement().grouping().set(Grouping.NONE);
        matrix.arrangement().order().set(Order.NAME);
        List<String> names = rows().stream().map(FailureRow::failure).toList();
        assertEquals(names.stream().sorted(String.CASE_INSENSITIVE_ORDER).toList(), names);

        matrix.arrangement().order().set(Order.CANDIDATE);
        matrix.arrangement().orderedBy().set(Optional.of(matrix.candidates().get(1)));
        List<Outcome> gravest = List.of(Outcome.values());
        List<Integer> graveness =
                rows().stream()
                        .map(r -> r.byCandidate().get(1))
                        .map(v -> v.map(w -> gravest.indexOf(w.outcome())).orElse(99))
                        .toList();
        assertEquals(graveness.stream().sorted().toList(), graveness);
    }

    @Test
    void aCellOpensItsStory() {
        List<Destination> gone = new ArrayList<>();
        open.desk.guide(gone::add);
        FailureRow row = rows().get(0);
        matrix.open(row, 1);
        String candidate = matrix.candidates().get(1);
        assertEquals(List.of(Destination.of(AreaName.BREAK, candidate, row.failure())), gone);
        assertEquals(candidate, open.desk.candidate().get());
    }
}
