package stillturning.report;

import java.util.Map;
import java.util.stream.Collectors;
import stillturning.quantity.Formats;
import stillturning.story.Balance;
import stillturning.story.Balance.Account;

/** Where a story's energy came from and where it went, in one line. */
public final class BalanceText {

    private static final double JOULES_A_WATT_HOUR = 3600;

    private BalanceText() {}

    /**
     * {@code 250 Wh from batteries; 240 Wh to loads, 10 Wh to metal}; small accounts are left out.
     */
    public static String of(Balance balance) {
        return side(balance, true) + " given; " + side(balance, false) + " taken";
    }

    private static String side(Balance balance, boolean gives) {
        String accounts =
                balance.joules().entrySet().stream()
                        .filter(e -> e.getKey().gives() == gives)
                        .filter(e -> Math.abs(e.getValue()) >= JOULES_A_WATT_HOUR / 20)
                        .map(BalanceText::account)
                        .collect(Collectors.joining(", "));
        return accounts.isEmpty() ? "nothing to speak of" : accounts;
    }

    private static String account(Map.Entry<Account, Double> entry) {
        String name =
                switch (entry.getKey()) {
                    case BATTERIES -> "batteries";
                    case ALTERNATORS -> "alternators";
                    case CAPACITORS -> "capacitors";
                    case LOADS -> "loads";
                    case COILS -> "coils";
                    case METAL -> "wires and contacts";
                    case DIODES -> "diodes";
                    case CONVERTERS -> "converters";
                    case LOST_IN_BATTERIES -> "lost in batteries";
                    case LOST_IN_CAPACITORS -> "lost in capacitors";
                };
        return name + " " + Formats.fixed(entry.getValue() / JOULES_A_WATT_HOUR, 1) + " Wh";
    }
}
