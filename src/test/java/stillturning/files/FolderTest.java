package stillturning.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTimeout;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import stillturning.bench.Thorough;

class FolderTest {

    @TempDir Path folder;

    private String told() {
        return SampleStudy.told(StudyReader.read(folder));
    }

    private void write(String name, String text) throws IOException {
        Files.writeString(folder.resolve(name), text);
    }

    @Test
    void aFolderThatIsNotThereIsTold() {
        assertEquals(
                "nowhere:1:1: there is no such folder; name a folder that holds a study.yaml",
                SampleStudy.told(StudyReader.read(folder.resolve("nowhere"))));
    }

    @Test
    void aFileInPlaceOfAFolderIsTold() throws IOException {
        write("study.yaml", SampleStudy.STUDY);
        assertEquals(
                "study.yaml:1:1: this is no folder; name a folder that holds a study.yaml",
                SampleStudy.told(StudyReader.read(folder.resolve("study.yaml"))));
    }

    @Test
    void anEmptyFolderAndOneWithoutCandidatesAreTold() throws IOException {
        assertTrue(told().endsWith("there is no study.yaml in this folder; add one"), told());
        write("study.yaml", SampleStudy.STUDY.replace("baseline: one\n", ""));
        assertTrue(told().contains("there is no candidate beside study.yaml; add one"), told());
    }

    @Test
    void candidatesAreLookedAtEvenIfTheStudyCannotBeRead() throws IOException {
        write("study.yaml", "study: [\n");
        write("one.yaml", "candidat: One\n");
        assertTrue(told().contains("one.yaml:1:1: candidat: \"candidat\" is not known here"));
        assertTrue(told().contains("study.yaml:2:1: "), told());
    }

    @Test
    void linksThatLeadInACircleAndFoldersAmongTheFilesAreTold() throws IOException {
        write("study.yaml", SampleStudy.STUDY);
        write("one.yaml", SampleStudy.ONE);
        Files.createSymbolicLink(folder.resolve("loop.yaml"), Path.of("loop.yaml"));
        Files.createDirectory(folder.resolve("sub.yaml"));
        assertEquals(
                """
                loop.yaml:1:1: this is no file that can be read; take it out of the folder
                sub.yaml:1:1: this is no file that can be read; take it out of the folder""",
                told());
    }

    @Test
    void namesThatAreNoneAreTold() throws IOException {
        write("study.yaml", SampleStudy.STUDY);
        write("one.yaml", SampleStudy.ONE);
        write("Two Buses.yaml", SampleStudy.ONE);
        write(".one.yaml", "what an editor leaves behind");
        write("notes.txt", "not ours");
        write("two.yml", SampleStudy.ONE);
        assertEquals(
                "Two Buses.yaml:1:1: the file's name cannot be a candidate's name;"
                        + " use lower case letters, digits and hyphens before .yaml",
                told());
        assertEquals(
                "two.yml:1:1: this file is not read; call it two.yaml",
                SampleStudy.remarked(StudyReader.read(folder)));
    }

    @Test
    void bytesThatAreNoTextAreToldWithTheirPlace() throws IOException {
        write("study.yaml", SampleStudy.STUDY);
        Files.write(
                folder.resolve("one.yaml"),
                "candidate: \u00e4\n".getBytes(StandardCharsets.ISO_8859_1));
        assertEquals(
                "one.yaml:1:12: the byte 0xE4 is no text in UTF-8; save the file as UTF-8", told());
    }

    @Test
    void aFileThatIsTooLargeIsTold() throws IOException {
        write("study.yaml", SampleStudy.STUDY);
        write("one.yaml", "#".repeat(5_000_000));
        assertEquals("one.yaml:1:1: the file is larger than 4 MB; split it", told());
    }

    @Thorough
    @ParameterizedTest
    @ValueSource(strings = {"(", "[", "{", "- ", "a: ", "\"", "&a ", ", wire", "not (", "x\n"})
    void aMegabyteOfOneThingIsRefusedInTime(String thing) throws IOException {
        String much = thing.repeat(1_000_000 / thing.length());
        write("study.yaml", SampleStudy.STUDY);
        write("one.yaml", SampleStudy.ONE.replace("from battery, fuse", much));
        assertTimeout(Duration.ofSeconds(10), this::told);
        write("one.yaml", much);
        assertTimeout(Duration.ofSeconds(10), this::told);
        write("one.yaml", SampleStudy.ONE);
        write("study.yaml", SampleStudy.STUDY.replace("computer and pump", much));
        assertTimeout(Duration.ofSeconds(10), this::told);
    }

    @Test
    void aMegabyteOfNoiseIsRefusedInTime() throws IOException {
        SplittableRandom random = new SplittableRandom(1);
        StringBuilder noise = new StringBuilder();
        while (noise.length() < 1_000_000) {
            noise.append((char) random.nextInt(' ', '~'))
                    .append(random.nextInt(9) == 0 ? "\n" : "");
        }
        write("study.yaml", noise.toString());
        write("one.yaml", noise.toString());
        assertTimeout(Duration.ofSeconds(10), () -> assertTrue(told().contains("study.yaml:")));
    }

    @Test
    void fiveThousandPartsAreReadInAFewSeconds() throws IOException {
        StringBuilder loads = new StringBuilder();
        StringBuilder feeds = new StringBuilder();
        for (int i = 0; i < 1700; i++) {
            loads.append("  lamp-").append(i).append(": {zone: panel, draws: 100 mA}\n");
            feeds.append("  lamp-").append(i).append(": from main-bus, breaker 5 A\n");
        }
        String study = SampleStudy.STUDY.replace("engine:\n  needs", loads + "engine:\n  needs");
        String one = SampleStudy.ONE.replace("positions:\n", feeds + "positions:\n");
        assertTimeout(
                Duration.ofSeconds(30),
                () -> {
                    ReadStudy read = SampleStudy.read(folder, study, one);
                    assertTrue(SampleStudy.one(read).parts().size() > 6800);
                });
    }

    @Test
    void thousandsOfMistakesAreToldInTime() throws IOException {
        StringBuilder feeds = new StringBuilder();
        for (int i = 0; i < 5000; i++) {
            feeds.append("  lamp-").append(i).append(": from mian-bus, breaker 5 A\n");
        }
        String one = SampleStudy.ONE.replace("positions:\n", feeds + "positions:\n");
        assertTimeout(
                Duration.ofSeconds(30),
                () -> {
                    String told =
                            SampleStudy.told(SampleStudy.read(folder, SampleStudy.STUDY, one));
                    assertTrue(told.contains("the file has more than 200 mistakes"), told);
                });
    }
}
