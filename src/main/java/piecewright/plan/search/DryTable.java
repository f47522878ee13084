package piecewright.plan.search;

import java.util.HashMap;
import java.util.Map;
import piecewright.process.Surroundings;
import piecewright.process.kiln.AirOn;
import piecewright.process.kiln.DryingBed;

/**
 * Drying rates of one bed at one set temperature, tabulated over moisture and over the room's temperature in whole
 * kelvins. Scratch space of one search, used by one thread.
 */
final class DryTable {
    private static final int POINTS = 64;
    /** Judgement: wetter than any green malt; the end of the table. */
    private static final double WETTEST_RATIO = 1.1;
    /** Judgement: a quarter of an hour; tests hold the quick forms to the reference stages. */
    private static final double STEP_MINUTES = 15;

    private final DryingBed bed;
    private final double dryMatterKg;
    private final double setC;
    private final double airFlowM3PerHour;
    private final Surroundings room;
    private final Map<Integer, double[]> rates = new HashMap<>();

    DryTable(DryingBed bed, double dryMatterKg, double setC, double airFlowM3PerHour, Surroundings room) {
        this.bed = bed;
        this.dryMatterKg = dryMatterKg;
        this.setC = setC;
        this.airFlowM3PerHour = airFlowM3PerHour;
        this.room = room;
    }

    /** Moisture, kg per kg of dry matter, after so many minutes at the set temperature; one step at a time. */
    double dried(double dryBasisRatio, double fromMinute, double untilMinute) {
        double ratio = dryBasisRatio;
        double minute = fromMinute;
        while (untilMinute - minute > 1e-6) {
            double stepMinutes = Math.min(STEP_MINUTES, untilMinute - minute);
            double stepHours = stepMinutes / 60;
            double[] table = tableAt(room.airC((minute + stepMinutes / 2) / 60));
            double half = ratio - rate(table, ratio) * stepHours / 2;
            ratio = Math.max(0, ratio - rate(table, half) * stepHours);
            minute += stepMinutes;
        }
        return ratio;
    }

    /** Minutes from the wettest to each point of the table in the given room; infinite beyond what it ever dries to. */
    double[] minutesFromWettest(int roomC) {
        double[] table = tableAt(roomC);
        double[] minutes = new double[POINTS];
        for (int i = POINTS - 2; i >= 0; i--) {
            double middle = (table[i] + table[i + 1]) / 2;
            minutes[i] = minutes[i + 1]
                    + (middle < 1e-6 ? Double.POSITIVE_INFINITY : 60 * WETTEST_RATIO / (POINTS - 1) / middle);
        }
        return minutes;
    }

    /** A value of such a table at a moisture, linear between its points. */
    static double at(double[] minutes, double ratio) {
        double position = Math.max(0, Math.min(WETTEST_RATIO, ratio)) / WETTEST_RATIO * (POINTS - 1);
        int below = Math.min(POINTS - 2, (int) position);
        if (minutes[below] == Double.POSITIVE_INFINITY)
            return position - below < 1 ? Double.POSITIVE_INFINITY : minutes[below + 1];
        return minutes[below] + (position - below) * (minutes[below + 1] - minutes[below]);
    }

    private static double rate(double[] table, double ratio) {
        double position = Math.max(0, ratio) / WETTEST_RATIO * (POINTS - 1);
        int below = Math.min(POINTS - 2, (int) position);
        return table[below] + (position - below) * (table[below + 1] - table[below]);
    }

    private double[] tableAt(double roomC) {
        return rates.computeIfAbsent((int) Math.round(roomC), this::tabulate);
    }

    private double[] tabulate(int roomC) {
        AirOn air = AirOn.of(setC, airFlowM3PerHour, roomC, room.humidityFraction());
        double[] table = new double[POINTS];
        for (int i = 0; i < POINTS; i++) {
            table[i] = bed.dryingPerHour(WETTEST_RATIO * i / (POINTS - 1), dryMatterKg, air);
        }
        return table;
    }
}
