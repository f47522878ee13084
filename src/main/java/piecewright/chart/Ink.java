package piecewright.chart;

/** Colours of the pictures. Yellow to brown are left to malt; each line has a dash or a word of its own too. */
final class Ink {
    static final String TEXT = "#16211F";
    static final String QUIET = "#43514D";
    static final String GRID = "#D2DAD8";
    static final String EDGE = "#5C6A66";
    static final String PAPER = "#FFFFFF";
    static final String NIGHT = "#E7ECEB";
    static final String WATER = "#0F658C";
    static final String HEAT = "#AD2A56";
    static final String AIR = "#56656A";
    static final String LEAF = "#3C6F24";
    static final String GATE = "#94400A";

    private Ink() {}
}
