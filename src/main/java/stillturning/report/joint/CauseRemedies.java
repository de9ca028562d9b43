package stillturning.report.joint;

import stillturning.model.failure.Cause;

/** What keeps a common cause from taking all of its parts. */
final class CauseRemedies {

    private CauseRemedies() {}

    /** Parts that lie together are led apart; parts that are alike fail alike on any route. */
    static String of(Cause.CauseKind kind) {
        return switch (kind) {
            case ZONE -> "lead one of the feeds round this zone, or put its parts elsewhere";
            case HOLE -> "a hole of its own for one of the feeds";
            case BUNDLE -> "tie one of the feeds into another bundle";
            case MOUNT -> "a bracket of its own for one of them";
            case FIRMWARE -> "another program in one of the two, or a way round both";
            case ALIKE -> "another kind or make in place of one of the two";
        };
    }
}
