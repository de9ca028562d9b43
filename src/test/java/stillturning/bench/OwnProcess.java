package stillturning.bench;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** A test's own program in a process of its own, which can be killed. */
public final class OwnProcess {
    private OwnProcess() {}

    /** Ready to start, with the classes that the test has. */
    public static ProcessBuilder of(Class<?> program, String... arguments) {
        String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
        List<String> command =
                new ArrayList<>(
                        List.of(
                                java,
                                "-XX:+UseSerialGC",
                                "-XX:TieredStopAtLevel=1",
                                "-cp",
                                System.getProperty("java.class.path"),
                                program.getName()));
        command.addAll(List.of(arguments));
        return new ProcessBuilder(command);
    }
}
