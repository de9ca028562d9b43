package stillturning.desktop.viewmodel.explain;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stillturning.bench.Thorough;

class ExplainingTest {

    private static final int PATIENCE_SECONDS = 60;

    @TempDir private Path here;
    private final BlockingQueue<Runnable> screen = new LinkedBlockingQueue<>();
    private OpenStudy study;

    @BeforeEach
    void open() {
        study = new OpenStudy("first-steps", here, screen::add);
    }

    @AfterEach
    void close() {
        study.close();
    }

    private void until(BooleanSupplier reached) {
        while (!reached.getAsBoolean()) {
            try {
                Runnable next = screen.poll(PATIENCE_SECONDS, TimeUnit.SECONDS);
                if (next == null) {
                    fail("nothing more happens");
                } else {
                    next.run();
                }
            } catch (InterruptedException e) {
                throw new AssertionError(e);
            }
        }
    }

    private Explaining explaining() {
        return study.explaining();
    }

    private String written() {
        explaining().write();
        until(() -> !explaining().working().get());
        return explaining().page().get().orElseThrow().html();
    }

    @Thorough
    @Test
    void thePageIsThatOfTheCommandLineToTheByte() {
        assertEquals(study.pageOfTheCommandLine(), written());
        assertFalse(explaining().stale());
        assertEquals("", explaining().advice().get());
    }

    @Thorough
    @Test
    void whatIsNotChosenIsLeftOut() {
        String full = written();
        explaining().sizes().set(false);
        assertTrue(explaining().stale());
        assertTrue(explaining().advice().get().contains("Other contents"));
        String short0 = written();
        assertTrue(full.contains("id=\"sizes\""));
        assertFalse(short0.contains("id=\"sizes\""));
    }

    @Thorough
    @Test
    void theRationaleIsOneNamedChangeAndStandsOnThePageAtOnce() {
        Rationale rationale = explaining().rationale();
        rationale
                .text()
                .set("One battery is\nenough: we land soon.\n\n\n  Weight \"counts\" & costs. \n");
        assertEquals("2 paragraphs, 11 words", rationale.count().get());

        String html = written();

        assertEquals("Change the rationale", study.lastChange());
        assertTrue(html.contains("<p>One battery is enough: we land soon.</p>"), html);
        assertTrue(html.contains("<p>Weight \"counts\" &amp; costs.</p>"), html);
        assertEquals(study.pageOfTheCommandLine(), html);
        assertFalse(explaining().stale());
        assertTrue(study.text().startsWith("# First steps: the smallest study"));
    }

    @Thorough
    @Test
    void aPageAskedForRightAfterAChangeTellsTheChange() {
        written();
        explaining().rationale().text().set("Said before.");
        explaining().rationale().commit();
        assertTrue(written().contains("<p>Said before.</p>"));
        assertFalse(explaining().stale());
    }

    @Thorough
    @Test
    void longAnswersAreThoseOfTheCommandLineAndAreAskedOnce() {
        study.delete("bus-and-battery.yaml");
        study.write(
                study.text().replace(" (guess)", "").replace("draws: 5 A", "draws: 5 A (guess)"));
        explaining().guesses().set(true);
        explaining().together().set(true);
        explaining().groundTest().set(true);

        explaining().write();
        until(() -> explaining().at().get().startsWith("Asking what failures do together: 9 of"));
        double share = explaining().share().get();
        explaining().cancel();
        assertTrue(share > 0 && share < 1);
        assertFalse(explaining().working().get());
        assertTrue(explaining().page().get().isEmpty());
        String html = written();
        assertEquals(study.pageOfTheCommandLine("--guesses", "--pairs", "--ground-test"), html);

        explaining().rationale().text().set("Because.");
        explaining().write();
        StringBuilder told = new StringBuilder();
        explaining().at().addListener((of, before, now) -> told.append(now).append('\n'));
        until(() -> !explaining().working().get());
        assertFalse(told.toString().contains("together"), told.toString());
        assertFalse(told.toString().contains("ground test"), told.toString());
        String anew = explaining().page().get().orElseThrow().html();
        assertTrue(anew.contains("<p>Because.</p>") && anew.contains("Run-up card:"));
    }

