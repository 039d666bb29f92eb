package hushmaze.drawing;

/**
 * The few colours used, as sRGB. Colour never carries a meaning alone: every use of it is doubled by a line pattern, a
 * shape or a word.
 */
public enum Ink {
    BLACK(0x1a1a1a),
    /** Captions and secondary lines. */
    GREY(0x5f6670),
    /** Rules of tables and grids of charts. */
    LIGHT(0xb9bfc6),
    /** Background of offcuts and headings. */
    PALE(0xeef0f2),
    /** The air and what comes of it. */
    ACCENT(0x1f5f7a),
    /** Filled ranges. */
    ACCENT_PALE(0xcfe0e7),
    /** What is not as asked. */
    ALERT(0xa63a1e),
    WHITE(0xffffff);

    private final int rgb;

    Ink(int rgb) {
        this.rgb = rgb;
    }

    /** Red, green and blue as 0xRRGGBB. */
    public int rgb() {
        return rgb;
    }

    /** As written in SVG and style sheets: "#1f5f7a". */
    public String hex() {
        return String.format(java.util.Locale.ROOT, "#%06x", rgb);
    }
}
