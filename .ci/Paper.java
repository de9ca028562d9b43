import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import org.verapdf.gf.foundry.VeraGreenfieldFoundryProvider;
import org.verapdf.pdfa.Foundries;
import org.verapdf.pdfa.PDFAParser;
import org.verapdf.pdfa.PDFAValidator;
import org.verapdf.pdfa.flavours.PDFAFlavour;
import org.verapdf.pdfa.results.TestAssertion;
import org.verapdf.pdfa.results.ValidationResult;

/** Says whether a PDF keeps the rules for readers of screens and for archives; 1 if it does not. */
final class Paper {

    public static void main(String[] args) throws Exception {
        VeraGreenfieldFoundryProvider.initialise();
        boolean all = true;
        for (PDFAFlavour flavour : new PDFAFlavour[] {PDFAFlavour.PDFUA_1, PDFAFlavour.PDFA_3_A}) {
            all &= keeps(Path.of(args[0]), flavour);
        }
        System.exit(all ? 0 : 1);
    }

    private static boolean keeps(Path pdf, PDFAFlavour flavour) throws Exception {
        try (InputStream in = Files.newInputStream(pdf);
                PDFAParser parser = Foundries.defaultInstance().createParser(in, flavour);
                PDFAValidator validator =
                        Foundries.defaultInstance().createValidator(flavour, false)) {
            ValidationResult result = validator.validate(parser);
            System.out.println(
                    "paper: "
                            + flavour
                            + ": "
                            + result.getTotalAssertions()
                            + " checks, "
                            + (result.isCompliant() ? "all kept" : "BROKEN"));
            Map<String, Integer> broken = new TreeMap<>();
            for (TestAssertion one : result.getTestAssertions()) {
                if (one.getStatus() == TestAssertion.Status.FAILED) {
                    broken.merge(
                            one.getRuleId().getClause() + " " + one.getMessage(), 1, Integer::sum);
                }
            }
            broken.forEach(
                    (rule, count) -> System.out.println("paper:   " + count + " times: " + rule));
            return result.isCompliant();
        }
    }
}
