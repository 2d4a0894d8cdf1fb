package org.nextpull.channel;

import java.util.Optional;
import java.util.OptionalInt;
import org.nextpull.unit.Advance;
import org.nextpull.unit.Lambda;

/**
 * What the operator set for a pull, one row of a settings file or one confirmation at the console.
 *
 * @param file file of the pull; empty where there is only one
 * @param pull number of the candidate within the file, as {@code inspect} prints it
 * @param order order in the day, where it differs from that of the rows
 * @param setting what was set
 * @param knock what the operator marked
 */
public record AskedSetting(
        Optional<String> file, OptionalInt pull, OptionalInt order, EngineSetting setting, KnockMark knock) {
    /** A setting that says nothing. */
    public static AskedSetting none() {
        return new AskedSetting(
                Optional.empty(),
                OptionalInt.empty(),
                OptionalInt.empty(),
                EngineSetting.none(),
                KnockMark.NOT_MEASURED);
    }

    /** The numbers of a setting as what was asked for; a map is no number, so of it the log must tell. */
    public static AskedSetting ofNumbers(EngineSetting setting) {
        return none().withValues(setting.advance(), setting.offset(), setting.lambda());
    }

    /** Whether it says spark or mixture. */
    public boolean hasValues() {
        return setting.hasValues();
    }

    /** This setting; what it does not say is as another says it. */
    public AskedSetting orElse(AskedSetting other) {
        return new AskedSetting(
                file.or(other::file),
                pull.isPresent() ? pull : other.pull,
                order.isPresent() ? order : other.order,
                setting.orElse(other.setting),
                knock == KnockMark.NOT_MEASURED ? other.knock : knock);
    }

    /** What stays set for whatever is run next: the setting without what was said of this pull alone. */
    public AskedSetting ofNextPull() {
        return none().with(setting.withNote(Optional.empty()));
    }

    private AskedSetting with(EngineSetting newSetting) {
        return new AskedSetting(file, pull, order, newSetting, knock);
    }

    /** The same for a candidate by its number within a file. */
    public AskedSetting of(String newFile, int candidate) {
        return new AskedSetting(Optional.of(newFile), OptionalInt.of(candidate), order, setting, knock);
    }

    /** The same for a candidate of the only file. */
    public AskedSetting ofPull(int candidate) {
        return new AskedSetting(file, OptionalInt.of(candidate), order, setting, knock);
    }

    public AskedSetting withKnock(KnockMark newKnock) {
        return new AskedSetting(file, pull, order, setting, newKnock);
    }

    public AskedSetting withConfiguration(Optional<String> label, Optional<String> fuel) {
        return with(setting.fitted(label, fuel));
    }

    public AskedSetting withNote(Optional<String> note) {
        return with(setting.withNote(note));
    }

    /** The same with other spark and mixture. */
    public AskedSetting withValues(Optional<Advance> advance, Optional<Advance> offset, Optional<Lambda> lambda) {
        return with(setting.with(advance.map(SparkMap::flat), offset, lambda));
    }
}
