package piecewright.plan;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import piecewright.plan.Simulation.Course;
import piecewright.plan.Simulation.Station;
import piecewright.process.couch.CouchCurve;
import piecewright.process.couch.Ignition;
import piecewright.process.couch.SeedLife;

/** What a person should know about the hot couch of a plan. One method per finding. */
final class CouchFindings {
    /** Judgement: lactic germs multiply from here. */
    private static final double SOURS_FROM_C = 25;
    /** Judgement: and up to here, between the two the pile should not stay long. */
    private static final double SOURS_UNTIL_C = 45;
    /** Judgement: so many hours there make a wet couch sour. */
    private static final double SOURS_AFTER_HOURS = 36;
    /** Judgement: drier couches stay sweet. */
    private static final double SOURS_ABOVE_FRACTION = 0.42;

    private final Couching couching;
    private final double germinatingFraction;

    CouchFindings(Couching couching, double germinatingFraction) {
        this.couching = couching;
        this.germinatingFraction = germinatingFraction;
    }

    /** Empty for a piece that was loaded without a couch. */
    List<Finding> of(Course course) {
        List<Finding> findings = new ArrayList<>();
        if (!course.has(ActKind.PACK) || !course.has(ActKind.BREAK)) return findings;
        Station packed = course.first(ActKind.PACK);
        Station broken = course.first(ActKind.BREAK);
        CouchWindows windows = new CouchWindows(couching);
        CouchCurve curve =
                windows.curve(packed).until(windows.hours(broken.visit().at()));
        forecast(windows, curve, broken, findings);
        heats(packed, broken, windows, findings);
        maySour(packed, curve, findings);
        alive(packed, curve, findings);
        return findings;
    }

    private static void forecast(CouchWindows windows, CouchCurve curve, Station broken, List<Finding> findings) {
        OptionalDouble catches = curve.risesToHours(Ignition.CAUGHT_C);
        findings.add(new Finding.CouchForecast(
                "couch.pack",
                catches.isPresent() ? windows.instant(catches.getAsDouble()) : Instant.MAX,
                windows.instant(curve.peak().atHours()),
                curve.peak().pileC(),
                broken.before().couch().indexHours()));
    }

    private void alive(Station packed, CouchCurve curve, List<Finding> findings) {
        double moisture = packed.after().mass().moisture().wetBasisFraction();
        double alive = SeedLife.aliveFraction(germinatingFraction, curve, moisture);
        findings.add(new Finding.CornsAlive("couch.break", alive));
    }

    private void heats(Station packed, Station broken, CouchWindows windows, List<Finding> findings) {
        double airC = meanAirC(
                windows.hours(packed.visit().at()), windows.hours(broken.visit().at()));
        Ignition ignition = new Ignition(couching.model());
        double ratio = ignition.sizeRatio(packed.after(), airC);
        findings.add(new Finding.CouchHeats("couch.pack", ignition.outlook(packed.after(), airC), ratio, airC));
    }

    private double meanAirC(double fromHours, double untilHours) {
        double sum = 0;
        int count = 0;
        for (double at = fromHours; at <= untilHours; at += 1) {
            sum += couching.air().airC(at);
            count++;
        }
        return sum / count;
    }

    private static void maySour(Station packed, CouchCurve curve, List<Finding> findings) {
        double warmHours = curve.hoursAbove(SOURS_FROM_C) - curve.hoursAbove(SOURS_UNTIL_C);
        double moisture = packed.after().mass().moisture().wetBasisFraction();
        if (warmHours > SOURS_AFTER_HOURS && moisture > SOURS_ABOVE_FRACTION) {
            findings.add(new Finding.CouchMaySour("couch.pack", Duration.ofMinutes(Math.round(60 * warmHours))));
        }
    }
}
