package stillturning.report.html;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import stillturning.assess.Assessment;
import stillturning.model.Candidate;
import stillturning.model.Installation;
import stillturning.report.ReportSamples;
import stillturning.sizing.Sizing;
import stillturning.sizing.SurveyDepth;
import stillturning.sizing.result.SizeFinding;
import stillturning.sizing.result.SizingReport;
import stillturning.story.UntoldStory;

class SizeSheetsTest {

    private static final Assessment ASSESSMENT = ReportSamples.assessment();

    private static String page(List<SizingReport> sizes) {
        return HtmlPage.of(
                ASSESSMENT,
                ReportSamples.sources(),
                new PageContents(Optional.empty(), List.of(), sizes, Optional.empty()));
    }

    @Test
    void sizesStandOnThePageFindingsFirst() throws UntoldStory {
        Candidate candidate = ASSESSMENT.study().candidates().get(0);
        SizingReport report =
                Sizing.of(
                        ASSESSMENT.study(),
                        candidate,
                        Installation.USUAL,
                        SurveyDepth.NOTHING_WRONG);
        String page = page(List.of(report));
        String section = page.substring(page.indexOf("<section id=\"sizes\">"));
        assertTrue(page.contains("<a href=\"#sizes\">"));
        assertTrue(section.contains("What each load takes"));
        assertTrue(section.contains("Bill of materials"));
        for (SizeFinding finding : report.findings()) {
            int told = section.indexOf("<th scope=\"row\">" + finding.part());
            assertTrue(told > 0 && told < section.indexOf("What each load takes"));
        }
        assertTrue(section.indexOf("</section>") > 0);
    }

    @Test
    void theChosenCandidatesWiresHaveALabelAtBothEnds() throws UntoldStory {
        List<SizingReport> reports = new ArrayList<>();
        for (Candidate candidate : ASSESSMENT.study().candidates()) {
            reports.add(
                    Sizing.of(
                            ASSESSMENT.study(),
                            candidate,
                            Installation.USUAL,
                            SurveyDepth.NOTHING_WRONG));
        }
        assertTrue(reports.get(1).wires().wires().size() > 0);
        String page = page(List.of(reports.get(1), reports.get(0)));
        int labels = page.split("class=\"sleeve[\" ]", -1).length - 1;
        assertEquals(2 * reports.get(1).wires().wires().size(), labels);
    }

    @Test
    void aPageWithoutSizesDoesNotSpeakOfThem() {
        assertFalse(page(List.of()).contains("id=\"sizes\""));
    }
}
