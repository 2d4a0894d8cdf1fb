package org.nextpull.plan.text;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.nextpull.channel.Role;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.Place;
import org.nextpull.fuel.BlendRecipe;
import org.nextpull.fuel.Element;
import org.nextpull.fuel.FuelProperty;
import org.nextpull.plan.Band;
import org.nextpull.plan.DynoFacts;
import org.nextpull.plan.EngineFacts;
import org.nextpull.plan.FuelChoice;
import org.nextpull.plan.FuelChoice.OwnBlend.Elements;
import org.nextpull.plan.FuelChoice.OwnBlend.Mixed;
import org.nextpull.plan.Goal;
import org.nextpull.plan.Limits;
import org.nextpull.plan.PortFacts;
import org.nextpull.plan.PullFacts;
import org.nextpull.plan.StartConditions;
import org.nextpull.plan.SweepPlan;
import org.nextpull.plan.SweepStep;
import org.nextpull.plan.TimingPlan;
import org.nextpull.plan.WireFacts;
import org.nextpull.unit.Lambda;
import org.nextpull.unit.SpeedBand;
import org.nextpull.unit.Temperature;
import org.nextpull.unit.Unit;

/** Values and defaults; the defaults are those of the handbook page on sweep plans. */
class PlanTextTest {
    /** Kelvins and the like are sums of two decimals: one rounding. */
    private static final double ROUNDING = 1e-9;

    static SweepPlan read(String text) {
        var outcome = PlanText.read(text, "plan.toml");
        assertThat(outcome.findings().stream().filter(Finding::isError)).isEmpty();
        return outcome.value().orElseThrow();
    }

    @Test
    void anEmptyFileIsThePlanOfDefaults() {
        assertThat(read("")).isEqualTo(SweepPlan.defaults());
        assertThat(PlanText.read("", "plan.toml").findings()).isEmpty();
    }

    @Test
    void defaultsAreThoseOfTheHandbook() {
        SweepPlan plan = read("[limits]\nlean_lambda = 0.95\n[band]\nfrom_rpm = 2000\nto_rpm = 6500");
        assertThat(plan.engine().induction()).isEqualTo(EngineFacts.Induction.NATURAL);
        assertThat(plan.dyno().kind()).isEqualTo(DynoFacts.Kind.ENGINE_BRAKE);
        assertThat(plan.dyno().torqueAt()).isEqualTo(DynoFacts.Shaft.CRANK);
        assertThat(plan.dyno().inertia().inLog()).isEqualTo(DynoFacts.InertiaInLog.UNSTATED);
        assertThat(plan.air().standard().id()).isEqualTo("none");
        assertThat(plan.band()).contains(new Band(new SpeedBand(2000, 6500), 250));
        assertThat(plan.pull())
                .isEqualTo(new PullFacts(
                        PullFacts.Kind.AUTO, Unit.PERCENT.toSi(95), 0, 2, 3, PullFacts.HeldSpeeds.unsaid()));
        assertThat(plan.limits().knockMarginDeg()).isEqualTo(2);
        assertThat(plan.limits().knockEvents()).isEmpty();
        assertThat(plan.limits().knockEventsThatCount()).isEqualTo(1);
        assertThat(plan.limits().lean()).contains(new Limits.Lean(Lambda.of(0.95), 0.3));
        assertThat(plan.goal()).isEqualTo(new Goal(Goal.Response.TORQUE, 0.2, 1.0, 25, true));
        assertThat(plan.timing()).isEmpty();
        assertThat(plan.mixture()).isEmpty();
        assertThat(plan.start()).isEqualTo(StartConditions.defaults());
    }

    @ParameterizedTest
    @CsvSource({"natural, 2", "boosted, 1"})
    void theLargestSparkStepDependsOnInduction(String induction, double stepDeg) {
        SweepPlan plan = read(
                "[timing]\nstart_deg = 20\nleast_deg = 10\nmost_deg = 34\n[engine]\ninduction = '" + induction + "'");
        assertThat(plan.timing().orElseThrow().step()).isEqualTo(new SweepStep(stepDeg, 0.5));
        assertThat(plan.timing().orElseThrow().sets()).isEqualTo(TimingPlan.Sets.FLAT);
    }

