package stillturning.files;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import stillturning.files.entry.Names;
import stillturning.files.finding.FileRemark;
import stillturning.yaml.Problem;
import stillturning.yaml.YamlDocument;

/** The files of a study's folder. */
final class StudyFolder {

    static final String STUDY = "study";

    private static final String ENDING = ".yaml";
    private static final int MOST_FILES = 100;

    /** One file: its name without ending, and what stands in it. */
    record File(String id, YamlDocument document) {
        String name() {
            return id + ENDING;
        }
    }

    private final Path folder;
    private final List<File> files = new ArrayList<>();
    private final List<Problem> problems = new ArrayList<>();
    private final List<FileRemark> remarks = new ArrayList<>();

    private StudyFolder(Path folder) {
        this.folder = folder;
    }

    /** Reads every file that belongs to the study; what cannot be read becomes a problem. */
    static StudyFolder read(Path folder) {
        StudyFolder read = new StudyFolder(folder);
        read.read();
        return read;
    }

    /** The same folder with another text in one of its files. */
    StudyFolder with(YamlDocument changed) {
        StudyFolder other = new StudyFolder(folder);
        for (File file : files) {
            boolean same = file.document.file().equals(changed.file());
            other.files.add(same ? new File(file.id, changed) : file);
        }
        other.problems.addAll(problems);
        other.remarks.addAll(remarks);
        return other;
    }

    /**
     * The same folder with these files in it and no others.
     *
     * @param unread what else is wrong with it
     */
    StudyFolder holding(Collection<YamlDocument> documents, List<Problem> unread) {
        StudyFolder other = new StudyFolder(folder);
        other.problems.addAll(unread);
        other.remarks.addAll(remarks);
        List<Path> paths = documents.stream().map(YamlDocument::file).toList();
        for (YamlDocument document : documents) {
            if (other.isNamedWell(document.file())) {
                other.files.add(new File(idOf(document.file()), document));
            }
        }
        other.complete(paths);
        return other;
    }

    /** The same folder as if some files were not there, nor what is wrong with them. */
    StudyFolder without(Collection<Path> gone) {
        StudyFolder other = new StudyFolder(folder);
        files.stream().filter(f -> !gone.contains(f.document.file())).forEach(other.files::add);
        problems.stream().filter(p -> !gone.contains(p.file())).forEach(other.problems::add);
        other.remarks.addAll(remarks);
        return other;
    }

    /** All files that could be read, the study first, then by name. */
    List<File> files() {
        return files;
    }

    List<Problem> problems() {
        return problems;
    }

    List<FileRemark> remarks() {
        return remarks;
    }

    Optional<File> study() {
        return files.stream().filter(f -> f.id.equals(STUDY)).findFirst();
    }

    List<File> candidates() {
        return files.stream().filter(f -> !f.id.equals(STUDY)).toList();
    }

    private void read() {
        if (!Files.isDirectory(folder)) {
            String wrong = Files.exists(folder) ? "this is no folder" : "there is no such folder";
            problem(folder, wrong, "name a folder that holds a study.yaml");
            return;
        }
        List<Path> paths = paths();
        if (paths.size() > MOST_FILES) {
            problem(folder, "the folder holds more than " + MOST_FILES + " files", "split it");
            return;
        }
        paths.forEach(this::readFile);
        complete(paths);
    }

    /** Tells which files a study needs and are not there, and puts the others in order. */
    private void complete(List<Path> paths) {
        boolean hasStudy = paths.stream().anyMatch(p -> idOf(p).equals(STUDY));
        if (!hasStudy) {
            problem(folder, "there is no study.yaml in this folder", "add one");
        } else if (paths.size() == 1) {
            problem(
                    folder,
                    "there is no candidate beside study.yaml",
                    "add one, such as first.yaml");
        }
        files.sort(Comparator.comparing((File f) -> !f.id.equals(STUDY)).thenComparing(File::id));
    }

    private List<Path> paths() {
        List<Path> paths = new ArrayList<>();
        try (DirectoryStream<Path> all = Files.newDirectoryStream(folder)) {
            for (Path path : all) {
                String name = nameOf(path);
                if (name.endsWith(ENDING) && !name.startsWith(".")) {
                    paths.add(path);
                } else if (name.endsWith(".yml")) {
                    String words = "this file is not read; call it " + name.replace(".yml", ENDING);
                    remarks.add(new FileRemark(path, 1, 1, "", words));
                }
            }
        } catch (IOException | java.nio.file.DirectoryIteratorException unreadable) {
            problem(
                    folder,
                    "the folder cannot be read: " + unreadable.getMessage(),
                    "look at its permissions");
        }
        paths.sort(Comparator.comparing(StudyFolder::nameOf));
        return paths;
    }

    private void readFile(Path path) {
        if (!isNamedWell(path)) {
            return;
        }
        if (!Files.isRegularFile(path)) {
            problem(path, "this is no file that can be read", "take it out of the folder");
            return;
        }
        try {
            files.add(new File(idOf(path), YamlDocument.read(path)));
        } catch (IOException unreadable) {
            problem(path, "the file cannot be read: " + unreadable, "look at its permissions");
        }
    }

    private boolean isNamedWell(Path path) {
        boolean plain = Names.isPlain(idOf(path));
        if (!plain) {
            problem(
                    path,
                    "the file's name cannot be a candidate's name",
                    "use lower case letters, digits and hyphens before " + ENDING);
        }
        return plain;
    }

    private void problem(Path path, String wrong, String right) {
        problems.add(new Problem(path, 1, 1, "", wrong, right));
    }

    private static String nameOf(Path path) {
        return String.valueOf(path.getFileName());
    }

    private static String idOf(Path path) {
        String name = nameOf(path);
        return name.substring(0, name.length() - ENDING.length());
    }

    /** SHA-256 over names and contents, in order of name. */
    String fingerprint() {
        MessageDigest digest = sha256();
        files.stream()
                .sorted(Comparator.comparing(File::id))
                .forEach(
                        f -> {
                            add(digest, f.name());
                            add(digest, f.document.text());
                        });
        return HexFormat.of().formatHex(digest.digest());
    }

    private static void add(MessageDigest digest, String text) {
        byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
        digest.update((bytes.length + "\n").getBytes(StandardCharsets.UTF_8));
        digest.update(bytes);
    }

    private static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException("every Java knows SHA-256", impossible);
        }
    }
}
