package piecewright.plan;

import java.util.OptionalInt;
import java.util.stream.IntStream;
import piecewright.house.Heater;

/** Which heat may be left on with nobody near. */
final class HeatLeft {
    private HeatLeft() {}

    /** The heater a piece lies in: the curer once its cure was begun. */
    static Heater heater(Setup setup, boolean cured) {
        Outfit.Drying drying = setup.outfit().drying();
        return cured ? drying.curer() : drying.dryer();
    }

    /** The hottest rung that this heater may be left at; empty when it must be switched off. */
    static OptionalInt hottestRung(Setup setup, Heater heater) {
        return IntStream.range(0, setup.style().kiln().ladder().size())
                .filter(rung -> !Rules.needsSomebody(heater.control(), setup.dryingC(rung)))
                .max();
    }
}
