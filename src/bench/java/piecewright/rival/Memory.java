package piecewright.rival;

import java.lang.management.ManagementFactory;
import java.util.Arrays;
import java.util.Locale;
import java.util.function.LongFunction;
import java.util.stream.LongStream;
import piecewright.plan.Couched;
import piecewright.plan.ModelParameters;
import piecewright.plan.PlanRequest;
import piecewright.plan.Planner;
import piecewright.plan.Seeded;

/**
 * What plans take of memory. Run with a small heap (-Xmx64m): counts the households whose plan fits into it, and tells
 * what a plan allocates in all, most of which is dead at once. Argument: how many households of each style.
 */
public final class Memory {
    private Memory() {}

    public static void main(String[] arguments) {
        int households = arguments.length == 0 ? 20 : Integer.parseInt(arguments[0]);
        tell("pale", households, Seeded::request);
        tell("couched", households, Couched::request);
    }

    private static void tell(String style, int households, LongFunction<PlanRequest> wishes) {
        double[] allocatedMb = LongStream.range(0, households)
                .mapToObj(wishes)
                .mapToDouble(Memory::allocatedMb)
                .filter(Double::isFinite)
                .sorted()
                .toArray();
        System.out.printf(
                Locale.ROOT,
                "%s, heap of %d MB: %d of %d plans fit; such a plan allocates %.0f MB (median)%n",
                style,
                Runtime.getRuntime().maxMemory() >> 20,
                allocatedMb.length,
                households,
                allocatedMb.length == 0 ? Double.NaN : allocatedMb[allocatedMb.length / 2]);
    }

    /** Megabytes that all threads allocated while one planned; infinite when the heap was too small. */
    private static double allocatedMb(PlanRequest request) {
        long before = allocatedBytes();
        try {
            new Planner(ModelParameters.defaults()).plan(request);
        } catch (OutOfMemoryError tooSmall) {
            return Double.POSITIVE_INFINITY;
        }
        return (allocatedBytes() - before) / 1e6;
    }

    private static long allocatedBytes() {
        var threads = (com.sun.management.ThreadMXBean) ManagementFactory.getThreadMXBean();
        return Arrays.stream(threads.getThreadAllocatedBytes(threads.getAllThreadIds()))
                .sum();
    }
}
