package stillturning.model;

/** From where the pilot can move a lever. */
public enum Reach {
    /** From his seat, strapped in: in flight as on the ground. */
    SEAT,
    /** On the ground only: out of his seat or with his belts off, the engine running. */
    GROUND,
    /** Not without opening the aircraft. */
    NONE;

    /** Whether it can be moved during the run-up. */
    public boolean onGround() {
        return this != NONE;
    }
}
