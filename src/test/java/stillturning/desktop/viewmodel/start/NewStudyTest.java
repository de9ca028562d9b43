package stillturning.desktop.viewmodel.start;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stillturning.files.ReadStudy;
import stillturning.files.Starter.LoadProtection;
import stillturning.files.StudyReader;

class NewStudyTest {

    @TempDir private Path home;

    @Test
    void whatIsAnsweredBecomesAStudyThatReads() {
        NewStudy beginning = new NewStudy(home);
        beginning.title().set("Über Wasser 2");
        beginning.numbers().batteries().set(1);
        beginning.protection().set(LoadProtection.SOLID_STATE);

        Path folder = beginning.begin().folder().orElseThrow();

        assertEquals(home.resolve("Stillturning").resolve("uber-wasser-2"), folder);
        ReadStudy read = StudyReader.read(folder);
        assertEquals(List.of(), read.problems());
        assertEquals("Über Wasser 2", read.study().orElseThrow().heading().title());
    }

    @Test
    void nothingIsWrittenOverAnotherStudy() throws IOException {
        NewStudy beginning = new NewStudy(home);
        beginning.begin();
        Path study = beginning.folder().orElseThrow().resolve("study.yaml");
        String before = Files.readString(study);
        beginning.numbers().batteries().set(1);

        String words = beginning.begin().refusal();

        assertTrue(words.contains("not empty") && words.contains("another name"), words);
        assertEquals(before, Files.readString(study));
    }

    @ParameterizedTest
    @CsvSource({"Sandpiper II,sandpiper-ii", "'  a/b  ',a-b", "'../../x',x", "'***',''"})
    void aTitleBecomesANameThatAFolderCanHave(String title, String name) {
        assertEquals(name, NewStudy.folderName(title));
    }

    @Test
    void aTitleWithoutALetterIsRefused() {
        NewStudy beginning = new NewStudy(home);
        beginning.title().set("***");

        assertTrue(beginning.begin().folder().isEmpty());
    }

    @Test
    void theDemoIsCopiedBesideEarlierCopies() {
        NewStudy beginning = new NewStudy(home);

        Path first = beginning.sample().folder().orElseThrow();
        Path second = beginning.sample().folder().orElseThrow();

        assertEquals("sandpiper", first.getFileName().toString());
        assertEquals("sandpiper-2", second.getFileName().toString());
        assertEquals(7, StudyReader.read(second).study().orElseThrow().candidates().size());
    }
}
