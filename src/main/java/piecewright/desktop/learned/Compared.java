package piecewright.desktop.learned;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import piecewright.belief.Interval;
import piecewright.learn.Comparison;
import piecewright.learn.Comparison.InputDifference;
import piecewright.learn.Comparison.OutcomeDifference;
import piecewright.learn.Figure;
import piecewright.plan.Plan;
import piecewright.text.ComparePage;
import piecewright.text.DisplayUnits;
import piecewright.text.WindowWords;

/**
 * Two pieces held against each other as they are shown.
 *
 * @param verdict whether what differs in the outcomes has one reason
 * @param courses moisture of the first and of the second along their own time
 */
record Compared(List<Input> inputs, String verdict, List<Outcome> outcomes, List<Course> courses) {
    Compared {
        inputs = List.copyOf(inputs);
        outcomes = List.copyOf(outcomes);
        courses = List.copyOf(courses);
    }

    /** What went in otherwise. */
    record Input(String name, String first, String second) {}

    /** How far an outcome is apart; the bar runs from −1 to 1, 0 for no difference. */
    record Outcome(String sentence, double lowRatio, double middleRatio, double highRatio) {}

    /** Moisture, percent, over hours since its first act. */
    record Course(List<Spot> spots) {
        Course {
            spots = List.copyOf(spots);
        }

        static Course of(Plan plan) {
            List<Spot> spots = new ArrayList<>();
            for (Plan.Sample sample : plan.course()) {
                double hours = Duration.between(plan.startsAt(), sample.at()).toMinutes() / 60.0;
                spots.add(new Spot(hours, sample.state().mass().moisture().wetBasisPercent()));
            }
            return new Course(spots);
        }
    }

    /** One point of a course. */
    record Spot(double hours, double percent) {}

    static Compared of(Comparison comparison, List<Course> courses, DisplayUnits units) {
        String none = WindowWords.say("learned.compare.none");
        List<Input> inputs = new ArrayList<>();
        for (InputDifference input : comparison.inputs()) {
            inputs.add(new Input(
                    input.name(), input.first().orElse(none), input.second().orElse(none)));
        }
        ComparePage page = new ComparePage(units);
        List<Outcome> outcomes = new ArrayList<>();
        for (OutcomeDifference outcome : comparison.outcomes()) outcomes.add(outcome(outcome, page.outcome(outcome)));
        return new Compared(inputs, ComparePage.verdict(comparison), outcomes, courses);
    }

    /** A colour is apart by a factor, the others by points: both lie about 0 on the bar. */
    private static Outcome outcome(OutcomeDifference outcome, String sentence) {
        boolean colour = outcome.figure() == Figure.COLOUR;
        Interval change = outcome.change();
        double low = colour ? Math.log(change.low()) : change.low();
        double middle = colour ? Math.log(change.middle()) : change.middle();
        double high = colour ? Math.log(change.high()) : change.high();
        double most = Math.max(1e-9, 1.15 * Math.max(Math.abs(low), Math.abs(high)));
        return new Outcome(sentence, low / most, middle / most, high / most);
    }
}
