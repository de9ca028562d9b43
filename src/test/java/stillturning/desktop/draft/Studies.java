package stillturning.desktop.draft;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import stillturning.files.Starter;

/** Studies to be edited in tests. */
public final class Studies {

    private Studies() {}

    /** Copies one of the shipped studies. */
    public static void copy(String name, Path folder) throws IOException {
        try (DirectoryStream<Path> files =
                Files.newDirectoryStream(Path.of("architectures", name), "*.yaml")) {
            for (Path file : files) {
                Files.writeString(folder.resolve(file.getFileName()), Files.readString(file));
            }
        }
    }

    /** Writes one of the starting points. */
    public static void start(Starter.StarterAnswers answers, Path folder) throws IOException {
        for (Map.Entry<String, String> file : Starter.files(answers).entrySet()) {
            Files.writeString(folder.resolve(file.getKey()), file.getValue());
        }
    }
}
