package stillturning.desktop.view.picture;

/** A port of a symbol. */
public record SymbolPort(String symbol, String port) {}