    @Test
    void theMixtureSweepHasItsDefaults() {
        var mixture = read("[mixture]\nstart_lambda = 0.87\nrichest_lambda = 0.80\nleanest_lambda = 0.95")
                .mixture()
                .orElseThrow();
        assertThat(mixture.step()).isEqualTo(new SweepStep(0.034, 0.005));
    }

    @Test
    void everyKeyOfEngineFuelAndDynoIsRead() {
        SweepPlan plan = read(FullPlan.TEXT);
        assertThat(plan.engine())
                .isEqualTo(new EngineFacts(
                        Optional.of("two-litre four"),
                        OptionalDouble.of(Unit.LITRE.toSi(1.998)),
                        OptionalInt.of(4),
                        OptionalDouble.of(11.5),
                        EngineFacts.Induction.BOOSTED));
        assertThat(plan.fuel().blend()).contains("mine");
        assertThat(plan.fuel().own())
                .containsExactly(
                        new FuelChoice.OwnBlend(
                                "mine", new Mixed(Map.of("ethanol", 0.3, "e10", 0.7), BlendRecipe.ShareBy.MASS)),
                        new FuelChoice.OwnBlend(
                                "data sheet",
                                new Elements(
                                        Map.of(Element.CARBON, 0.81, Element.HYDROGEN, 0.125, Element.OXYGEN, 0.065),
                                        Map.of(
                                                FuelProperty.DENSITY, 745.0,
                                                FuelProperty.LOWER_HEATING_VALUE, 41.2e6,
                                                FuelProperty.LATENT_HEAT, 0.36e6,
                                                FuelProperty.RESEARCH_OCTANE, 102.0))));
        assertThat(plan.candidates())
                .containsExactly(
                        new SweepPlan.Candidate(
                                "tank", Optional.empty(), Optional.of("what is in it now"), OptionalDouble.of(1.75)),
                        new SweepPlan.Candidate(
                                "blended", Optional.of("data sheet"), Optional.empty(), OptionalDouble.empty()));
        assertThat(plan.dyno().kind()).isEqualTo(DynoFacts.Kind.CHASSIS_BRAKE);
        assertThat(plan.dyno().torqueAt()).isEqualTo(DynoFacts.Shaft.ROLLER);
        assertThat(plan.dyno().inertia().engineSideKgM2()).hasValue(0.22);
        assertThat(plan.dyno().inertia().rollerKgM2()).hasValue(18.5);
        assertThat(plan.dyno().gearing().rollerRadiusM()).hasValue(0.15875);
        assertThat(plan.dyno().gearing().engineRevPerRollerRev()).hasValue(2.2);
        assertThat(plan.dyno().inertia().inLog()).isEqualTo(DynoFacts.InertiaInLog.NO);
    }

    @Test
    void everyKeyOfAirBandAndPullIsRead() {
        SweepPlan plan = read(FullPlan.TEXT);
        assertThat(plan.air().standard().id()).isEqualTo("iso-1585");
        assertThat(plan.air().baro().orElseThrow().pascals()).isEqualTo(98_700);
        assertThat(plan.air().air().orElseThrow().kelvins()).isCloseTo(297.65, within(ROUNDING));
        assertThat(plan.air().humidity().orElseThrow()).isCloseTo(0.45, within(ROUNDING));
        assertThat(plan.band()).contains(new Band(new SpeedBand(3000, 6800), 500));
        assertThat(plan.pull())
                .isEqualTo(new PullFacts(
                        PullFacts.Kind.STEPS,
                        Unit.PERCENT.toSi(90),
                        1,
                        1.5,
                        4,
                        new PullFacts.HeldSpeeds(List.of(3600.0, 4900.0, 5900.0), OptionalDouble.of(45))));
    }

