package stillturning.story;

import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * Where the energy of a story came from and where it went.
 *
 * @param joules energy by account (J); a battery that was charged on the whole has given less than
 *     0
 * @param charges what became of the charge of each battery and capacitor
 * @param residual what is missing, as a part of all energy that flowed
 */
public record Balance(Map<Account, Double> joules, List<Charge> charges, double residual) {

    /** Who gives or takes. */
    public enum Account {
        BATTERIES(true),
        ALTERNATORS(true),
        /** Only in a candidate that has any. */
        CAPACITORS(true),
        LOADS(false),
        COILS(false),
        /** Wires, contacts, protectors, solid-state channels, ground points. */
        METAL(false),
        DIODES(false),
        CONVERTERS(false),
        /** Inner resistance, charge that a high current wastes, charging of what is full. */
        LOST_IN_BATTERIES(false),
        /** Series resistance and leakage. */
        LOST_IN_CAPACITORS(false);

        private final boolean gives;

        Account(boolean gives) {
            this.gives = gives;
        }

        /** Whether it counts on the side of the sources. */
        public boolean gives() {
            return gives;
        }
    }

    /**
     * A battery or a capacitor over the story.
     *
     * @param coulombs what flowed out of its terminal (C), below 0 if more flowed in
     * @param used part of its charge that this used up, by Peukert's rule where it applies
     */
    public record Charge(String part, double coulombs, double used) {}

    public Balance {
        Map<Account, Double> ordered = new EnumMap<>(Account.class);
        ordered.putAll(joules);
        joules = Collections.unmodifiableMap(ordered);
        charges = List.copyOf(charges);
    }

    /** Energy of an account (J). */
    public double joules(Account account) {
        return joules.getOrDefault(account, 0.0);
    }

    /** What the sources gave (J). */
    public double given() {
        return joules.keySet().stream().filter(Account::gives).mapToDouble(this::joules).sum();
    }
}
