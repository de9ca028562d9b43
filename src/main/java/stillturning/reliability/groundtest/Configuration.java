package stillturning.reliability.groundtest;

/** How the aircraft stands while steps are made. */
public enum Configuration {
    /** Engine at rest, everything on that its levers have on in flight, fed by the batteries. */
    ENGINE_STOPPED,
    /** Engine running as in the run-up. */
    ENGINE_RUNNING
}
