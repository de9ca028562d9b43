package stillturning.structure;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stillturning.bench.KeptLines;
import stillturning.bench.Lines;
import stillturning.files.StudyReader;
import stillturning.model.Candidate;
import stillturning.model.Study;

/** All that the shape of some candidates alone says is what was last read. */
class KeptStructureTest {

    @ParameterizedTest
    @CsvSource({
        "sandpiper, solid-state-split-engine",
        "sandpiper, one-battery-engine-bus",
        "sandpiper, two-alternators",
        "first-steps, one-bus"
    })
    void isWhatIsToldToday(String folder, String name) throws IOException {
        Study study = StudyReader.read(Path.of("architectures", folder)).study().orElseThrow();
        Candidate candidate = study.candidate(name).orElseThrow();
        List<String> told = new ArrayList<>();
        told.addAll(Lines.of("shape", Structure.of(study.aircraft(), candidate)));
        told.addAll(Lines.of("functions", Structure.functions(study.aircraft(), candidate)));
        told.addAll(removals(Structure.removals(study.aircraft(), candidate)));
        for (Relaxation lenient : Relaxation.values()) {
            told.addAll(
                    Lines.of(
                            "counting " + lenient,
                            Structure.without(
                                    study.aircraft(),
                                    candidate,
                                    Optional.empty(),
                                    Set.of(lenient))));
        }
        KeptLines.assertKept("structure", name + ".lines", told);
    }

    /** What is left without each part; many parts leave the same, which is told once. */
    private static List<String> removals(List<Removal> all) {
        Map<List<String>, List<String>> parts = new LinkedHashMap<>();
        for (Removal one : all) {
            Removal unnamed =
                    new Removal(Optional.empty(), one.supplied(), one.levers(), one.evidence());
            parts.computeIfAbsent(Lines.of("leaves", unnamed), left -> new ArrayList<>())
                    .add(one.part().orElse("nothing gone"));
        }
        List<String> lines = new ArrayList<>();
        parts.forEach(
                (left, without) -> {
                    lines.add("without " + String.join("|", without));
                    lines.addAll(left);
                });
        return lines;
    }
}
