package stillturning.parts.protection;

import java.util.List;
import stillturning.parts.Damage;
import stillturning.parts.FailureMode;
import stillturning.parts.Faults;
import stillturning.parts.element.Protector;

/** How everything fails that opens by heat. */
final class ProtectorModes {

    private ProtectorModes() {}

    /**
     * Opens too early, or not at all.
     *
     * @param inspection how to find out that it would not open
     */
    static List<FailureMode> of(Protector protector, String inspection) {
        return List.of(
                // heat is what a protector opens from, and a wet contact corrodes open
                FailureMode.of("opens-for-no-reason", Faults.open(protector.name()))
                        .by(Damage.TORN, Damage.SCORCHED, Damage.SOAKED)
                        .alsoCalled("open"),
                FailureMode.of(
                                "does-not-open-when-it-should",
                                Faults.metalFor(protector, protector.ohms()))
                        .inspectedBy(inspection));
    }
}
