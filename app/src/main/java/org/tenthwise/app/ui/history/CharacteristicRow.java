package org.tenthwise.app.ui.history;

import javafx.geometry.HPos;
import javafx.geometry.Orientation;
import javafx.geometry.VPos;
import javafx.scene.layout.Region;

/** What a characteristic is at the left, and where its parts lie at the right, which has a share of the width. */
final class CharacteristicRow extends Region {

    /** Of the width. */
    static final double BAND = 0.56;

    private static final double BETWEEN = 12;

    private final Region names;
    private final Region band;

    CharacteristicRow(Region names, Region band) {
        this.names = names;
        this.band = band;
        getChildren().addAll(names, band);
    }

    @Override
    public Orientation getContentBias() {
        return Orientation.HORIZONTAL;
    }

    private static double left(double width) {
        return Math.max(1, Math.floor(width * (1 - BAND)) - BETWEEN);
    }

    @Override
    protected double computePrefHeight(double width) {
        return Math.max(width < 0 ? 0 : names.prefHeight(left(width)), band.prefHeight(-1));
    }

    @Override
    protected double computeMinHeight(double width) {
        return computePrefHeight(width);
    }

    @Override
    protected void layoutChildren() {
        double left = left(getWidth());
        layoutInArea(names, 0, 0, left, getHeight(), 0, HPos.LEFT, VPos.CENTER);
        double from = left + BETWEEN;
        layoutInArea(band, from, 0, getWidth() - from, getHeight(), 0, HPos.LEFT, VPos.CENTER);
    }
}
