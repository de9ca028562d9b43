package stillturning.cli.suggest;

import java.util.List;
import java.util.Optional;
import stillturning.assess.suggest.Suggestion;
import stillturning.cli.terminal.Answer;
import stillturning.cli.terminal.Output;
import stillturning.dossier.suggest.Suggested;
import stillturning.report.suggest.SuggestJson;
import stillturning.report.suggest.SuggestionWords;

/**
 * What was found.
 *
 * @param saved the file that was written, if one was
 */
record Answered(Suggested suggested, Optional<String> saved) implements Answer {

    @Override
    public String json() {
        return SuggestJson.SUGGESTIONS.text(suggested.suggestions());
    }

    @Override
    public void print(Output out) {
        SuggestionWords words = new SuggestionWords(suggested.suggestions());
        out.paragraph(words.wanted());
        if (suggested.suggestions().wanted().isNothing()) {
            return;
        }
        out.paragraph(words.found());
        words.outweighed().ifPresent(out::paragraph);
        List<Suggestion> found = suggested.suggestions().found();
        for (int i = 0; i < found.size(); i++) {
            out.line("").paragraph(lead(i + 1), SuggestionWords.moves(found.get(i)));
            words.about(found.get(i)).forEach(line -> out.paragraph("    ", line));
        }
        out.line("").paragraph(words.done()).paragraph(SuggestionWords.MEANING);
        saved.ifPresent(file -> out.line("written: " + file));
    }

    private static String lead(int number) {
        String written = String.valueOf(number);
        return written + " ".repeat(Math.max(1, 4 - written.length()));
    }
}
