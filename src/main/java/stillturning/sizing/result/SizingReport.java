package stillturning.sizing.result;

import java.util.List;
import stillturning.model.Candidate;

/**
 * Everything about the sizes of one candidate.
 *
 * @param findings what is not as it should be, gravest first
 * @param untold failures that could not be computed, so that their currents are missing
 */
public record SizingReport(
        Candidate candidate,
        List<SizeFinding> findings,
        LoadAnalysis loads,
        WireSchedule wires,
        Devices devices,
        List<CrankingSupply> cranking,
        Purchase purchase,
        List<String> untold) {

    /** Protectors and contacts. */
    public record Devices(List<ProtectorSize> protectors, List<ContactSize> contacts) {
        public Devices {
            protectors = List.copyOf(protectors);
            contacts = List.copyOf(contacts);
        }
    }

    /** What has to be bought and carried. */
    public record Purchase(WeightSheet weight, List<BillRow> bill) {
        public Purchase {
            bill = List.copyOf(bill);
        }
    }

    public SizingReport {
        findings = List.copyOf(findings);
        cranking = List.copyOf(cranking);
        untold = List.copyOf(untold);
    }

    /** Findings that break a limit. */
    public long wrong() {
        return findings.stream().filter(f -> f.rule().gravity() == Rule.Gravity.WRONG).count();
    }
}
