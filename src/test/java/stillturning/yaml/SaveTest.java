package stillturning.yaml;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stillturning.yaml.edit.EditRefused;
import stillturning.yaml.edit.YamlEdit;

class SaveTest {

    @TempDir Path folder;

    private Path file() {
        return folder.resolve("study.yaml");
    }

    private List<String> names() throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(f -> f.getFileName().toString()).sorted().toList();
        }
    }

    private static YamlDocument titled(YamlDocument document, String title) throws EditRefused {
        return new YamlEdit.Set("title", YamlValue.text(title)).on(document).document();
    }

    @Test
    void savingKeepsTheContentBeforeBesideTheFile() throws Exception {
        Files.writeString(file(), "title: a # kept\n");
        YamlDocument first = titled(YamlDocument.read(file()), "b").save();
        assertEquals("title: b # kept\n", Files.readString(file()));
        assertEquals("title: a # kept\n", Files.readString(folder.resolve("study.yaml~")));
        titled(first, "c").save();
        assertEquals("title: c # kept\n", Files.readString(file()));
        assertEquals("title: b # kept\n", Files.readString(folder.resolve("study.yaml~")));
        assertEquals(List.of("study.yaml", "study.yaml~"), names());
    }

    @Test
    void aFileThatSomebodyChangedMeanwhileIsLeftAlone() throws Exception {
        Files.writeString(file(), "title: a\n");
        YamlDocument mine = titled(YamlDocument.read(file()), "b");
        Files.writeString(file(), "title: x\n");
        ChangedOnDisk told = assertThrows(ChangedOnDisk.class, mine::save);
        assertEquals(
                "study.yaml was changed since it was read; read it again and repeat the change",
                told.getMessage());
        assertEquals("title: x\n", Files.readString(file()));
        Files.delete(file());
        assertThrows(ChangedOnDisk.class, mine::save);
        assertEquals(List.of(), names());
    }

    @Test
    void aNewDocumentNeverOverwritesAFile() throws Exception {
        YamlDocument made = YamlDocument.of(file(), "title: a\n");
        YamlDocument saved = made.save();
        assertThrows(ChangedOnDisk.class, made::save);
        titled(saved, "b").save();
        assertEquals("title: b\n", Files.readString(file()));
    }

    @Test
    void byteOrderMarkLineEndsPermissionsAndLinksStay() throws Exception {
        byte[] before = "\ufefftitle: a\r\n".getBytes(StandardCharsets.UTF_8);
        Files.write(file(), before);
        Files.setPosixFilePermissions(file(), PosixFilePermissions.fromString("rw-r-----"));
        Path link = Files.createSymbolicLink(folder.resolve("link.yaml"), file());
        titled(YamlDocument.read(link), "b").save();
        assertArrayEquals(
                "\ufefftitle: b\r\n".getBytes(StandardCharsets.UTF_8), Files.readAllBytes(file()));
        assertEquals(
                "rw-r-----", PosixFilePermissions.toString(Files.getPosixFilePermissions(file())));
        assertFalse(Files.isSymbolicLink(file()));
        assertEquals(file().toRealPath(), link.toRealPath());
    }
}
