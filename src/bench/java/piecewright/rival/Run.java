package piecewright.rival;

/** What one rival made of one problem; the cost is infinite when it found no plan. */
record Run(String name, double costMinutes, double cpuMs, double wallMs) {
    boolean solved() {
        return costMinutes < Double.POSITIVE_INFINITY;
    }
}
