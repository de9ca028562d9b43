import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.asciidoctor.Asciidoctor;
import org.asciidoctor.Attributes;
import org.asciidoctor.Options;
import org.asciidoctor.SafeMode;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;
import picocli.codegen.docgen.manpage.ManPageGenerator;
import stillturning.cli.Main;

/** Writes a manual page for each command, from the commands' own definitions. */
public final class ManPages {

    private ManPages() {}

    /**
     * Writes them.
     *
     * @param words the folder where to, and the program's version
     */
    public static void main(String... words) throws IOException {
        Path folder = Files.createDirectories(Path.of(words[0]));
        Path texts = Files.createTempDirectory("man");
        int code =
                ManPageGenerator.generateManPage(
                        texts.toFile(),
                        (File) null,
                        new boolean[0],
                        true,
                        all(Main.definition()).toArray(CommandSpec[]::new));
        if (code != 0) {
            throw new IOException("the texts of the manual could not be written: " + code);
        }
        try (Asciidoctor pages = Asciidoctor.Factory.create();
                Stream<Path> written = Files.list(texts)) {
            Options how =
                    Options.builder()
                            .backend("manpage")
                            .safe(SafeMode.UNSAFE)
                            .toFile(false)
                            .standalone(true)
                            .attributes(Attributes.builder().attribute("reproducible").build())
                            .build();
            for (Path text : written.sorted().toList()) {
                // what runs from classes does not know its version
                String said = Files.readString(text).replace("(built from source)", words[1]);
                String name = text.getFileName().toString().replace(".adoc", ".1");
                Files.writeString(folder.resolve(name), pages.convert(said, how));
            }
        }
    }

    private static List<CommandSpec> all(CommandSpec spec) {
        List<CommandSpec> found = new ArrayList<>(List.of(spec));
        spec.subcommands().values().stream()
                .map(CommandLine::getCommandSpec)
                .forEach(below -> found.addAll(all(below)));
        return found;
    }
}
