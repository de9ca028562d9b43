package stillturning.files.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import stillturning.yaml.DocumentPlaces;

/** Where a study's own file speaks of a load: what the engine needs, what is shared or asked. */
public final class StudyMentions {

    private static final String NEEDS = "engine.needs";
    private static final String STARTER = "engine.starter";
    private static final String FAILS = "chances.fails";
    private static final String NEVER_DARK = "requirements.never-dark";

    private final WrittenKeys study;
    private final String load;

    public StudyMentions(StudyOutline study, String load) {
        this.study = study.written();
        this.load = load;
    }

    /** Whether the engine needs it, alone or with others. */
    public boolean isNeeded() {
        return word().matcher(needs()).find();
    }

    private String needs() {
        return study.under("engine").text("needs").orElse("");
    }

    private Pattern word() {
        return Pattern.compile("(?<![a-z0-9-])" + Pattern.quote(load) + "(?![a-z0-9-])");
    }

    /** Writes another name in all these places; what keeps the old one is told. */
    public List<String> rename(String to, FileEdits edits) throws ChangeRefused {
        if (isNeeded()) {
            edits.set(NEEDS, word().matcher(needs()).replaceAll(Matcher.quoteReplacement(to)));
        }
        if (isStarter()) {
            edits.set(STARTER, to);
        }
        if (hasRates()) {
            edits.rename(DocumentPlaces.under(FAILS, load), to);
        }
        for (String list : lists()) {
            for (int index : places(list)) {
                edits.set(DocumentPlaces.item(list, index), to);
            }
        }
        return isAskedAbout() ? List.of("cases that name it keep the old name") : List.of();
    }

    /** Cases are free words: who wrote them has to say whether they still mean the same. */
    private boolean isAskedAbout() {
        String spoken = load.replace('-', ' ');
        return study.under("cases").itemTexts().stream()
                .anyMatch(words -> words.replace('-', ' ').contains(spoken));
    }

    /** Takes it out of all these places; what else that does is told. */
    public List<String> remove(FileEdits edits) throws ChangeRefused {
        List<String> also = new ArrayList<>();
        if (isStarter()) {
            edits.remove(STARTER);
            also.add("leaves the engine without a starter");
        }
        if (hasRates()) {
            edits.remove(DocumentPlaces.under(FAILS, load));
        }
        if (!places(NEVER_DARK).isEmpty()) {
            edits.removeItems(NEVER_DARK, places(NEVER_DARK));
            also.add("takes it out of the loads that must never be dark");
        }
        for (int i = shares().size() - 1; i >= 0; i--) {
            List<Integer> out = places(shared(i));
            boolean alone = itemsAt(shared(i)).size() - out.size() < 2;
            if (!out.isEmpty() && alone) {
                edits.remove(DocumentPlaces.item("shares", i));
                also.add("takes out what only one part would share");
            } else {
                edits.removeItems(shared(i), out);
            }
        }
        return also;
    }

    private boolean isStarter() {
        return study.under("engine").text("starter").filter(load::equals).isPresent();
    }

    private boolean hasRates() {
        return study.under("chances").under("fails").fields().containsKey(load);
    }

    private List<WrittenKeys> shares() {
        return study.under("shares").items();
    }

    private static String shared(int index) {
        return DocumentPlaces.under(DocumentPlaces.item("shares", index), "parts");
    }

    private List<String> lists() {
        List<String> lists = new ArrayList<>(List.of(NEVER_DARK));
        for (int i = 0; i < shares().size(); i++) {
            lists.add(shared(i));
        }
        return lists;
    }

    private List<String> itemsAt(String list) {
        for (int i = 0; i < shares().size(); i++) {
            if (list.equals(shared(i))) {
                return shares().get(i).under("parts").itemTexts();
            }
        }
        return study.under("requirements").under("never-dark").itemTexts();
    }

    private List<Integer> places(String list) {
        List<String> items = itemsAt(list);
        List<Integer> places = new ArrayList<>();
        for (int i = 0; i < items.size(); i++) {
            if (items.get(i).equals(load)) {
                places.add(i);
            }
        }
        return places;
    }
}
