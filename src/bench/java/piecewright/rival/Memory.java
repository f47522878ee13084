package piecewright.rival;

import java.lang.management.ManagementFactory;
import java.util.Arrays;
import java.util.Locale;
import java.util.stream.LongStream;
import piecewright.plan.Couched;
import piecewright.plan.ModelParameters;
import piecewright.plan.PlanRequest;
import piecewright.plan.Planner;
import piecewright.plan.Seeded;

/**
 * What plans take of memory. Run with a small heap (-Xmx64m): every household whose plan fits into it is counted, the
 * bytes a plan allocates in all, most of them dead at once, are told. Argument: how many households, half of them with
 * a couched style.
 */
public final class Memory {
    private Memory() {}

    public static void main(String[] arguments) {
        int households = arguments.length == 0 ? 40 : Integer.parseInt(arguments[0]);
        double[] allocatedMb = LongStream.range(0, households)
                .mapToObj(seed -> seed % 2 == 0 ? Seeded.request(seed / 2) : Couched.request(seed / 2))
                .mapToDouble(Memory::allocatedMb)
                .sorted()
                .toArray();
        long over = Arrays.stream(allocatedMb).filter(Double::isInfinite).count();
        System.out.printf(
                Locale.ROOT,
                "heap %d MB: %d of %d plans fit; a plan allocates %.0f MB (median), %.0f MB (most)%n",
                Runtime.getRuntime().maxMemory() >> 20,
                households - over,
                households,
                allocatedMb[households / 2],
                allocatedMb[households - 1]);
    }

    /** Megabytes allocated while planning; infinite when the heap was too small. */
    private static double allocatedMb(PlanRequest request) {
        var threads = (com.sun.management.ThreadMXBean) ManagementFactory.getThreadMXBean();
        long before = threads.getCurrentThreadAllocatedBytes();
        try {
            new Planner(ModelParameters.defaults()).plan(request);
        } catch (OutOfMemoryError tooSmall) {
            return Double.POSITIVE_INFINITY;
        }
        return (threads.getCurrentThreadAllocatedBytes() - before) / 1e6;
    }
}
