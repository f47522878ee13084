package piecewright.desktop.house;

import javafx.geometry.Orientation;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.Region;
import piecewright.desktop.paint.TextSize;

/** A week and beside it what belongs to the house, which scrolls by itself; below it where there is no room beside. */
final class SideBySide extends Region {
    private static final double BESIDE_FROM_EM = 52;
    private static final double FACTS_EM = 25;
    private static final double GAP = 24;

    private final Region week;
    private final Region facts;
    private final ScrollPane scroll = new ScrollPane();
    private final TextSize text = new TextSize(this::requestLayout);

    SideBySide(Region week, Region facts) {
        this.week = week;
        this.facts = facts;
        scroll.setFitToWidth(true);
        scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        scroll.setFocusTraversable(false);
        scroll.setContent(facts);
        getChildren().addAll(week, scroll, text.node());
    }

    private double em() {
        return text.em();
    }

    private boolean isBeside(double width) {
        return width >= BESIDE_FROM_EM * em();
    }

    private double factsHeight(double width) {
        return Math.ceil(facts.prefHeight(width)) + 2;
    }

    @Override
    public Orientation getContentBias() {
        return Orientation.HORIZONTAL;
    }

    @Override
    protected double computeMinHeight(double width) {
        double known = width < 0 ? getWidth() : width;
        if (isBeside(known)) return week.minHeight(known - FACTS_EM * em() - GAP);
        return week.minHeight(known) + GAP + factsHeight(known);
    }

    @Override
    protected double computePrefHeight(double width) {
        return computeMinHeight(width);
    }

    @Override
    protected double computeMinWidth(double height) {
        return 0;
    }

    @Override
    protected void layoutChildren() {
        double width = getWidth();
        if (isBeside(width)) {
            double beside = FACTS_EM * em();
            week.resizeRelocate(0, 0, width - beside - GAP, getHeight());
            scroll.resizeRelocate(width - beside, 0, beside, getHeight());
            return;
        }
        double below = factsHeight(width);
        week.resizeRelocate(0, 0, width, getHeight() - below - GAP);
        scroll.resizeRelocate(0, getHeight() - below, width, below);
    }
}
