package stillturning.parts.element;

/** Which edge of a protector's published band to play. */
public enum Tripping {
    FAST,
    TYPICAL,
    SLOW
}
