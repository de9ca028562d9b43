package stillturning.cli.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import stillturning.cli.Session;
import stillturning.cli.terminal.ExitCode;
import stillturning.files.StudyReader;

/** A file of kept layouts in which something stands that no search leaves there. */
class KeptLayoutsTest {

    private static final String REACH = "{'left':0,'mostSteps':8,'bare':1,'whole':true}";
    private static final String SEARCH =
            "{'tried':3,'met':3,'missed':{},'outdone':0,'twice':0,'refused':0,'reach':"
                    + REACH
                    + "}";

    @TempDir private Path here;
    private String whole = "";

    @BeforeEach
    void copyAStudy() {
        Path study = Session.in(here).copyOfFirstSteps("small");
        whole =
                "{'kind':'stillturning layouts','fingerprint':'"
                        + StudyReader.read(study).fingerprint()
                        + "','found':{'by':['WEIGHT'],'front':[{'candidate':'one-bus','from':'x',"
                        + "'steps':[],'text':''}],'search':"
                        + SEARCH
                        + "}}";
    }

    private Session.Ran told(String text) throws IOException {
        Files.writeString(here.resolve("kept.json"), text.replace('\'', '"'));
        return Session.in(here).run("explore", "small", "--again", "kept.json");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "['WEIGHT'] | []",
                "['WEIGHT'] | ['WEIGHT','WEIGHT']",
                "['WEIGHT'] | [null]",
                "'tried':3 | 'tried':-3",
                "'left':0 | 'left':-1",
                "'missed':{} | 'missed':{'x':-1}"
            })
    void whatNoSearchLeavesIsRefused(String from, String to) throws IOException {
        assertTrue(whole.contains(from), whole);
        Session.Ran ran = told(whole.replace(from, to));
        assertEquals(ExitCode.BAD_INPUT, ran.code(), ran.out());
        assertTrue(ran.err().contains("holds no layouts that explore --keep has kept"), ran.err());
    }

    @ParameterizedTest
    @ValueSource(strings = {"null", "", "[]", "{}"})
    void whatIsNoSuchFileIsRefused(String text) throws IOException {
        Session.Ran ran = told(text);
        assertEquals(ExitCode.BAD_INPUT, ran.code(), ran.out());
        assertTrue(ran.err().contains("holds no layouts that explore --keep has kept"), ran.err());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "'candidate':'one-bus' | 'candidate':'nobody' | there is no candidate nobody",
                "'text':''             | 'text':'parts: ['    | kept.json: the text ends"
            })
    void aLayoutThatCannotBeReadAnyMoreIsToldWithWhy(String from, String to, String why)
            throws IOException {
        Session.Ran ran = told(whole.replace(from, to));
        assertEquals(ExitCode.BAD_INPUT, ran.code(), ran.out());
        assertTrue(ran.err().contains(why), ran.err());
    }
}
