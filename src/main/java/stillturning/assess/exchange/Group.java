package stillturning.assess.exchange;

import java.util.List;

/** Things in which candidates may differ, in the order in which they are told. */
public enum Group {
    /** Chemistry, capacity, age, charge, weight and price of batteries that both have. */
    BATTERIES("batteries", false),
    /** Alternators, their guards, and batteries that only one has. */
    CHARGING("charging", true),
    /** Breakers, fuses, switches, contactors, controllers. */
    SWITCHING("protection and switching", true),
    /** Buses, diodes, connectors, and ways that only one has. */
    FEEDS("feed paths", true),
    /** Grounds. */
    GROUNDS("grounds", true),
    /** Gauge and length of wires that both have. */
    WIRES("wires", false),
    /** What the pilot sees and does. */
    PROCEDURES("procedures", true);

    /** Most groups whose mixes are all assessed: 2 to the power of this. */
    public static final int MOST = 6;

    private final String words;
    private final boolean layout;

    Group(String words, boolean layout) {
        this.words = words;
        this.layout = layout;
    }

    public String words() {
        return words;
    }

    /** Whether it is a matter of architecture, and not of what is bought for it. */
    public boolean isLayout() {
        return layout;
    }

    /** Groups that go together, in words. */
    public static String words(List<Group> together) {
        List<String> all = together.stream().map(Group::words).toList();
        int last = all.size() - 1;
        return last < 1
                ? String.join("", all)
                : String.join(", ", all.subList(0, last)) + " and " + all.get(last);
    }
}
