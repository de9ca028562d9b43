package stillturning.report.drawing;

/** What a picture is shown on; painters use the colours for light paper. */
public enum Paper {
    LIGHT,
    DARK;

    /**
     * The colour on this paper for one on light paper, both as hexadecimal red-green-blue triples;
     * what is not filled stays so.
     *
     * @throws IllegalArgumentException if no picture uses the colour
     */
    public String colour(String light) {
        if (light.equals(Stroke.NO_FILL)) {
            return light;
        }
        Colours ink = Colours.of(light);
        return this == LIGHT ? ink.light : ink.dark;
    }

    /** The colour of the paper itself. */
    public String ground() {
        return colour(Stroke.PAPER);
    }
}
