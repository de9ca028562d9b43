package stillturning.model;

/** Two terminals that are one net. */
public record Join(Terminal one, Terminal other) {}
