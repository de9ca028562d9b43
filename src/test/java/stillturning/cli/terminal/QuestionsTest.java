package stillturning.cli.terminal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.PrintWriter;
import java.io.StringReader;
import java.io.StringWriter;
import java.util.List;
import org.junit.jupiter.api.Test;

class QuestionsTest {

    private static final List<String> CHOICES = List.of("breakers", "solid-state");

    private final StringWriter shown = new StringWriter();

    private String answered(String typed) {
        BufferedReader in = new BufferedReader(new StringReader(typed));
        return new Questions(new PrintWriter(shown), in).choose("Protection?", CHOICES);
    }

    @Test
    void anEmptyLineTakesTheFirst() {
        assertEquals("breakers", answered("\n"));
        assertEquals("Protection? (breakers or solid-state) [breakers] ", shown.toString());
    }

    @Test
    void anAnswerMayBeLoose() {
        assertEquals("solid-state", answered("Solid State\n"));
        assertEquals("solid-state", answered("sol\n"));
    }

    @Test
    void whatIsNoChoiceIsAskedAgain() {
        assertEquals("solid-state", answered("relays\nsolid\n"));
        assertTrue(
                shown.toString().contains("\"relays\" is none of: breakers, solid-state"),
                shown.toString());
    }

    @Test
    void answersThatEndAreRefused() {
        assertThrows(Refusal.class, () -> answered("relays\n"));
    }
}
