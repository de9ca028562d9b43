package stillturning.files.entry;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import stillturning.files.entry.NeedsText.LoadMention;
import stillturning.model.EngineLogic;
import stillturning.yaml.notation.TextForm;

/**
 * Reads engine logic: {@code all = any ("and" any)* | any; any = term ("or" term)*}, with brackets
 * wherever the two meet.
 */
final class NeedsForm {

    static final String EXAMPLE = "(computer-a or computer-b) and coils and 1 of (pump-1, pump-2)";

    private static final Pattern TOKEN = Pattern.compile("[a-z0-9][a-z0-9-]*|[(),]|[^ \t\r\n(),]+");
    private static final Pattern NAME = Pattern.compile("[a-z0-9][a-z0-9-]*");
    private static final Pattern COUNT = Pattern.compile("[0-9]{1,3}");
    private static final Set<String> WORDS = Set.of("and", "or", "of");
    private static final int DEEPEST = 20;

    /** The first mistake; the rest of the text cannot be trusted after it. */
    private static final class Fault extends Exception {
        private static final long serialVersionUID = 1;
        private final transient TextPiece at;
        private final String right;

        Fault(TextPiece at, String wrong, String right) {
            super(wrong, null, false, false);
            this.at = at;
            this.right = right;
        }
    }

    private final List<TextPiece> tokens;
    private final TextPiece end;
    private final List<LoadMention> mentions = new ArrayList<>();
    private int next;

    private NeedsForm(String text) {
        List<TextPiece> found = new ArrayList<>();
        Matcher matcher = TOKEN.matcher(text);
        while (matcher.find()) {
            found.add(new TextPiece(matcher.group(), matcher.start()));
        }
        tokens = List.copyOf(found);
        end = new TextPiece("", text.length());
    }

    static Optional<NeedsText> read(String text, TextForm.FaultReceiver faults) {
        NeedsForm form = new NeedsForm(text);
        try {
            EngineLogic logic = form.terms(0);
            if (form.next < form.tokens.size()) {
                throw form.strange("write \"and\" or \"or\" between loads");
            }
            return Optional.of(new NeedsText(logic, form.mentions));
        } catch (Fault fault) {
            faults.at(fault.at.offset(), String.valueOf(fault.getMessage()), fault.right);
            return Optional.empty();
        }
    }

    private EngineLogic terms(int depth) throws Fault {
        List<EngineLogic> terms = new ArrayList<>();
        terms.add(term(depth));
        String joint = peek().text();
        while (peek().text().equals("and") || peek().text().equals("or")) {
            if (!peek().text().equals(joint)) {
                throw new Fault(
                        peek(),
                        "\"and\" and \"or\" stand beside each other",
                        "put brackets around what belongs together");
            }
            TextPiece word = take();
            terms.add(term(depth));
            refuseTwice(terms, word);
        }
        if (terms.size() == 1) {
            return terms.get(0);
        }
        return joint.equals("and") ? EngineLogic.allOf(terms) : EngineLogic.anyOf(terms);
    }

    private static void refuseTwice(List<EngineLogic> terms, TextPiece at) throws Fault {
        if (new HashSet<>(terms).size() < terms.size()) {
            String twice = terms.get(terms.size() - 1).inWords();
            throw new Fault(
                    at, "\"" + TextPiece.shown(twice) + "\" is asked for twice", "keep one");
        }
    }

    private EngineLogic term(int depth) throws Fault {
        if (depth > DEEPEST) {
            throw new Fault(peek(), "brackets are nested more than 20 deep", "nest less");
        }
        TextPiece token = peek();
        if (token.text().equals("(")) {
            take();
            EngineLogic inside = terms(depth + 1);
            expect(")");
            return inside;
        }
        if (COUNT.matcher(token.text()).matches() && peekAfter().text().equals("of")) {
            return count(take(), depth);
        }
        if (!NAME.matcher(token.text()).matches() || WORDS.contains(token.text())) {
            throw strange("write a load, such as " + EXAMPLE);
        }
        mentions.add(new LoadMention(token.text(), token.offset()));
        return new EngineLogic.One(take().text());
    }

    private EngineLogic count(TextPiece number, int depth) throws Fault {
        expect("of");
        expect("(");
        List<EngineLogic> terms = new ArrayList<>();
        terms.add(terms(depth + 1));
        while (peek().text().equals(",")) {
            TextPiece comma = take();
            terms.add(terms(depth + 1));
            refuseTwice(terms, comma);
        }
        expect(")");
        int least = Integer.parseInt(number.text());
        if (least < 1 || least > terms.size()) {
            throw new Fault(
                    number,
                    least + " of " + terms.size() + " is not possible",
                    "write a number from 1 to " + terms.size());
        }
        return new EngineLogic.AtLeast(least, terms);
    }

    private void expect(String token) throws Fault {
        if (!peek().text().equals(token)) {
            throw strange("write \"" + token + "\" here");
        }
        take();
    }

    private Fault strange(String right) {
        TextPiece at = peek();
        String wrong =
                next < tokens.size()
                        ? "\"" + at.shown() + "\" does not belong here"
                        : "the text ends too early";
        return new Fault(at, wrong, right);
    }

    private TextPiece peek() {
        return next < tokens.size() ? tokens.get(next) : end;
    }

    private TextPiece peekAfter() {
        return next + 1 < tokens.size() ? tokens.get(next + 1) : end;
    }

    private TextPiece take() {
        TextPiece token = peek();
        next++;
        return token;
    }
}