    @Test
    void everyKeyOfTheSweepsIsRead() {
        SweepPlan plan = read(FullPlan.TEXT);
        var timing = plan.timing().orElseThrow();
        assertThat(timing.sets()).isEqualTo(TimingPlan.Sets.OFFSET);
        assertThat(timing.start().deg()).isEqualTo(-4);
        assertThat(timing.least().deg()).isEqualTo(-8);
        assertThat(timing.most().deg()).isEqualTo(6);
        assertThat(timing.step()).isEqualTo(new SweepStep(1.5, 0.25));
        var mixture = plan.mixture().orElseThrow();
        assertThat(mixture.start().value()).isEqualTo(0.86);
        assertThat(mixture.richest().value()).isEqualTo(0.78);
        assertThat(mixture.leanest().value()).isEqualTo(0.94);
        assertThat(mixture.step()).isEqualTo(new SweepStep(0.03, 0.01));
    }

    @Test
    void everyKeyOfLimitsAndStartIsRead() {
        Limits limits = read(FullPlan.TEXT).limits();
        assertThat(limits.knockEvents()).hasValue(3);
        assertThat(limits.knockMarginDeg()).isEqualTo(2.5);
        assertThat(limits.looksAgain()).isTrue();
        assertThat(limits.mostRpm()).hasValue(7200);
        assertThat(limits.lean()).contains(new Limits.Lean(Lambda.of(0.96), 0.4));
        assertThat(limits.most().exhaust()).contains(Temperature.ofCelsius(880));
        assertThat(limits.most().coolant()).contains(Temperature.ofCelsius(105));
        assertThat(limits.most().oil()).contains(Temperature.ofCelsius(130));
        assertThat(limits.most().inlet()).contains(Temperature.ofCelsius(55));
        assertThat(limits.oilPressureLeast().orElseThrow().pascals()).isEqualTo(250_000);
        assertThat(limits.fuelPressureLeast().orElseThrow().pascals()).isEqualTo(280_000);
        assertThat(limits.boostMost().orElseThrow().pascals()).isEqualTo(90_000);
        assertThat(limits.injectorDutyMost().orElseThrow()).isCloseTo(0.85, within(ROUNDING));
        StartConditions start = read(FullPlan.TEXT).start();
        assertThat(start.coolant())
                .contains(new StartConditions.TemperatureWindow(Temperature.ofCelsius(80), Temperature.ofCelsius(95)));
        assertThat(start.oil())
                .contains(new StartConditions.TemperatureWindow(Temperature.ofCelsius(85), Temperature.ofCelsius(110)));
        assertThat(start.inlet())
                .contains(new StartConditions.TemperatureWindow(Temperature.ofCelsius(10), Temperature.ofCelsius(35)));
        assertThat(start.coolDownS()).hasValue(120);
    }

    @Test
    void everyKeyOfGoalLogAndWiresIsRead() {
        SweepPlan plan = read(FullPlan.TEXT);
        assertThat(plan.goal()).isEqualTo(new Goal(Goal.Response.POWER, 0.3, 0.8, 18, false));
        assertThat(plan.log().hints().headers())
                .isEqualTo(Map.of(Role.TORQUE, "Brake load", Role.EXHAUST_TEMPERATURE, "EGT \"1\""));
        assertThat(plan.log().hints().units()).isEqualTo(Map.of(Role.TORQUE, Unit.POUND_FOOT));
        assertThat(plan.log().hints().afrScale()).hasValue(14.7);
        assertThat(plan.log().hints().sampleHz()).hasValue(50);
        assertThat(plan.log().lambdaDelayS()).hasValue(0.12);
        assertThat(plan.log().correctedBy().orElseThrow().id()).isEqualTo("none");
        assertThat(plan.log().settings()).contains("settings.csv");
        assertThat(plan.wires())
                .containsExactly(
                        new WireFacts(
                                Optional.of("/dev/ttyUSB0"),
                                new PortFacts(
                                        57_600, 7, PortFacts.Parity.EVEN, PortFacts.Stop.TWO, PortFacts.Flow.RTS_CTS),
                                WireFacts.Lines.SENTENCE,
                                List.of("rpm", "torque [Nm]"),
                                0.08),
                        new WireFacts(
                                Optional.of("COM7"), PortFacts.defaults(), WireFacts.Lines.SEPARATED, List.of(), 0));
    }

