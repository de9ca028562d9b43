package stillturning.parts.element.curve;

/** Which edge of a protector's published band to play. */
public enum Tripping {
    FAST,
    TYPICAL,
    SLOW
}
