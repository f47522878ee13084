package piecewright.truth;

import piecewright.style.MaltStyle;

/** How one batch came out, held against its own style's aims. */
record Result(
        MaltStyle style,
        double steepOut,
        double chitted,
        double acrospire,
        double endMoisture,
        double couchPeakC,
        double ebc,
        double toldEbc,
        double handsOnMinutes,
        double days,
        int acts) {
    private static final double DRY_ROOM = 0.005;

    boolean steeped() {
        return Math.abs(steepOut - style.steep().targetFraction()) <= 0.01;
    }

    boolean spreadChitted() {
        return chitted >= 0.80;
    }

    boolean grown() {
        return Math.abs(acrospire - style.growth().acrospireFraction()) <= 0.15;
    }

    boolean dry() {
        double most = style.oven()
                .roast()
                .map(roast -> roast.endMoistureFraction())
                .orElse(style.kiln().endMoistureFraction());
        return endMoisture <= most + DRY_ROOM;
    }

    boolean couched() {
        return style.couches().hot().isEmpty() || couchPeakC >= 45;
    }

    boolean coloured() {
        var range = style.finish().colour();
        double asked = (range.lowEbc() + range.highEbc()) / 2;
        return range.contains(ebc) || Math.abs(ebc / asked - 1) <= 0.25;
    }

    boolean right() {
        return steeped() && spreadChitted() && grown() && dry() && couched() && coloured();
    }

    @Override
    public String toString() {
        return String.format(
                java.util.Locale.ROOT,
                "%s%s%s%s%s%s out %.1f chit %.2f acro %.2f end %.1f couch %.0f ebc %.1f (told %.1f)  %.0f min %.1f d %d acts",
                steeped() ? "S" : "-",
                spreadChitted() ? "C" : "-",
                grown() ? "G" : "-",
                dry() ? "D" : "-",
                couched() ? "H" : "-",
                coloured() ? "E" : "-",
                100 * steepOut,
                chitted,
                acrospire,
                100 * endMoisture,
                couchPeakC,
                ebc,
                toldEbc,
                handsOnMinutes,
                days,
                acts);
    }
}
