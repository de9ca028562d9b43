package stillturning.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The script that the build lays beside the program, with a Java that only says what it is told.
 */
@DisabledOnOs(OS.WINDOWS)
class LauncherTest {

    private static final Path LAUNCHER = Path.of("src", "main", "launcher", "stillturning");

    @TempDir private Path folder;

    private Path cache;

    @BeforeEach
    void layItBesideAJava() throws IOException {
        Path bin = Files.createDirectories(folder.resolve("jdk").resolve("bin"));
        Path java = bin.resolve("java");
        Files.writeString(
                java,
                """
                #!/usr/bin/env bash
                printf '%s\\n' "$@"
                for word in "$@"; do
                  case $word in -XX:ArchiveClassesAtExit=*) echo classes > "${word#*=}" ;; esac
                done
                exit 3
                """);
        assertTrue(java.toFile().setExecutable(true));
        Files.copy(LAUNCHER, folder.resolve("stillturning"));
        cache = folder.resolve("a cache");
    }

    private List<String> told(String... words) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(List.of("bash", "stillturning"));
        command.addAll(List.of(words));
        ProcessBuilder builder = new ProcessBuilder(command).directory(folder.toFile());
        builder.environment().put("JAVA_HOME", folder.resolve("jdk").toString());
        builder.environment().put("XDG_CACHE_HOME", cache.toString());
        Process process = builder.redirectErrorStream(true).start();
        String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertEquals(3, process.waitFor(), "the program's exit code is the launcher's: " + said);
        return said.lines().toList();
    }

    @Test
    void aShortCommandIsCompiledQuickly() throws IOException, InterruptedException {
        assertEquals(
                List.of(
                        "-XX:+UseSerialGC",
                        "-XX:TieredStopAtLevel=1",
                        "-Xms64m",
                        "-jar",
                        folder.toRealPath().resolve("stillturning.jar").toString(),
                        "check",
                        "a study with blanks"),
                told("check", "a study with blanks"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "--pairs",
                "--latent",
                "--every-phase",
                "--ranges",
                "run-up",
                "explore",
                "suggest"
            })
    void aLongOneIsCompiledWell(String word) throws IOException, InterruptedException {
        List<String> told = told("break", "sandpiper", word);
        assertEquals("-jar", told.get(0));
        assertEquals(List.of("break", "sandpiper", word), told.subList(2, told.size()));
    }

    @Test
    void aWindowGivesBackWhatItNeededForAMoment() throws IOException, InterruptedException {
        List<String> told = told("desktop", "run-up");
        assertTrue(told.contains("-XX:MaxHeapFreeRatio=30"), told.toString());
        assertFalse(told.contains("-XX:TieredStopAtLevel=1"), told.toString());
        assertEquals(List.of("desktop", "run-up"), told.subList(told.size() - 2, told.size()));
    }

    private List<Path> kept() throws IOException {
        try (Stream<Path> files = Files.list(cache.resolve("stillturning"))) {
            return files.toList();
        }
    }

    /** The first window leaves its classes as it closes, every later one begins with them. */
    @Test
    void aWindowBeginsWithTheClassesThatTheFirstOneLeft() throws IOException, InterruptedException {
        List<String> first = told("desktop");
        assertTrue(
                first.stream().anyMatch(w -> w.startsWith("-XX:ArchiveClassesAtExit=")),
                first.toString());
        assertEquals(1, kept().size());
        List<String> second = told("desktop");
        assertTrue(second.contains("-XX:SharedArchiveFile=" + kept().get(0)), second.toString());
        assertEquals(first.subList(first.size() - 3, first.size()), second.subList(5, 8));
    }

    /** Java would die of classes that are not whole. */
    @Test
    void damagedClassesAreLeftAloneAndMadeAnew() throws IOException, InterruptedException {
        told("desktop");
        Files.writeString(kept().get(0), "half");
        List<String> told = told("desktop");
        assertTrue(told.stream().noneMatch(w -> w.contains("SharedArchiveFile")), told.toString());
        assertEquals(List.of("classes"), Files.readAllLines(kept().get(0)));
        assertTrue(told("desktop").contains("-XX:SharedArchiveFile=" + kept().get(0)));
    }

    /** Nor does what a window left that was killed while it wrote. */
    @Test
    void whatAKilledWindowLeavesIsThrownAway() throws IOException, InterruptedException {
        Path java = folder.resolve("jdk").resolve("bin").resolve("java");
        Files.writeString(java, Files.readString(java).replace("exit 3", "kill -9 $$"));
        ProcessBuilder builder =
                new ProcessBuilder("bash", "stillturning", "desktop").directory(folder.toFile());
        builder.environment().put("JAVA_HOME", folder.resolve("jdk").toString());
        builder.environment().put("XDG_CACHE_HOME", cache.toString());
        assertEquals(137, builder.start().waitFor());
        assertEquals(List.of(), kept());
    }

    /** Another program, or another Java, has other classes: the old ones go. */
    @Test
    void anotherProgramLeavesItsOwn() throws IOException, InterruptedException {
        told("desktop");
        Path old = kept().get(0);
        Files.writeString(folder.resolve("stillturning.jar"), "another");
        List<String> told = told("desktop");
        assertTrue(told.stream().noneMatch(w -> w.contains("SharedArchiveFile")), told.toString());
        assertEquals(1, kept().size());
        assertFalse(kept().contains(old), old.toString());
    }

    /** Where nothing can be kept the window opens as ever. */
    @Test
    void withoutAPlaceToKeepThemNothingIsKept() throws IOException, InterruptedException {
        Files.writeString(cache, "in the way");
        List<String> told = told("desktop");
        assertTrue(told.stream().noneMatch(w -> w.contains("Archive")), told.toString());
        assertEquals("desktop", told.get(told.size() - 1));
    }
}
