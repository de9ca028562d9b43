import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.FileTime;
import java.nio.file.attribute.PosixFilePermission;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.spi.ToolProvider;
import java.util.stream.Stream;
import java.util.zip.Deflater;
import java.util.zip.GZIPOutputStream;

/**
 * Makes what people install: a folder with the program, its libraries and a Java of its own, the
 * same as a ZIP archive, and on Debian and its kin a package. Bytes depend on the sources, the JDK
 * and the moment given, on nothing else.
 *
 * <p>On Windows and macOS the same program makes the folder and the archive, with that system's
 * Java and its libraries; a package for those systems is not made.
 */
public final class Release {

    /** What the program uses of the JDK, and what libraries look for by name only. */
    private static final String MODULES =
            "java.base,java.desktop,java.management,java.net.http,java.sql,jdk.jfr,jdk.jsobject,"
                    + "jdk.unsupported,jdk.xml.dom,jdk.zipfs,jdk.charsets,jdk.crypto.ec,jdk.localedata";

    /** What a Java linked on Debian and the window load of the system. */
    private static final String NEEDS =
            "libc6, zlib1g, libfreetype6, libfontconfig1, libharfbuzz0b, liblcms2-2,"
                    + " libjpeg62-turbo | libjpeg8, libpng16-16, libgif7";

    private static final String WINDOW_NEEDS = "libgtk-3-0, libxtst6, libasound2, libgl1";

    private final Path sources;
    private final Path built;
    private final Path made;
    private final String version;
    private final Instant moment;

    private Release(Path sources, Path built, String version, Instant moment) {
        this.sources = sources;
        this.built = built;
        this.made = built.resolve("release");
        this.version = version;
        this.moment = moment;
    }

    /**
     * Makes them.
     *
     * @param words the folder of this file, the folder of what was built, the version, the moment
     */
    public static void main(String... words) throws Exception {
        Release release =
                new Release(
                        Path.of(words[0]),
                        Path.of(words[1]).toAbsolutePath(),
                        words[2],
                        Instant.parse(words[3]));
        Path folder = release.folder();
        System.out.println(release.archive(folder));
        if (Files.isExecutable(Path.of("/usr/bin/dpkg-deb"))) {
            System.out.println(release.debian(folder));
        } else {
            System.out.println("no Debian package: dpkg-deb is not here");
        }
    }

    private Path folder() throws IOException {
        Path folder = made.resolve("stillturning-" + version);
        delete(folder);
        Files.createDirectories(folder);
        Files.copy(built.resolve("stillturning"), folder.resolve("stillturning"));
        Files.copy(built.resolve("stillturning.cmd"), folder.resolve("stillturning.cmd"));
        runnable(folder.resolve("stillturning"));
        Path program = built.resolve("stillturning-" + version + ".jar");
        Files.copy(program, folder.resolve("stillturning.jar"));
        copy(built.resolve("lib"), folder.resolve("lib"));
        copy(made.resolve("man"), folder.resolve("man"));
        for (String name : List.of("icon.svg", "NOTES.md")) {
            Files.copy(sources.resolve(name), folder.resolve(name));
        }
        Files.copy(made.resolve("bom.json"), folder.resolve("bom.json"));
        Files.copy(Path.of("LICENSE"), folder.resolve("LICENSE"));
        copy(Path.of("architectures"), folder.resolve("architectures"));
        link(folder.resolve("runtime"));
        return folder;
    }

    private static void link(Path runtime) {
        run(
                ToolProvider.findFirst("jlink").orElseThrow(),
                "--add-modules",
                MODULES,
                "--include-locales=en,de",
                "--no-header-files",
                "--no-man-pages",
                "--strip-java-debug-attributes",
                "--compress=2",
                "--output",
                runtime.toString());
    }

    private static void run(ToolProvider tool, String... words) {
        int code = tool.run(System.out, System.err, words);
        if (code != 0) {
            throw new IllegalStateException(tool.name() + " ended with " + code);
        }
    }

    /** The folder as a ZIP archive that keeps who may run what. */
    private Path archive(Path folder) throws IOException {
        String system =
                System.getProperty("os.name").toLowerCase(Locale.ROOT).replaceAll(" .*", "");
        Path zip =
                made.resolve(
                        folder.getFileName()
                                + "-"
                                + system
                                + "-"
                                + System.getProperty("os.arch")
                                + ".zip");
        Files.deleteIfExists(zip);
        Map<String, Object> how = Map.of("create", "true", "enablePosixFileAttributes", true);
        try (FileSystem inside = FileSystems.newFileSystem(URI.create("jar:" + zip.toUri()), how)) {
            for (Path from : sorted(folder)) {
                Path to = inside.getPath("/" + made.relativize(from));
                if (Files.isDirectory(from)) {
                    Files.createDirectories(to);
                } else {
                    Files.copy(from, to);
                }
                Files.setLastModifiedTime(to, FileTime.from(moment));
                Files.setPosixFilePermissions(to, permissions(from));
            }
        }
        return zip;
    }