    @Test
    void integersAndDecimalsAreOneAndTheSame() {
        String decimals =
                "[band]\nfrom_rpm = 3000.0\nto_rpm = 6_800.0\nrows_every_rpm = 250.0\n[engine]\ncylinders = 4.0";
        String integers = "[band]\nfrom_rpm = 3000\nto_rpm = 6800\nrows_every_rpm = 250\n[engine]\ncylinders = 4";
        assertThat(read(decimals)).isEqualTo(read(integers));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "\ufeff[engine]\nname = 'a'",
                "[engine]\r\nname = 'a'\r\n",
                "engine.name = 'a'",
                "engine = { name = 'a' }"
            })
    void theSamePlanMayBeWrittenInSeveralWays(String text) {
        assertThat(read(text).engine().name()).contains("a");
    }

    @Test
    void theFuelInTheTankFollowsFromItsRecipe() {
        SweepPlan plan = read(FullPlan.TEXT);
        var fuel = plan.fuel().inTank().orElseThrow().value().orElseThrow();
        var sheet = plan.fuel().blends().value().orElseThrow().find("data sheet", Place.nowhere());
        // 0.3 kg of ethanol (stoichiometric ratio 9.0) and 0.7 kg of E10 (14.1): handbook values, from memory
        assertThat(fuel.stoichiometricAirFuelRatio()).isCloseTo(0.3 * 9.0 + 0.7 * 14.1, within(0.15));
        assertThat(sheet.value().orElseThrow().density()).hasValue(745);
    }

    @Test
    void thePullsOfALogInPercentReachTheDefaultFullLoad() {
        assertThat(Unit.PERCENT.toSi(95)).isGreaterThanOrEqualTo(read("").pull().fullLoad());
    }

    @ParameterizedTest
    @CsvSource({"chassis-brake, WHEEL", "engine-brake, CRANK"})
    void torqueIsStatedWhereTheDynoMeasuresIt(String kind, DynoFacts.Shaft shaft) {
        assertThat(read("[dyno]\nkind = '" + kind + "'").dyno().torqueAt()).isEqualTo(shaft);
    }

    private static List<FindingCode> errors(String text) {
        return PlanText.read(text, "plan.toml").findings().stream()
                .filter(Finding::isError)
                .map(Finding::code)
                .toList();
    }

    @Test
    void noPlanAsksForMoreCellsOrRowsThanADecisionCanBeMadeOf() {
        String timing = "[timing]\nstart_deg = 20\nleast_deg = 12\nmost_deg = 38\nsets = \"map\"\nmap_rpm = [%s]\n";
        String cells = IntStream.range(0, 101)
                .mapToObj(cell -> "" + (2000 + 50 * cell))
                .collect(Collectors.joining(", "));
        assertThat(errors(timing.formatted(cells))).containsExactly(FindingCode.PLAN_WRONG_TYPE);
        assertThat(errors(timing.formatted(cells.substring(0, cells.lastIndexOf(',')))))
                .isEmpty();
        assertThat(errors(timing.formatted("3000, 3000.5"))).containsExactly(FindingCode.PLAN_NOT_RISING);
        String band = timing.formatted("3000, 3500") + "[band]\nfrom_rpm = 1000\nto_rpm = 9000\nrows_every_rpm = %d";
        assertThat(errors(band.formatted(39))).containsExactly(FindingCode.PLAN_OUT_OF_RANGE);
        assertThat(errors(band.formatted(40))).isEmpty();
    }
}
