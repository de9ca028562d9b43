package stillturning.desktop.view.picture;

/** A port of a symbol. */
public record PortOf(String symbol, String port) {}
