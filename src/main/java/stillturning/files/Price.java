package stillturning.files;

/** Money: an amount and the three-letter code of its currency, written {@code 120 EUR}. */
public record Price(double amount, String currency) {}
