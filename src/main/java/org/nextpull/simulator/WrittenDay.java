package org.nextpull.simulator;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;
import org.nextpull.advice.Action;
import org.nextpull.channel.AskedSetting;
import org.nextpull.channel.EngineSetting;
import org.nextpull.channel.Role;
import org.nextpull.finding.Detail;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.Outcome;
import org.nextpull.finding.Place;
import org.nextpull.plan.SweepPlan;

/**
 * A day on the model engine, written down.
 *
 * @param log text of the log
 * @param truth text of the truth, in TOML
 * @param settings text of the settings file, where the log alone does not tell what was set
 * @param pulls pulls in the log
 */
public record WrittenDay(String log, String truth, Optional<String> settings, int pulls) {
    private static final int PATIENCE = 60;

    /** A day whose settings are those of the advice, until it stops. */
    public static Outcome<WrittenDay> following(Order order, Consumer<EngineSetting> progress) {
        return Practice.start(order.plan(), order.seed()).then(day -> following(day, order.dialect(), progress));
    }

    /** A day whose settings are given; labels are written into the log, and fuel must be that of the plan or of the candidate. */
    public static Outcome<WrittenDay> of(Order order, List<AskedSetting> settings, Consumer<EngineSetting> progress) {
        return Practice.start(order.plan(), order.seed()).then(practice -> {
            for (AskedSetting row : settings) {
                SimulatedEngine rig = practice.rig(row.setting().label());
                Optional<String> other = row.setting()
                        .fuel()
                        .filter(fuel -> !fuel.equals(rig.fuel().name()));
                if (other.isPresent()) {
                    return Outcome.failed(Finding.error(
                            FindingCode.RIG_ONE_FUEL,
                            Place.nowhere(),
                            Detail.of("fuel", other.get()),
                            Detail.of("other", rig.fuel().name())));
                }
                EngineSetting setting = row.setting();
                List<Finding> wrong = PlanSpan.check(rig.plan(), setting);
                if (wrong.isEmpty()) {
                    wrong = practice.run(setting, row.setting().label()).findings();
                }
                if (!wrong.isEmpty()) {
                    return Outcome.failed(wrong);
                }
                progress.accept(setting);
            }
            practice.judge();
            boolean labelled =
                    settings.stream().anyMatch(row -> row.setting().label().isPresent());
            return Outcome.of(written(practice, order.dialect(), labelled ? List.of(Role.LABEL) : List.of()));
        });
    }

    private static Outcome<WrittenDay> following(
            Practice practice, LogDialect dialect, Consumer<EngineSetting> progress) {
        while (practice.hold().isPresent()) {
            List<Finding> wrong = practice.hold(Optional.empty()).findings();
            if (!wrong.isEmpty()) {
                return Outcome.failed(wrong);
            }
        }
        int patience = PATIENCE * Math.max(1, practice.plan().candidates().size());
        while (practice.advice().action() != Action.STOP && practice.pulls() < patience) {
            EngineSetting setting = practice.advice().setting().orElseThrow();
            List<Finding> wrong = practice.pull(setting).findings();
            if (!wrong.isEmpty()) {
                return Outcome.failed(wrong);
            }
            progress.accept(setting);
        }
        return Outcome.of(written(practice, dialect, practice.words()));
    }

    private static WrittenDay written(Practice practice, LogDialect dialect, List<Role> words) {
        SimulatedEngine rig = practice.rig();
        String log = LogText.of(
                practice.parts(),
                dialect,
                words,
                List.of(LogText.INVENTED, rig.engine().design().name() + ", seed " + rig.seed()));
        String truth = DayTruth.text(rig, practice.debrief(), practice.debriefs());
        Optional<String> settings = rig.needsSettings() ? Optional.of(settings(practice.settings())) : Optional.empty();
        return new WrittenDay(log, truth, settings, practice.pulls());
    }

    private static String settings(List<EngineSetting> settings) {
        StringBuilder text = new StringBuilder("pull,advance_deg,offset_deg,lambda\n");
        for (int index = 0; index < settings.size(); index++) {
            EngineSetting setting = settings.get(index);
            text.append(index + 1)
                    .append(',')
                    .append(setting.advance().map(value -> plain(value.deg())).orElse(""))
                    .append(',')
                    .append(setting.offset().map(value -> plain(value.deg())).orElse(""))
                    .append(',')
                    .append(setting.lambda().map(value -> plain(value.value())).orElse(""))
                    .append('\n');
        }
        return text.toString();
    }

    private static String plain(double value) {
        return String.format(Locale.ROOT, "%.3f", value);
    }

    /**
     * What a day on the model engine is to be.
     *
     * @param plan plan that describes engine, dyno and sweep
     * @param seed where all chance comes from
     * @param dialect how the log is written
     */
    public record Order(SweepPlan plan, long seed, LogDialect dialect) {}
}
