package stillturning.files;

import static java.util.Objects.requireNonNull;

import java.io.IOException;
import java.net.URI;
import java.net.URISyntaxException;
import java.net.URL;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import stillturning.yaml.disk.WholeFolder;

/** Demo studies that come with the program, to be copied and played with. */
public final class Samples {

    /** The study with every kind of question in it. */
    public static final String LARGE = "sandpiper";

    private static final String FOLDER = "samples/";

    private Samples() {}

    /**
     * Copies a demo study into a new folder.
     *
     * @param name one of the constants of this class
     * @param folder made if it is not there; must be empty if it is
     * @throws IOException if it cannot be written, or something stands there
     */
    public static void copy(String name, Path folder) throws IOException {
        URI uri = uri(FOLDER + name);
        if (uri.getScheme().equals("jar")) {
            try (FileSystem jar = FileSystems.newFileSystem(uri, Map.of())) {
                WholeFolder.create(folder, contents(jar.provider().getPath(uri)));
            }
        } else {
            WholeFolder.create(folder, contents(Path.of(uri)));
        }
    }

    private static URI uri(String name) throws IOException {
        URL url = requireNonNull(Samples.class.getResource(name), name);
        try {
            return url.toURI();
        } catch (URISyntaxException e) {
            throw new IOException(e);
        }
    }

    private static Map<String, byte[]> contents(Path folder) throws IOException {
        List<Path> files;
        try (Stream<Path> all = Files.list(folder)) {
            files = all.sorted().toList();
        }
        Map<String, byte[]> contents = new LinkedHashMap<>();
        for (Path file : files) {
            contents.put(String.valueOf(file.getFileName()), Files.readAllBytes(file));
        }
        return contents;
    }
}
