package stillturning.files.edit;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import stillturning.files.edit.CandidateOutline.OutlineRun;
import stillturning.files.edit.Mentions.Mention;
import stillturning.yaml.DocumentPlaces;

/** Takes parts and runs out of a candidate's file, with everything that speaks of them. */
final class Deletion {

    private final CandidateOutline outline;
    private final FileEdits edits;
    private final Set<String> gone = new LinkedHashSet<>();
    private final Set<OutlineRun> cut = new LinkedHashSet<>();
    private final List<String> also = new ArrayList<>();

    /**
     * @param parts names of parts that the file writes
     * @param runs runs that go anyway
     */
    Deletion(CandidateOutline outline, Set<String> parts, Set<OutlineRun> runs, FileEdits edits) {
        this.outline = outline;
        this.edits = edits;
        gone.addAll(parts);
        runs.forEach(this::cut);
        followRuns();
    }

    /** A load of the study with its feeds. */
    static Deletion ofLoad(CandidateOutline outline, String load, FileEdits edits) {
        return new Deletion(outline, Set.of(load), Set.copyOf(outline.feedsOf(load)), edits);
    }

    private void cut(OutlineRun run) {
        cut.add(run);
        gone.addAll(run.line().makes(Naming.prefix(run.key())));
        boolean lastFeed =
                run.section().equals(CandidateOutline.FEEDS)
                        && outline.runs().stream()
                                .filter(r -> r.section().equals(CandidateOutline.FEEDS))
                                .filter(r -> !cut.contains(r))
                                .noneMatch(
                                        r -> Naming.part(r.key()).equals(Naming.part(run.key())));
        if (run.section().equals(CandidateOutline.FEEDS)) {
            gone.add(Naming.prefix(run.key()) + "-return");
        }
        if (lastFeed) {
            gone.add(Naming.part(run.key()) + "-return");
        }
    }

    /** A run that starts or ends at what is gone goes too, and with it what it makes. */
    private void followRuns() {
        boolean more = true;
        while (more) {
            more = false;
            for (OutlineRun run : outline.runs()) {
                if (!cut.contains(run) && run.line().ends(gone::contains)) {
                    cut(run);
                    also.add("takes the " + word(run) + " " + run.key() + " out");
                    more = true;
                }
            }
        }
    }

    private static String word(OutlineRun run) {
        return run.section().equals(CandidateOutline.FEEDS) ? "feed of" : "link";
    }

    /** Writes it; what it takes along is told. */
    List<String> write() throws ChangeRefused {
        Mentions mentions = new Mentions(outline.all());
        runs();
        for (String part : gone) {
            if (outline.parts().containsKey(part)) {
                edits.remove(DocumentPlaces.under(CandidateOutline.PARTS, part));
            }
        }
        shares();
        Set<String> cues = new LinkedHashSet<>();
        Set<String> procedures = new LinkedHashSet<>();
        for (Mention mention : mentions.of(gone::contains)) {
            switch (mention.kind()) {
                case NOTE, POSITION, RETURN, SHOWN -> edits.remove(mention.path());
                case CUE -> cues.add(mention.owner());
                case ACTOR -> procedures.add(mention.owner());
                case SHARE, SHED, LEFT_OUT -> {} // list by list
            }
        }
        sheds();
        cues(cues, procedures);
        return also;
    }

    private void runs() throws ChangeRefused {
        for (OutlineRun run : outline.runs()) {
            RunLine left = run.line().without(gone::contains);
            if (cut.contains(run)) {
                edits.remove(run.path());
            } else if (!left.equals(run.line())) {
                edits.set(run.path(), left.text());
                also.add("leads " + run.key() + " past it");
            }
        }
    }

    private void shares() throws ChangeRefused {
        Set<String> names = new LinkedHashSet<>(gone);
        cut.forEach(run -> names.add(run.key()));
        List<WrittenKeys> shares = outline.all().under("shares").items();
        for (int i = shares.size() - 1; i >= 0; i--) {
            List<String> parts = shares.get(i).under("parts").itemTexts();
            List<Integer> out = indices(parts, names);
            String path = DocumentPlaces.item("shares", i);
            if (!out.isEmpty() && parts.size() - out.size() < 2) {
                edits.remove(path);
                also.add("takes out what only one part would share");
            } else {
                edits.removeItems(DocumentPlaces.under(path, "parts"), out);
            }
        }
    }

    private void sheds() throws ChangeRefused {
        WrittenKeys procedures = outline.all().under("procedures");
        for (String procedure : procedures.fields().keySet()) {
            List<String> sheds = procedures.under(procedure).under("sheds").itemTexts();
            String path =
                    DocumentPlaces.under(DocumentPlaces.under("procedures", procedure), "sheds");
            edits.removeItems(path, indices(sheds, gone));
        }
    }

    private static List<Integer> indices(List<String> items, Set<String> names) {
        List<Integer> indices = new ArrayList<>();
        for (int i = 0; i < items.size(); i++) {
            if (names.contains(items.get(i)) || names.contains(Naming.part(items.get(i)))) {
                indices.add(i);
            }
        }
        return indices;
    }

    /** A procedure goes with the last cue that starts it, and with what does it. */
    private void cues(Set<String> cues, Set<String> procedures) throws ChangeRefused {
        WrittenKeys all = outline.all().under("procedures");
        for (String procedure : all.fields().keySet()) {
            List<String> when = all.under(procedure).under("when").itemTexts();
            List<Integer> out = indices(when, cues);
            if (procedures.contains(procedure) || (!out.isEmpty() && out.size() == when.size())) {
                edits.remove(DocumentPlaces.under("procedures", procedure));
                also.add("takes the procedure " + procedure + " out");
            } else {
                edits.removeItems(
                        DocumentPlaces.under(DocumentPlaces.under("procedures", procedure), "when"),
                        out);
            }
        }
        for (String cue : cues) {
            edits.remove(DocumentPlaces.under("sees", cue));
            also.add("takes the cue " + cue + " out");
        }
    }
}