    /** A package: the folder under /opt, with what puts it on the path and into the menu. */
    private Path debian(Path folder) throws IOException, InterruptedException {
        Path root = made.resolve("debian");
        delete(root);
        copy(folder, root.resolve("opt/stillturning"));
        Files.createDirectories(root.resolve("usr/bin"));
        Files.createSymbolicLink(
                root.resolve("usr/bin/stillturning"), Path.of("/opt/stillturning/stillturning"));
        place(sources.resolve("stillturning.desktop"), root.resolve("usr/share/applications"));
        Path icons = root.resolve("usr/share/icons/hicolor/scalable/apps");
        place(sources.resolve("icon.svg"), icons);
        Files.move(icons.resolve("icon.svg"), icons.resolve("stillturning.svg"));
        for (Path page : sorted(made.resolve("man"))) {
            if (Files.isRegularFile(page)) {
                zipped(page, root.resolve("usr/share/man/man1"));
            }
        }
        Path completions =
                Files.createDirectories(root.resolve("usr/share/bash-completion/completions"));
        Files.writeString(completions.resolve("stillturning"), completion(folder));
        Path papers = Files.createDirectories(root.resolve("usr/share/doc/stillturning"));
        Files.copy(Path.of("LICENSE"), papers.resolve("copyright"));
        zipped(sources.resolve("NOTES.md"), papers);
        control(root);
        return packed(root);
    }

    private void control(Path root) throws IOException {
        long bytes = 0;
        for (Path file : sorted(root)) {
            bytes += Files.isRegularFile(file) ? Files.size(file) : 0;
        }
        Path control = Files.createDirectories(root.resolve("DEBIAN")).resolve("control");
        String text =
                Files.readString(sources.resolve("control"))
                        .replace("@version@", version)
                        .replace("@architecture@", said("dpkg", "--print-architecture").strip())
                        .replace("@needs@", NEEDS)
                        .replace("@window@", WINDOW_NEEDS)
                        .replace("@size@", Long.toString(bytes / 1024));
        Files.writeString(control, text);
    }

    private Path packed(Path root) throws IOException, InterruptedException {
        for (Path file : sorted(root)) {
            if (!Files.isSymbolicLink(file)) {
                Files.setLastModifiedTime(file, FileTime.from(moment));
            }
        }
        Path deb = made.resolve("stillturning_" + version + ".deb");
        // the jars inside are compressed: a better compression costs minutes and saves nothing
        ProcessBuilder builder =
                new ProcessBuilder(
                        "dpkg-deb",
                        "--root-owner-group",
                        "-Zgzip",
                        "-z6",
                        "--build",
                        root.toString(),
                        deb.toString());
        builder.environment().put("SOURCE_DATE_EPOCH", Long.toString(moment.getEpochSecond()));
        int code = builder.inheritIO().start().waitFor();
        if (code != 0) {
            throw new IllegalStateException("dpkg-deb ended with " + code);
        }
        return deb;
    }

    private static String completion(Path folder) throws IOException {
        return said(folder.resolve("stillturning").toString(), "completion");
    }

    private static String said(String... words) throws IOException {
        Process process =
                new ProcessBuilder(words).redirectError(ProcessBuilder.Redirect.INHERIT).start();
        return new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    }

    private static void zipped(Path file, Path folder) throws IOException {
        Files.createDirectories(folder);
        Path to = folder.resolve(file.getFileName() + ".gz");
        try (GZIPOutputStream out =
                new GZIPOutputStream(Files.newOutputStream(to)) {
                    {
                        def.setLevel(Deflater.BEST_COMPRESSION);
                    }
                }) {
            Files.copy(file, out);
        }
    }

    private static void place(Path file, Path folder) throws IOException {
        Files.copy(file, Files.createDirectories(folder).resolve(file.getFileName()));
    }

    private static void copy(Path from, Path to) throws IOException {
        for (Path file : sorted(from)) {
            Path target = to.resolve(from.relativize(file).toString());
            if (Files.isDirectory(file)) {
                Files.createDirectories(target);
            } else {
                Files.copy(file, target, StandardCopyOption.COPY_ATTRIBUTES);
            }
        }
    }

    private static List<Path> sorted(Path folder) throws IOException {
        try (Stream<Path> all = Files.walk(folder)) {
            return all.sorted().toList();
        }
    }

    private static void runnable(Path file) throws IOException {
        if (file.getFileSystem().supportedFileAttributeViews().contains("posix")) {
            Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rwxr-xr-x"));
        }
    }

    private static Set<PosixFilePermission> permissions(Path file) throws IOException {
        boolean runs = Files.isDirectory(file) || Files.isExecutable(file);
        return PosixFilePermissions.fromString(runs ? "rwxr-xr-x" : "rw-r--r--");
    }

    private static void delete(Path folder) throws IOException {
        if (!Files.exists(folder)) {
            return;
        }
        List<Path> inside = new ArrayList<>(sorted(folder));
        java.util.Collections.reverse(inside);
        inside.forEach(
                path -> {
                    try {
                        Files.delete(path);
                    } catch (IOException e) {
                        throw new UncheckedIOException(e);
                    }
                });
    }
}
