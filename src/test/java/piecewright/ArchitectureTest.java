package piecewright;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.base.DescribedPredicate.not;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.Architectures.layeredArchitecture;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.AccessTarget;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import java.util.Arrays;
import java.util.List;

/** The directions and habits of the code, as rules that fail the build. */
@AnalyzeClasses(packages = "piecewright", importOptions = ImportOption.DoNotIncludeTests.class)
class ArchitectureTest {
    private static final String[] CORE = {
        "piecewright.quantity..",
        "piecewright.grain..",
        "piecewright.house..",
        "piecewright.style..",
        "piecewright.process..",
        "piecewright.belief..",
        "piecewright.plan..",
        "piecewright.colour..",
        "piecewright.assess..",
        "piecewright.purchase..",
        "piecewright.journal..",
        "piecewright.history..",
        "piecewright.learn..",
        "piecewright.replan..",
        "piecewright.calibrate..",
        "piecewright.ensemble..",
        "piecewright.remedy.."
    };

    private static final String[] EDGE = {"piecewright.cli..", "piecewright.desktop.."};

    /** Units a name of a double ends in; "Per…" covers rates such as KPerHour and WPerK. */
    private static final String SUFFIX =
            "(Kg|G|C|K|W|J|KJ|Pa|KPa|M|M2|M3|Cm|L|Ml|Seconds|Minutes|Hours?|Days|Fraction|Percent|Ratio|Ebc|Srm|Sd|Per[A-Z0-9].*)";

    private static final String CONSTANT_SUFFIX = "(KG|G|C|K|W|J|KJ|PA|KPA|M|M2|M3|CM|L|ML|SECONDS|MINUTES|HOURS?|DAYS|"
            + "FRACTION|PERCENT|RATIO|EBC|SRM|SD|POUND|OUNCE|GALLON|LOVIBOND|(?:[A-Z0-9]+_)*PER_[A-Z0-9_]+)";

    @ArchTest
    static final ArchRule everyLayerSeesOnlyThoseBelow = layeredArchitecture()
            .consideringOnlyDependenciesInLayers()
            .withOptionalLayers(true)
            .layer("quantity")
            .definedBy("piecewright.quantity..")
            .layer("facts")
            .definedBy("piecewright.grain..", "piecewright.house..", "piecewright.style..")
            .layer("process")
            .definedBy("piecewright.process..", "piecewright.colour..", "piecewright.assess..")
            .layer("belief")
            .definedBy("piecewright.belief..")
            .layer("plan")
            .definedBy("piecewright.plan..")
            .layer("around the plan")
            .definedBy(
                    "piecewright.journal..",
                    "piecewright.history..",
                    "piecewright.learn..",
                    "piecewright.replan..",
                    "piecewright.calibrate..",
                    "piecewright.ensemble..",
                    "piecewright.purchase..",
                    "piecewright.remedy..")
            .layer("text")
            .definedBy("piecewright.text..", "piecewright.reading..")
            .layer("outside")
            .definedBy(
                    "piecewright.store..",
                    "piecewright.calendar..",
                    "piecewright.sheet..",
                    "piecewright.chart..",
                    "piecewright.publish..")
            .layer("app")
            .definedBy("piecewright.app..")
            .layer("faces")
            .definedBy(EDGE)
            .layer("entry")
            .definedBy("piecewright")
            .whereLayer("facts")
            .mayOnlyAccessLayers("quantity")
            .whereLayer("quantity")
            .mayNotAccessAnyLayer()
            .whereLayer("process")
            .mayOnlyAccessLayers("quantity", "facts")
            .whereLayer("belief")
            .mayOnlyAccessLayers("quantity", "facts", "process")
            .whereLayer("plan")
            .mayOnlyAccessLayers("quantity", "facts", "process", "belief")
            .whereLayer("around the plan")
            .mayOnlyAccessLayers("quantity", "facts", "process", "belief", "plan")
            .whereLayer("text")
            .mayOnlyAccessLayers("quantity", "facts", "process", "belief", "plan", "around the plan")
            .whereLayer("outside")
            .mayOnlyAccessLayers("quantity", "facts", "process", "belief", "plan", "around the plan", "text")
            .whereLayer("app")
            .mayOnlyBeAccessedByLayers("faces", "entry")
            .whereLayer("faces")
            .mayOnlyBeAccessedByLayers("entry");

    @ArchTest
    static final ArchRule firstLevelPackagesHaveNoCycles =
            slices().matching("piecewright.(*)..").should().beFreeOfCycles();

