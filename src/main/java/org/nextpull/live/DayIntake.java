package org.nextpull.live;

import java.util.List;
import org.nextpull.alarm.AlarmWatch;
import org.nextpull.channel.SourceDescription;
import org.nextpull.intake.wire.WireChain;
import org.nextpull.intake.wire.WireSource;
import org.nextpull.plan.SweepPlan;
import org.nextpull.pull.PullRules;

/** What a session reads from, as the chain and the finding of pulls see it. */
final class DayIntake {
    private static final String BETWEEN_NAMES = " + ";

    private final LiveIntake intake;

    DayIntake(LiveIntake intake) {
        this.intake = intake;
    }

    List<WireSource> sources() {
        return intake.sources();
    }

    List<String> names() {
        return sources().stream().map(WireSource::name).toList();
    }

    DayPulls pulls(SweepPlan plan, AlarmWatch.Rules limits, WireChain chain) {
        PullRules rules = PullRules.of(plan);
        return intake instanceof LiveIntake.Folder folder
                ? new FolderPulls(folder.folder().folder(), plan.log().hints(), rules, limits)
                : new PortPulls(title(), () -> columns(chain), rules, limits);
    }

    /** All sources in one name. */
    String title() {
        return intake.name(BETWEEN_NAMES);
    }

    /** Whether something is understood of what each source sends. */
    boolean isUnderstood(WireChain chain) {
        return names().stream().noneMatch(name -> chain.columns(name).isEmpty());
    }

    /** The columns of all sources, as far as they are understood. */
    List<SourceDescription.Column> columns(WireChain chain) {
        return names().stream().flatMap(name -> chain.columns(name).stream()).toList();
    }
}
