package stillturning.desktop.draft;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stillturning.yaml.YamlDocument;

/** Unsaved work as bytes; texts stand in it as they are, so that a person can read them too. */
record JournalText(Instant when, List<UnsavedText> entries) {

    private static final String HEAD = "stillturning: unsaved work, format 1\n";
    private static final int MOST_FILES = 1000;

    /**
     * What is unsaved in one file.
     *
     * @param base text of the file on disk that the work began with
     * @param baseOnDisk fingerprint of that file
     * @param text the work; empty if the file was to be deleted
     */
    record UnsavedText(
            String file,
            Optional<String> base,
            Optional<String> baseOnDisk,
            Optional<String> text) {}

    JournalText {
        entries = List.copyOf(entries);
    }

    /** What is unsaved in these files. */
    static JournalText of(EditedFiles files, Instant when) {
        List<UnsavedText> entries = new ArrayList<>();
        for (String name : files.unsaved()) {
            EditedFile file = files.at(name);
            Optional<String> onDisk = file.disk().flatMap(YamlDocument::onDisk);
            entries.add(new UnsavedText(name, file.diskText(), onDisk, file.text()));
        }
        return new JournalText(when, entries);
    }

    byte[] bytes() throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (DataOutputStream out = new DataOutputStream(bytes)) {
            out.write(HEAD.getBytes(StandardCharsets.UTF_8));
            out.writeLong(when.toEpochMilli());
            out.writeInt(entries.size());
            for (UnsavedText entry : entries) {
                write(out, Optional.of(entry.file));
                write(out, entry.base);
                write(out, entry.baseOnDisk);
                write(out, entry.text);
            }
        }
        return bytes.toByteArray();
    }

    private static void write(DataOutputStream out, Optional<String> text) throws IOException {
        out.writeBoolean(text.isPresent());
        if (text.isPresent()) {
            byte[] bytes = text.get().getBytes(StandardCharsets.UTF_8);
            out.writeInt(bytes.length);
            out.write(bytes);
            out.write('\n');
        }
    }

    /**
     * Reads what {@link #bytes} made.
     *
     * @throws IOException if it is something else
     */
    static JournalText read(byte[] bytes) throws IOException {
        try (DataInputStream in = new DataInputStream(new ByteArrayInputStream(bytes))) {
            String head = new String(in.readNBytes(HEAD.length()), StandardCharsets.UTF_8);
            if (!head.equals(HEAD)) {
                throw new IOException("this is no unsaved work of this program");
            }
            Instant when = Instant.ofEpochMilli(in.readLong());
            int count = in.readInt();
            if (count < 0 || count > MOST_FILES) {
                throw new IOException("the unsaved work is damaged");
            }
            List<UnsavedText> entries = new ArrayList<>();
            for (int i = 0; i < count; i++) {
                String file =
                        read(in).orElseThrow(() -> new IOException("the unsaved work is damaged"));
                entries.add(new UnsavedText(file, read(in), read(in), read(in)));
            }
            return new JournalText(when, entries);
        }
    }

    private static Optional<String> read(DataInputStream in) throws IOException {
        if (!in.readBoolean()) {
            return Optional.empty();
        }
        int length = in.readInt();
        if (length < 0 || length >= in.available()) {
            throw new IOException("the unsaved work is damaged");
        }
        String text = new String(in.readNBytes(length), StandardCharsets.UTF_8);
        in.readByte();
        return Optional.of(text);
    }
}
