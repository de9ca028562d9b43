package stillturning.files.entry;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import stillturning.parts.RatedChannel;
import stillturning.quantity.Dimension;
import stillturning.yaml.Spelling;
import stillturning.yaml.notation.Given;
import stillturning.yaml.notation.TextForm;
import stillturning.yaml.notation.Written;

/** Reads a controller's channel, written {@code 10 A} or {@code 10 A, default on}. */
final class ChannelText {

    static final String EXAMPLE = "10 A, default on";

    private static final String ON = "default on";
    private static final List<String> DEFAULTS = List.of(ON, "default off");

    private ChannelText() {}

    static Optional<Written> read(String text, TextForm.FaultReceiver faults) {
        List<TextPiece> pieces = TextPiece.splitAtCommas(text);
        Optional<Given> rating = pieces.get(0).above0(Dimension.CURRENT, faults);
        for (int i = 1; i < pieces.size(); i++) {
            TextPiece piece = pieces.get(i);
            if (i > 1 || !DEFAULTS.contains(piece.text())) {
                faults.at(
                        piece.offset(),
                        "\"" + piece.shown() + "\" does not belong here",
                        Spelling.didYouMean(piece.text(), DEFAULTS) + "write " + EXAMPLE);
                return Optional.empty();
            }
        }
        boolean on = pieces.size() > 1 && pieces.get(1).text().equals(ON);
        return rating.map(
                r -> new Written(RatedChannel.class, Map.of("rating", r, "on-by-default", on)));
    }
}