    @Thorough
    @Test
    void whatWouldMendIsThatOfTheCommandLineKeptInAFile() {
        study.delete("bus-and-battery.yaml");
        explaining().mends().set(true);
        String html = written();
        assertEquals(study.pageOfTheCommandLine("--mends", study.mendsOfTheCommandLine()), html);
        assertTrue(html.contains("What would mend what is wrong"));
    }

    @Thorough
    @Test
    void aStudyWithAMistakeTellsTheMendAndIsNotExplained() {
        String sound = study.text();
        study.write(sound.replace("nominal: 14 V", "nominal: 14 ohm"));
        until(() -> study.desk().study().isEmpty());
        assertFalse(explaining().writable().get());
        assertTrue(
                explaining().advice().get().contains("study.yaml, line 6"),
                explaining().advice().get());
        explaining().write();
        assertFalse(explaining().working().get());
        study.write(sound);
        until(() -> explaining().writable().get());
        assertTrue(written().contains("First steps"));
    }

    @Test
    void whatWasChangedElsewhereIsTakenUnlessMoreWasTyped() {
        String plain = study.text();
        study.write(plain + "rationale: [From outside.]\n");
        until(() -> explaining().rationale().text().get().equals("From outside."));
        explaining().rationale().text().set("From outside. And more");
        study.write(plain + "rationale: [Other.]\n");
        until(
                () ->
                        study.desk()
                                .read()
                                .get()
                                .study()
                                .orElseThrow()
                                .heading()
                                .rationale()
                                .contains("Other."));
        assertEquals("From outside. And more", explaining().rationale().text().get());
        assertTrue(explaining().rationale().commit());
        assertTrue(study.text().contains("From outside. And more"));
        explaining().rationale().text().set(" \n ");
        assertTrue(explaining().rationale().commit());
        assertEquals(plain, study.text());
    }

    @Test
    void aTextThatCannotBeWrittenIsToldAtTheText() {
        explaining().rationale().text().set("Fine.\n\nNot \uFFFE fine.");
        assertEquals(
                "Paragraph 2 holds the character U+FFFE, which no page can show; take it out.",
                explaining().rationale().error().get());
        explaining().write();
        assertEquals("", study.lastChange());
        assertFalse(explaining().working().get());
        study.write("a: [");
        explaining().rationale().text().set("Fine.");
        assertEquals("", explaining().rationale().error().get());
        assertFalse(explaining().rationale().commit());
        assertNotEquals("", explaining().rationale().error().get());
    }

    @Thorough
    @Test
    void aStrangersFileIsOnlyReplacedOnWish() throws IOException {
        Path mine = Files.writeString(here.resolve("mine.html"), "<p>my own words</p>");
        assertInstanceOf(Saved.Refused.class, explaining().save(mine, true));
        String html = written();
        Saved.Asks asks = assertInstanceOf(Saved.Asks.class, explaining().save(mine, false));
        assertEquals("<p>my own words</p>", Files.readString(mine));
        assertInstanceOf(Saved.Done.class, explaining().save(asks.file(), true));
        assertEquals(html, Files.readString(mine));
        assertInstanceOf(Saved.Done.class, explaining().save(mine, false));
        Saved.Done bare =
                assertInstanceOf(Saved.Done.class, explaining().save(here.resolve("talk"), false));
        assertEquals(here.resolve("talk.html"), bare.file());
        Saved none = explaining().save(here.resolve("no/such/page.html"), false);
        assertTrue(none.words().contains("choose another folder"), none.words());
        assertEquals(html, Files.readString(Path.of(explaining().page().get().orElseThrow().at())));
    }
}
