package piecewright.store;

import java.time.ZoneId;
import java.util.Optional;
import piecewright.ensemble.ActBands;
import piecewright.ensemble.Band;
import piecewright.ensemble.Figure;
import piecewright.ensemble.Help;
import piecewright.ensemble.Milestone;
import piecewright.ensemble.Sureness;
import piecewright.ensemble.TimeBand;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

/** Adds the bands of an ensemble to a plan's document: [P10, P50, P90] under each figure's key with the suffix Band. */
final class BandsJson {
    private BandsJson() {}

    static void add(Sureness sureness, ZoneId zone, ObjectNode root) {
        ObjectNode plan = (ObjectNode) root.get("plan");
        put(plan, "finishedMaltKg", sureness, Figure.MALT_KG, 3);
        put(plan, "scaleMaltKg", sureness, Figure.SCALE_MALT_KG, 3);
        put(plan, "colourEbc", sureness, Figure.COLOUR_EBC, 2);
        for (JsonNode node : plan.get("acts")) {
            Optional<ActBands> bands = sureness.act(node.get("id").stringValue());
            bands.ifPresent(found -> add(found, zone, (ObjectNode) node));
        }
        write(sureness, zone, plan.putObject("sureness"));
    }

    private static void add(ActBands bands, ZoneId zone, ObjectNode act) {
        put(act, "startsAt", bands.at(), zone);
        act.put("happensFraction", PlanJson.rounded(bands.happensFraction(), 3));
        ObjectNode expect = (ObjectNode) act.get("expect");
        put(expect, "massKg", bands.weighedKg(), 3);
        put(expect, "moistureWetBasisFraction", bands.moistureFraction(), 4);
        put(expect, "grainC", bands.grainC(), 1);
        bands.acrospireFraction().ifPresent(grown -> put(expect, "acrospireFraction", grown, 3));
    }

    private static void write(Sureness sureness, ZoneId zone, ObjectNode node) {
        node.put("members", sureness.members());
        node.put("softWindowsFraction", PlanJson.rounded(sureness.verdict().softFraction(), 3));
        node.put("hardLimitsFraction", PlanJson.rounded(sureness.verdict().hardFraction(), 3));
        sureness.verdict().weakest().ifPresent(weakest -> {
            ObjectNode worst = node.putObject("weakest");
            worst.put("act", weakest.actId());
            worst.put("fault", key(weakest.fault()));
            worst.put("fraction", PlanJson.rounded(weakest.fraction(), 3));
        });
        sureness.help().ifPresent(help -> {
            ObjectNode change = node.putObject("help");
            change.put("what", help(help));
            change.put("softWindowsFraction", PlanJson.rounded(help.softFraction(), 3));
        });
        put(node, "steepOutMoistureWetBasisFraction", sureness, Figure.STEEP_OUT_FRACTION, 4);
        put(node, "acrospireFraction", sureness, Figure.ACROSPIRE_FRACTION, 3);
        put(node, "couchPeakC", sureness, Figure.COUCH_PEAK_C, 1);
        put(node, "couchIndexHours", sureness, Figure.COUCH_INDEX_HOURS, 1);
        put(node, "stewMinutes", sureness, Figure.STEW_MINUTES, 0);
        put(node, "roastMinutes", sureness, Figure.ROAST_MINUTES, 1);
        put(node, "roastedC", sureness, Figure.ROASTED_C, 1);
        put(node, "endMoistureWetBasisFraction", sureness, Figure.END_MOISTURE_FRACTION, 4);
        put(node, "diastaticFraction", sureness, Figure.DIASTATIC_FRACTION, 3);
        for (Milestone milestone : Milestone.values()) {
            sureness.milestone(milestone).ifPresent(at -> put(node, key(milestone) + "At", at, zone));
        }
    }

    /** Such as "measured steep-rate" or "chilled-water". */
    private static String help(Help help) {
        if (help instanceof Help.Measured measured) return "measured " + key(measured.doubt());
        String name = ((Help.Arranged) help).change().getClass().getSimpleName();
        return name.replaceAll("(?<=[a-z])(?=[A-Z])", "-").toLowerCase(java.util.Locale.ROOT);
    }

    private static String key(Enum<?> constant) {
        return constant.name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
    }

    /** Nothing where plans of this kind have no such figure. */
    private static void put(ObjectNode node, String key, Sureness sureness, Figure figure, int decimals) {
        sureness.figure(figure).ifPresent(band -> put(node, key, band, decimals));
    }

    private static void put(ObjectNode node, String key, Band band, int decimals) {
        node.putArray(key + "Band")
                .add(PlanJson.rounded(band.p10(), decimals))
                .add(PlanJson.rounded(band.p50(), decimals))
                .add(PlanJson.rounded(band.p90(), decimals));
    }

    private static void put(ObjectNode node, String key, TimeBand band, ZoneId zone) {
        node.putArray(key + "Band")
                .add(PlanJson.moment(band.p10(), zone))
                .add(PlanJson.moment(band.p50(), zone))
                .add(PlanJson.moment(band.p90(), zone));
    }
}