    @ArchTest
    static final ArchRule stagesOfTheProcessDoNotKnowEachOther =
            slices().matching("piecewright.process.(*)..").should().notDependOnEachOther();

    /** Distributions, sequences, factorisations, least squares at run time; the two rules below keep them in place. */
    private static final DescribedPredicate<JavaClass> STATISTICS = resideInAnyPackage("org.hipparchus..");

    @ArchTest
    static final ArchRule onlyDoubtsKnowStatistics = noClasses()
            .that()
            .resideOutsideOfPackages(
                    "piecewright.assess..", "piecewright.belief..", "piecewright.ensemble..", "piecewright.learn..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("org.hipparchus..");

    @ArchTest
    static final ArchRule onlyLearningKnowsLeastSquares = onlyIn("piecewright.learn..", "org.hipparchus.optim..");

    @ArchTest
    static final ArchRule theCoreKnowsOnlyLanguageTimeAndItself = classes()
            .that()
            .resideInAnyPackage(CORE)
            .should()
            .onlyDependOnClassesThat(resideInAnyPackage(CORE)
                    .or(STATISTICS)
                    .or(resideInAnyPackage(
                            "java.lang..", "java.math..", "java.util..", "java.time..", "org.jspecify.."))
                    .or(describe("primitives", type -> type.getPackageName().isEmpty())));

    @ArchTest
    static final ArchRule oneRuleTellsWhoMustStayNearAHeater = noClasses()
            .that()
            .doNotHaveFullyQualifiedName("piecewright.plan.Rules")
            .should()
            .callMethod(piecewright.house.Heater.HeatControl.class, "safeUnattended");

    @ArchTest
    static final ArchRule theCoreOpensNothing = noClasses()
            .that()
            .resideInAnyPackage(CORE)
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("java.lang.reflect..", "java.util.logging..", "java.util.zip..", "java.util.prefs..");

    @ArchTest
    static final ArchRule onlyTheCalendarKnowsICalendar = onlyIn("piecewright.calendar..", "net.fortuna.ical4j..");

    @ArchTest
    static final ArchRule onlyTheStoreKnowsJson = onlyIn("piecewright.store..", "tools.jackson..", "com.fasterxml..");

    @ArchTest
    static final ArchRule onlyTheCommandLineKnowsItsParser = onlyIn("piecewright.cli..", "picocli..");

    @ArchTest
    static final ArchRule onlyTheDesktopKnowsTheToolkit =
            onlyIn("piecewright.desktop..", "javafx..", "org.controlsfx..");

    @ArchTest
    static final ArchRule onlyChartsKnowThePainter = onlyIn("piecewright.chart..", "com.github.weisj..");

    private static ArchRule onlyIn(String owner, String... libraries) {
        return noClasses()
                .that()
                .resideOutsideOfPackage(owner)
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage(libraries);
    }

    /** There are no view models before there is a desktop. */
    @ArchTest
    static final ArchRule viewModelsNeedNoToolkit = noClasses()
            .that()
            .haveSimpleNameEndingWith("ViewModel")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage(
                    "javafx.scene..", "javafx.stage..", "javafx.application..", "javafx.fxml..", "javafx.animation..")
            .allowEmptyShould(true);

    private static final DescribedPredicate<JavaClass> INSIDE = describe(
            "are outside Main, cli and desktop",
            type -> !resideInAnyPackage(EDGE).test(type) && !type.getFullName().startsWith("piecewright.Main"));

    @ArchTest
    static final ArchRule nothingInsideAsksTheMachineForTimeZoneOrLocale = noClasses()
            .that(INSIDE)
            .should()
            .callMethodWhere(describe(
                    "asks the machine for its time, zone or locale", call -> asksTheMachine(call.getTarget())));

    private static boolean asksTheMachine(AccessTarget.MethodCallTarget target) {
        String owner = target.getOwner().getFullName();
        boolean noArguments = target.getRawParameterTypes().isEmpty();
        return owner.startsWith("java.time.") && target.getName().equals("now")
                || owner.startsWith("java.time.Clock") && target.getName().startsWith("system")
                || target.getName().equals("systemDefault")
                || owner.equals("java.util.Locale") && target.getName().equals("getDefault")
                || owner.equals("java.util.TimeZone") && target.getName().equals("getDefault")
                || owner.equals("java.lang.System")
                        && List.of("currentTimeMillis", "nanoTime", "exit", "getenv", "getProperty")
                                .contains(target.getName())
                || owner.equals("java.lang.String")
                        && noArguments
                        && List.of("toLowerCase", "toUpperCase").contains(target.getName())
                || owner.equals("java.lang.String")
                        && target.getName().equals("format")
                        && firstIs(target, String.class)
                || owner.equals("java.lang.String") && target.getName().equals("formatted");
    }

    private static boolean firstIs(AccessTarget.MethodCallTarget target, Class<?> type) {
        return target.getRawParameterTypes().get(0).isEquivalentTo(type);
    }

    @ArchTest
    static final ArchRule nothingInsideSpeaksOnStandardStreams = noClasses()
            .that(INSIDE)
            .should()
            .accessField(System.class, "out")
            .orShould()
            .accessField(System.class, "err")
            .orShould()
            .accessField(System.class, "in");

    /** The unit of these figures is said by the quantity or trait that goes with them, or by whoever holds them. */
    private static final List<String> UNIT_BESIDE = List.of(
            "piecewright.plan.Finding$OffStyle",
            "piecewright.belief.Interval",
            "piecewright.learn.Observation",
            "piecewright.ensemble.Band");

    private static final DescribedPredicate<JavaClass> CARRYING_THEIR_UNIT =
            describe("carry their unit as a value", type -> UNIT_BESIDE.contains(type.getFullName()));

    @ArchTest
    static final ArchRule doublesSayTheirUnit = fields().that()
            .haveRawType(double.class)
            .and()
            .areDeclaredInClassesThat()
            .resideInAnyPackage(CORE)
            .and()
            .areDeclaredInClassesThat(not(CARRYING_THEIR_UNIT))
            .should()
            .haveNameMatching("[a-z][A-Za-z0-9]*" + SUFFIX + "|hours|days|minutes|ratio|fraction|([A-Z0-9]+_)*"
                    + CONSTANT_SUFFIX);

    @ArchTest
    static final ArchRule coreClassesCannotChange = classes()
            .that()
            .resideInAnyPackage(CORE)
            .and(not(describe(
                    "are lambdas or synthetic", type -> type.getModifiers().contains(JavaModifier.SYNTHETIC))))
            .should(beClosedAndUnchanging());

    private static ArchCondition<JavaClass> beClosedAndUnchanging() {
        return new ArchCondition<>("be an interface or final, with final fields only") {
            @Override
            public void check(JavaClass type, ConditionEvents events) {
                boolean closed = type.isInterface()
                        || type.isEnum()
                        || type.getModifiers().contains(JavaModifier.FINAL)
                        || type.isAnonymousClass();
                boolean enumBody =
                        type.getRawSuperclass().map(JavaClass::isEnum).orElse(false);
                if (!closed && !enumBody) {
                    events.add(SimpleConditionEvent.violated(
                            type, type.getFullName() + " is neither an interface nor final"));
                }
                type.getFields().stream()
                        .filter(field -> !field.getModifiers().contains(JavaModifier.FINAL))
                        .filter(field -> !type.getModifiers().contains(JavaModifier.PRIVATE) && !isPackagePrivate(type))
                        .forEach(field ->
                                events.add(SimpleConditionEvent.violated(type, field.getFullName() + " can change")));
            }
        };
    }

    /** Working memory of one search or fit never leaves its package; what is public is unchanging. */
    private static boolean isPackagePrivate(JavaClass type) {
        return !type.getModifiers().contains(JavaModifier.PUBLIC)
                && !type.getModifiers().contains(JavaModifier.PROTECTED);
    }

    private static final List<String> BANNED =
            List.of("util", "utils", "common", "helper", "manager", "impl", "core", "misc", "base");

    /** Means the colour that heat builds upon, not a class to inherit from. */
    private static final List<String> MEANT = List.of("piecewright.style.KilnSchedule$ColourBase");

    @ArchTest
    static final ArchRule namesSayWhatThingsAre = classes()
            .should(new ArchCondition<>("not be named with an empty word") {
                @Override
                public void check(JavaClass type, ConditionEvents events) {
                    if (MEANT.contains(type.getFullName())) return;
                    List<String> words = Arrays.stream((type.getPackageName() + "." + type.getSimpleName())
                                    .split("[.$_]|(?<=[a-z0-9])(?=[A-Z])"))
                            .map(word -> word.toLowerCase(java.util.Locale.ROOT))
                            .toList();
                    words.stream()
                            .filter(BANNED::contains)
                            .forEach(word -> events.add(SimpleConditionEvent.violated(
                                    type, type.getFullName() + " is named with \"" + word + "\"")));
                }
            });
}
