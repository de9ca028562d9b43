package stillturning.report.paper;

import java.util.List;
import java.util.Optional;
import stillturning.report.page.Document.Chapter;
import stillturning.report.page.JointSection;

/** Cards for the cockpit, of the chosen candidate only. */
final class CockpitCards {

    private final Standpoint from;
    private final Optional<JointSection> together;

    CockpitCards(Standpoint from, Optional<JointSection> together) {
        this.from = from;
        this.together = together;
    }

    List<Chapter> cards() {
        return from.chosen().isEmpty() || together.isEmpty() ? List.of() : List.of();
    }
}
