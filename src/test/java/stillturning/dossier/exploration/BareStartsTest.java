package stillturning.dossier.exploration;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import stillturning.dossier.exploration.BareStarts.BareStart;
import stillturning.dossier.redrawn.Service;
import stillturning.files.ReadStudy;
import stillturning.files.StudyReader;
import stillturning.files.move.Drawn;
import stillturning.files.value.Variation;
import stillturning.model.Candidate;
import stillturning.report.explored.Yardstick;

class BareStartsTest {

    /** One that has nothing to spare, and one that has two batteries and nothing else to spare. */
    @Test
    void oneIsTheLeastThereIsAndOneKeepsItsBatteries() throws Exception {
        StudyReader reader = StudyReader.open(Path.of("architectures", "sandpiper"));
        ReadStudy read = reader.study(Variation.NONE);
        List<Drawn> drawings = new ArrayList<>();
        for (String id : List.of("one-battery-engine-bus", "split-batteries")) {
            drawings.add(Drawn.of(reader, read, id));
        }
        LayoutSpace space =
                new LayoutSpace(
                        drawings, new Yardstick(Exploration.USUALLY_BY), Service.of(drawings));
        List<BareStart> bare = BareStarts.of(drawings.get(0), drawings, space);
        assertEquals(
                List.of(1L, 2L), bare.stream().map(b -> BareLayout.batteries(b.drawn())).toList());
        for (int i = 0; i < bare.size(); i++) {
            assertTrue(space.serves(bare.get(i).drawn()));
            assertTrue(size(bare.get(i).drawn().candidate()) < size(drawings.get(i).candidate()));
        }
        assertTrue(bare.get(0).from().endsWith(" stripped bare"));
        assertTrue(bare.get(1).from().endsWith(" stripped to its batteries"));
    }

    private static int size(Candidate candidate) {
        return candidate.parts().size();
    }
}
